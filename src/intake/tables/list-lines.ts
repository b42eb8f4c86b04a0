/**
 * Lines `bonnet: 102, 104, 99` → rows of a panel and its readings.
 *
 * The mark between the readings is one that splits every line into nothing but numbers, the surest
 * first: `102,104` may be one number, `102, 104` is two. The cells stay where they stand in the
 * text, so that every reading knows its place.
 */
import { numberOf, numberShape } from '../cells/numbers.ts';
import { meansNoReading } from '../cells/words.ts';
import type { Source } from '../rows/source.ts';
import type { Row } from '../rows/tokens.ts';

type Line = { readonly row: Row; readonly label: string; readonly value: string };

/** The rows of a list, each of a panel and its readings, or undefined if the file is none. */
export function listRows(
  source: Source,
  rows: readonly Row[],
  isPanel: (label: string) => boolean,
): readonly Row[] | undefined {
  const lines = rows.map((row) => lineOf(source, row));
  const known = lines.filter(
    (line) => line !== undefined && isPanel(line.label.trim()) && hasNumber(line.value),
  );
  if (known.length === 0) return undefined;
  const first = lines.indexOf(known[0]);
  const last = lines.lastIndexOf(known.at(-1));
  const own = lines
    .slice(first, last + 1)
    .filter((line) => line !== undefined && hasNumber(line.value));
  const list = own.flatMap((line) => line ?? []);
  const mark = separators.find(
    ({ sure, split }) => sure(list) && list.every(({ value }) => allNumbers(split(value))),
  );
  if (mark === undefined) return undefined;
  const split = new Map(list.map((line) => [line.row, cellsOf(line, mark)]));
  return rows.map((row) => split.get(row) ?? row);
}

function lineOf({ text }: Source, row: Row): Line | undefined {
  const end = text.indexOf('\n', row.start);
  const line = text.slice(row.start, end === -1 ? text.length : end);
  const mark = line.slice(0, longestLabel).search(/[:=]/u);
  if (mark === -1 || row.quoted) return undefined;
  const label = line.slice(0, mark);
  return /\p{L}/u.test(label) ? { row, label, value: line.slice(mark + 1) } : undefined;
}

/** Names of panels are shorter. */
const longestLabel = 200;

const hasNumber = (value: string): boolean => /\d/u.test(value);
const isReading = (piece: string): boolean => {
  const text = piece.trim();
  const shape = numberShape(text);
  if (shape === undefined) return meansNoReading(text);
  const value = numberOf(shape);
  return value >= 0 && value <= 5000;
};
const allNumbers = (pieces: readonly string[]): boolean => pieces.every(isReading);

type Separator = {
  readonly split: (value: string) => readonly string[];
  /** Whether the lines leave no doubt that the mark stands between numbers. */
  readonly sure: (lines: readonly Line[]) => boolean;
};

const some = (lines: readonly Line[], mark: RegExp): boolean =>
  lines.some(({ value }) => mark.test(value));
const at = (mark: string): Separator => ({
  split: (value) => value.split(mark),
  sure: (lines) => lines.some(({ value }) => value.includes(mark)),
});
/** Pieces between blanks, each with the blanks before it, so that lengths add up. */
const byBlanks = (value: string): readonly string[] =>
  value.trimEnd().split(/(?<=\S)\s(?=\s*[\d+\-−.,])/u);
const separators: readonly Separator[] = [
  at(';'),
  at('\t'),
  at('|'),
  {
    split: (value) => value.split(','),
    sure: (lines) => some(lines, /,\s/u) && !some(lines, /\d,\d/u),
  },
  { split: byBlanks, sure: (lines) => some(lines, /\d\s+\d/u) },
  // Two commas in one line, or a point in a number, and the comma cannot be a decimal mark.
  {
    split: (value) => value.split(','),
    sure: (lines) => some(lines, /,.*,/u) && !some(lines, /,(?:\d{1,2}|0\d*)(?=,|\s|$)/u),
  },
  // `98,97` alone may be one number or two; `98,5` is one, for 5 is no film.
  {
    split: (value) => [value],
    sure: (lines) => !some(lines, /\d,\d/u) || some(lines, /,\d(?!\d)/u),
  },
];

/** One mark between two cells each, as a delimiter would stand. */
function cellsOf({ row, label, value }: Line, { split }: Separator): Row {
  return { ...row, cells: [label, ...split(value)] };
}
