/** Text → Markdown, in one place: nothing that came from a file reaches a page in any other way. */
import { printable } from './printable.ts';

/** What makes emphasis, code, links, pictures, HTML, tables, mathematics, headings and strikings. */
const ACTIVE = /[\\`*_[\]<>|~&$#]/g;

/** A list, a quotation or a rule, where it begins a line. */
const BEGINS = /^([-+](?=[ -]|$)|\d+(?=[.)](?: |$)))/;

/**
 * One line of text that shows as it is written. Addresses are kept from becoming links, and an `@`
 * from calling somebody, by an empty comment within them: GitHub looks for both behind the escapes.
 */
export const escapedMarkdown = (text: string): string =>
  printable(text.replaceAll('\u00a0', ' '))
    .trim()
    .replace(ACTIVE, '\\$&')
    .replace(BEGINS, (begin) => (/\d/.test(begin) ? `${begin}\\` : `\\${begin}`))
    .replaceAll('@', `@${APART}`)
    .replaceAll('://', `:${APART}//`)
    .replaceAll(/www\./gi, (www) => `${www.slice(0, 3)}${APART}.`);

const APART = '<!-- -->';
