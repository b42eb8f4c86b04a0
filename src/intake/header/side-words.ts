import { meaningOfWords } from '../cells/word-list.ts';

/** Words for left and right, and their short forms, folded. */
export const sideWords = meaningOfWords({
  left: 'l|lh|lhs|left|links|li|gauche|g|izquierda|izq|sinistra|sx|linker|lewa|vanster',
  right: 'r|rh|rhs|right|rechts|re|droite|d|derecha|der|destra|dx|prawa|hoger',
});

/** `left` or `right` for a folded word. */
export const sideOfWord = (word: string): string | undefined => sideWords.get(word);
