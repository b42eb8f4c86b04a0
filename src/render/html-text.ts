/** Text → HTML, in one place: nothing that came from a file reaches a page in any other way. */
import { printable } from './printable.ts';

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** For the text of an element and for the value of a quoted attribute. */
export const escaped = (text: string): string =>
  printable(text).replace(/[&<>"']/g, (mark) => ENTITIES[mark] ?? mark);

/** Options, and steps such as `da/foam-medium/fine`: their hyphens are no place to break a line at. */
const WHOLE_WORD =
  /((?<![\w-])--[a-z][\w-]{1,20}(?![\w-])|(?<![\w/-])(?:[a-z][\w-]{1,15}\/){2}[a-z][\w-]{1,15}(?![\w/-]))/;

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
    .map((part, at) => (at % 2 === 0 ? escaped(part) : whole(part)))
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
