/** Text → HTML, in one place: nothing that came from a file reaches a page in any other way. */
import { printable } from './printable.ts';

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** For the value of a quoted attribute, and for text that holds no element. */
export const escaped = (text: string): string =>
  printable(text).replace(/[&<>"']/g, (mark) => ENTITIES[mark] ?? mark);

/** Letters that run from right to left (UAX #9, classes R and AL), by the blocks that hold them. */
const TURNED =
  '[\\u0590-\\u061b\\u061d-\\u08ff\\ufb1d-\\ufdff\\ufe70-\\ufefc\\u{10800}-\\u{10fff}\\u{1e800}-\\u{1efff}]+';
/** Words of them, with what stands between two of one name. */
const TURNED_WORDS = new RegExp(`(${TURNED}(?:[ \\u00a0\\u200c\\u200d\\d-]+${TURNED})*)`, 'u');

/** A value and its ± stay in one line, as the ± and what it is of do already. */
const BEFORE_SIGN = /(?<=\d) (?=±)/g;

/**
 * Text of an element. A name that runs from right to left is set apart (UAX #9, isolates): else it draws the
 * numbers behind it to its other side, and a value and its ± change places.
 */
export const inline = (text: string): string =>
  text
    .replace(BEFORE_SIGN, '\u00a0')
    .split(TURNED_WORDS)
    .map((part, at) => (at % 2 === 0 ? escaped(part) : element('bdi', {}, escaped(part))))
    .join('');

/** Options, steps such as `da/foam-medium/fine`, and the sign `×/÷`: no place in them is one to break a line at. */
const WHOLE_WORD =
  /(×\/÷|(?<![\w-])--[a-z][\w-]{1,20}(?![\w-])|(?<![\w/-])(?:[a-z][\w-]{1,15}\/){2}[a-z][\w-]{1,15}(?![\w/-]))/;

/** Text of a sentence, with the words in it that are typed as they stand kept in one piece. */
export const sentence = (text: string): string => withWhole(text, wholeWord);

/** The same for short lines, on which a step of long names has no room: it breaks after a slash, and nowhere else. */
export const shortLines = (text: string): string =>
  withWhole(text, (word) =>
    word
      .split(/(?<=\/)/)
      .map(wholeWord)
      .join('<wbr>'),
  );

const withWhole = (text: string, whole: (word: string) => string): string =>
  text
    .split(WHOLE_WORD)
    .map((part, at) => (at % 2 === 0 ? inline(part) : whole(part)))
    .join('');

const wholeWord = (word: string): string => element('span', { class: 'whole-word' }, escaped(word));

/** `<tag attributes>content</tag>`; attributes are escaped, the content is HTML already. */
export function element(
  tag: string,
  attributes: Readonly<Record<string, string | number>>,
  ...content: readonly string[]
): string {
  const written = Object.entries(attributes).map(
    ([name, value]) => ` ${name}="${escaped(String(value))}"`,
  );
  return `<${tag}${written.join('')}>${content.join('')}</${tag}>`;
}
