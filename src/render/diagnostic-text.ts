import type { Diagnostic, Place } from '../base/diagnostics.ts';
import { shownFile } from '../base/file-name.ts';
import { displayWidth, printable } from './printable.ts';

/** Most of a long line that is shown about the place in question. */
const SHOWN = 100;

/**
 * A diagnostic as people read it: `file:line:column: error[code]: message`, the line with a caret
 * under the place, and a hint.
 */
export function renderDiagnostic({ code, severity, message, at, hint }: Diagnostic): string {
  const where = at === undefined ? 'leastcut' : placeText(at);
  return [
    `${where}: ${severity}[${code}]: ${printable(message)}`,
    ...(at === undefined ? [] : excerpt(at)),
    ...(hint === undefined ? [] : [`  hint: ${printable(hint)}`]),
  ]
    .map((line) => `${line}\n`)
    .join('');
}

const placeText = ({ file, line, column }: Place): string =>
  [printable(shownFile(file)), line, column].filter((part) => part !== undefined).join(':');

function excerpt({ lineText: asWritten, column, length }: Place): readonly string[] {
  if (asWritten === undefined) return [];
  // A tab takes one column, so that the caret stands under its word.
  const lineText = asWritten.replaceAll('\t', ' ');
  if (column === undefined) return [`  ${printable(lineText.slice(0, SHOWN))}`];
  const from = Math.max(0, Math.min(column - 1 - SHOWN / 2, lineText.length - SHOWN));
  const before = printable(lineText.slice(from, column - 1));
  const word = printable(lineText.slice(column - 1, column - 1 + (length ?? 1)));
  const shown = printable(lineText.slice(from, from + SHOWN));
  const carets = '^'.repeat(Math.max(1, Math.min(displayWidth(word), SHOWN)));
  return [`  ${shown}`, `  ${' '.repeat(displayWidth(before))}${carets}`];
}
