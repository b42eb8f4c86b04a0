/** Words for left and right, and their short forms, folded. */
export const sideWords: ReadonlyMap<string, string> = new Map(
  (
    [
      ['left', 'l|lh|lhs|left|links|li|gauche|g|izquierda|izq|sinistra|sx|linker|lewa|vanster'],
      ['right', 'r|rh|rhs|right|rechts|re|droite|d|derecha|der|destra|dx|prawa|hoger'],
    ] as const
  ).flatMap(([side, list]) => list.split('|').map((word) => [word, side] as const)),
);

/** `left` or `right` for a folded word. */
export const sideOfWord = (word: string): string | undefined => sideWords.get(word);
