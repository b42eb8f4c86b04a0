/**
 * The CSV that this program writes itself, read back.
 *
 * On the way out a text that a spreadsheet would run as a formula gets an apostrophe before it, and
 * a sign that nobody sees stands as `\u{…}`. Both are taken off again in a table that begins with the
 * names that `read --format csv` writes, in its order, and in no other file: there an apostrophe is
 * the user's own. The decimal mark of such a table is a point.
 */
import { decimalAsked } from '../cells/decimal.ts';
import type { IntakeOptions } from '../intake-options.ts';
import { delimiterAsked } from './dialect.ts';
import type { Source } from './source.ts';
import type { Row } from './tokens.ts';

const ownHeader =
  /^(?:vehicle,)?panel,point,repeat,reading_um(?:,layer)?(?:,place)?(?:,marked)?(?:,curved)?(?:,operator)?(?:,time)?(?:,substrate)?(?:,u)?(?:,v)?(?:,note)?(?:\n|$)/u;

export const isCanonicalCsv = ({ text }: Pick<Source, 'text'>): boolean => ownHeader.test(text);

/** What such a file needs no asking about; what the user says holds against it. */
export const canonicalOptions = (options: IntakeOptions): IntakeOptions => ({
  ...options,
  delimiter: options.delimiter ?? ',',
  decimal: options.decimal ?? '.',
});

const ofOwnTable = 'as in every table that this program writes';

/** What nobody asked for is said to be so because the table is one of ours. */
export function ownEvidence(
  evidence: readonly string[],
  { delimiter, decimal }: IntakeOptions,
): readonly string[] {
  const asked = [
    ...(delimiter === undefined ? [delimiterAsked(',')] : []),
    ...(decimal === undefined ? [decimalAsked('.')] : []),
  ];
  return evidence.map((sentence) => {
    const own = asked.find((begin) => sentence.startsWith(begin));
    return own === undefined
      ? sentence
      : own.replace(/,? as asked$/, `, ${ofOwnTable}`) + sentence.slice(own.length);
  });
}

const guarded = /^'+[=+\-@\t\r]/u;
const escaped = /\\u\{([\da-f]{1,6})\}/gu;

/** The text that was meant, before it was made harmless. */
export function restoredText(cell: string): string {
  const bare = guarded.test(cell) ? cell.slice(1) : cell;
  return bare.includes('\\u{') ? bare.replace(escaped, signOf) : bare;
}

function signOf(written: string, hex: string): string {
  const code = Number.parseInt(hex, 16);
  return code > 0x10ffff ? written : String.fromCodePoint(code);
}

/** The rows with the texts that were meant; where a cell changes, places are read off the text. */
export const restoredRows = (rows: readonly Row[]): readonly Row[] =>
  rows.map((row) => {
    if (!row.cells.some((cell) => guarded.test(cell) || cell.includes('\\u{'))) return row;
    return { ...row, cells: row.cells.map(restoredText), quoted: true };
  });
