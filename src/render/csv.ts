/**
 * Rows → CSV by RFC 4180: a cell with a comma, a quote or a line end stands in quotes, a quote within
 * is doubled; so does one that begins with #, which would make its row a comment. Lines end in LF, as
 * in every other output.
 *
 * A spreadsheet takes a text that begins with = + - @, a tab or a carriage return for a formula and
 * runs it (CWE-1236): such a text gets an apostrophe before it, and so does one that has apostrophes
 * before that already, so that taking one off always gives the text back. For the same reason `\u{`
 * in a text is written `\u{5c}u{`. Numbers stand as they are.
 */
import type { DataCell, DataTable } from '../report/model.ts';
import { printable } from './printable.ts';

const FORMULA = /^'*[=+\-@\t\r]/;
const NEEDS_QUOTES = /^[#']|[",\r\n]/;

export const renderCsv = ({ columns, rows }: DataTable): string =>
  [columns, ...rows].map(renderCsvRow).join('');

/** One row, for a table that is written as it grows. */
export function renderCsvRow(row: readonly DataCell[]): string {
  let line = '';
  for (let k = 0; k < row.length; k += 1) line += (k === 0 ? '' : ',') + csvCell(row[k] ?? null);
  return `${line}\n`;
}

/** Nearly every cell: a text that is itself in any spreadsheet and on any terminal. */
const PLAIN = /^[A-Za-z0-9][A-Za-z0-9 ._:;/()-]*$/;

function csvCell(value: DataCell): string {
  if (value === null) return '';
  if (typeof value === 'number') return String(value);
  if (PLAIN.test(value)) return value;
  const shown = value.replaceAll('\\u{', '\\u{5c}u{').replace(/[^\t\r\n]+/g, printable);
  const harmless = FORMULA.test(value) ? `'${shown}` : shown;
  return NEEDS_QUOTES.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}
