/** Small words in sentences, and what is not to be parted in them. */
import { hasLetter } from '../base/letters.ts';

/** `bonnet`, `bonnet and roof`, `bonnet, roof and boot lid`. */
export const namesAnd = (names: readonly string[]): string =>
  [names.slice(0, -1).join(', '), ...names.slice(-1)].filter(Boolean).join(' and ');

const UNIT_AFTER = /(\d) (?=(%|µm|mil|mm|ml|min|m|h))/g;
const SIGN_BEFORE = /± (?=\d)/g;

/**
 * A number is not to be parted from its unit or its ± at the end of a line: a no-break space stands
 * between them.
 */
export const gluedUnits = (text: string): string =>
  text
    .replace(UNIT_AFTER, (number, digit: string, unit: string, place: number) =>
      goesOn(text, place + number.length + unit.length) ? number : `${digit}\u00a0`,
    )
    .replace(SIGN_BEFORE, '±\u00a0');

/** Whether a letter stands there, so that what is before it is the beginning of a word and no unit. */
const goesOn = (text: string, place: number): boolean =>
  hasLetter(String.fromCodePoint(text.codePointAt(place) ?? 0));
