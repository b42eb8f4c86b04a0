/** Small words around numbers. */

/** `1 panel`, `2 panels`. */
export const counted = (count: number, noun: string): string =>
  `${count} ${noun}${count === 1 ? '' : 's'}`;

const UNIT_AFTER = /(\d) (?=(?:%|µm|mil|mm|ml|m|h)(?!\p{L}))/gu;

/** A number and its unit are not to be parted at the end of a line: a no-break space between them. */
export const gluedUnits = (text: string): string => text.replace(UNIT_AFTER, '$1\u00a0');
