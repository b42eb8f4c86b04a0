import { foldedText } from '../cells/doubting-words.ts';
import { meaningOfWords } from '../cells/word-list.ts';

/** Words for left and right, and their short forms, folded. */
export const sideWords = meaningOfWords({
  left: 'l|lh|lhs|left|links|li|gauche|g|izquierda|izq|sinistra|sx|linker|lewa|vanster',
  right: 'r|rh|rhs|right|rechts|re|droite|d|derecha|der|destra|dx|prawa|hoger',
});

/** `LEFT SIDE`, `Right hand side:`, `rechts`: a heading over panels of which it is half the name. */
export const headsSide = (text: string): boolean => {
  const [first = '', ...more] = foldedText(text.trim()).replace(/:$/u, '').split(/\s+/u);
  const rest = more.join(' ');
  return first.length > 3 && sideWords.has(first) && /^(?:(?:hand )?side|seite)?$/u.test(rest);
};
export const sidesHint =
  'write the side into the name of each panel, "left front door", and delete the line';

/** `left` or `right` for a folded word. */
export const sideOfWord = (word: string): string | undefined => sideWords.get(word);
