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
