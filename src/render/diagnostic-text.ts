import type { Diagnostic, Place } from '../base/diagnostics.ts';
import { shownFile } from '../base/file-name.ts';
import { asciiText } from './ascii-text.ts';
import { displayWidth, printable } from './printable.ts';
import { wrap, wrapSetIn } from './wrap.ts';

/** Most of a long line that is shown about the place in question. */
const SHOWN = 100;

/** How messages look where they are read; without a width no line is folded. */
export type MessageLook = {
  readonly width?: number;
  readonly strong?: (text: string) => string;
};

/**
 * A diagnostic as people read it: `file:line:column: error[code]: message`, the line with a caret
 * under the place, and a hint; in signs of ASCII where a terminal knows no others. Folded between
 * words: a number stays whole, so that it is never read as two.
 */
export function renderDiagnostic(
  { code, severity, message, at, hint }: Diagnostic,
  ascii = false,
  { width = Number.POSITIVE_INFINITY, strong = (text) => text }: MessageLook = {},
): string {
  const shown: Shown = ascii ? inAscii : printable;
  const where = at === undefined ? 'leastcut' : placeText(at, shown);
  const head = `${where}: ${severity}[${code}]:`;
  const [first = '', ...more] = wrap(`${head} ${shown(message)}`, width, '    ');
  const heading = first.startsWith(head) ? strong(head) + first.slice(head.length) : first;
  return [
    heading,
    ...more,
    ...(at === undefined ? [] : excerpt(at, shown, Math.min(SHOWN, width - 2))),
    ...(hint === undefined ? [] : wrapSetIn(`  hint: ${shown(hint)}`, width, '    ')),
  ]
    .map((line) => `${line}\n`)
    .join('');
}

/** A diagnostic is set line by line: no blank of it has to hold words together. */
const inAscii: Shown = (text) => asciiText(printable(text)).replaceAll('\u00a0', ' ');

/** Text of a file as it may be printed. */
type Shown = (text: string) => string;

const placeText = ({ file, line, column }: Place, shown: Shown): string =>
  [shown(shownFile(file)), line, column].filter((part) => part !== undefined).join(':');

function excerpt(
  { lineText: asWritten, column, length }: Place,
  shown: Shown,
  most: number,
): readonly string[] {
  if (asWritten === undefined || asWritten.trim() === '') return [];
  // A tab takes one column, so that the caret stands under its word.
  const lineText = asWritten.replaceAll('\t', ' ');
  if (column === undefined) return [`  ${shown(lineText.slice(0, most))}`];
  const from = Math.max(0, Math.min(column - 1 - most / 2, lineText.length - most));
  const before = shown(lineText.slice(from, column - 1));
  const word = shown(lineText.slice(column - 1, column - 1 + (length ?? 1)));
  const around = shown(lineText.slice(from, from + most));
  const carets = '^'.repeat(Math.max(1, Math.min(displayWidth(word), most)));
  return [`  ${around}`, `  ${' '.repeat(displayWidth(before))}${carets}`];
}
