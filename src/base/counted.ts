/** How many of a thing there are, in words: `1 panel`, `2 panels`. */
export const counted = (count: number, noun: string): string =>
  `${count} ${noun}${count === 1 ? '' : 's'}`;
