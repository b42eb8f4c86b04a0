/**
 * Lines `bonnet: 102, 104, 99`, `bonnet - 102 104 99`, `bonnet 102/104/99` → rows of a panel and its readings.
 *
 * The mark between the readings is one that splits every line into nothing but numbers, the surest
 * first: `102,104` may be one number, `102, 104` is two. The cells stay where they stand in the
 * text, so that every reading knows its place.
 */

import { once } from '../../base/kept.ts';
import { hasLetter } from '../../base/letters.ts';
import { aboutFile, roleOfKey } from '../beside/sayings.ts';
import { notReading } from '../cells/not-readings.ts';
import { numberOf, numberShape } from '../cells/numbers.ts';
import { unitNamed } from '../cells/unit.ts';
import { meansNoReading } from '../cells/words.ts';
import { stemOfLabel } from '../header/label-numbers.ts';
import { lineFrom } from '../rows/lines.ts';
import type { Source } from '../rows/source.ts';
import type { Row } from '../rows/tokens.ts';
import { namesStatistic } from '../statistics/statistic-words.ts';
import { numberedPanels } from '../tables/numbered-labels.ts';
import { sizesOf } from '../units/size-in-units.ts';

/**
 * Where a list is spoiled by one piece of a line that is no number: all lines but few are of one, and the
 * first piece of those that is none is the place.
 */
export function spoiledPiece(
  source: Source,
  rows: readonly Row[],
  isPanel: (label: string) => boolean,
): { readonly offset: number; readonly text: string } | undefined {
  const list = rows.flatMap((row) => {
    const line = lineOf(source, row);
    return line !== undefined && isPanel(line.label.trim()) && hasNumber(line.value) ? [line] : [];
  });
  for (const { sure, split } of separators) {
    const sound = list.filter(({ value }) => allNumbers(split(value)));
    if (sound.length < 2 || sound.length * 2 <= list.length || !sure(sound)) continue;
    const line = list.find((one) => !sound.includes(one));
    if (line === undefined) return undefined;
    const pieces = split(line.value);
    const at = pieces.findIndex((piece) => !isReading(piece));
    const before = pieces.slice(0, at).reduce((sum, piece) => sum + piece.length + 1, 0);
    const piece = pieces[at] ?? '';
    const blanks = piece.length - piece.trimStart().length;
    const offset = line.row.start + line.at + line.label.length + 1 + before + blanks;
    return { offset, text: piece.trim() };
  }
  return undefined;
}

type Line = {
  readonly row: Row;
  readonly label: string;
  /** How many signs of the line stand before the label. */
  readonly at: number;
  readonly value: string;
};

/** The rows of a list, each of a panel and its readings, or undefined if the file is none. */
export function listRows(
  source: Source,
  rows: readonly Row[],
  isPanel: (label: string) => boolean,
): readonly Row[] | undefined {
  const lines = rows.map((row) => lineOf(source, row));
  const eachIsPoint = arePoints(lines, isPanel);
  const isOwn = eachIsPoint
    ? (label: string) => isPanel(label) || isPanel(stemOfLabel(label))
    : isPanel;
  const known = lines.filter(
    (line) => line !== undefined && isOwn(line.label.trim()) && hasNumber(line.value),
  );
  if (known.length <= withoutMark(source, rows, lines, isOwn)) return undefined;
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
  const beyond = [...lines.slice(0, first), ...lines.slice(last + 1)].flatMap((line) =>
    line !== undefined &&
    (isLike(line, list, mark, isPanel) || (eachIsPoint && isMeanOf(line, isPanel)))
      ? [line]
      : [],
  );
  const split = new Map([
    ...list.map((line) => [line.row, cellsOf(line, mark)] as const),
    ...beyond.map((line) => [line.row, cellsOf(line, markOf(line, mark))] as const),
  ]);
  return rows.map((row) => split.get(row) ?? row);
}

/** What parts the readings of one line: the mark of the others, or where that leaves words, its own. */
const markOf = (line: Line, mark: Separator): Separator =>
  [mark, ...separators.filter(({ sure }) => sure([line]))].find(({ split }) =>
    allNumbers(split(line.value)),
  ) ?? mark;

/** Lines `bonnet 102 104` between name and readings of which no mark stands: where they are as many, it is no such list. */
const withoutMark = (
  { text }: Source,
  rows: readonly Row[],
  lines: readonly (Line | undefined)[],
  isOwn: (label: string) => boolean,
): number =>
  rows.filter((row, i) => {
    if (lines[i] !== undefined) return false;
    const [, name = ''] = /^([^\d]+?)\s+\d/u.exec(lineFrom(text, row.start)) ?? [];
    return isOwn(name.trim());
  }).length;

/** `Bonnet / 1: 121 µm`: each line is one reading, of the point whose number stands behind its panel. */
function arePoints(
  lines: readonly (Line | undefined)[],
  isPanel: (label: string) => boolean,
): boolean {
  const own = lines.flatMap((line) =>
    line !== undefined && isPanel(stemOfLabel(line.label.trim())) ? [line] : [],
  );
  const labels = own.map(({ label }) => label.trim());
  return own.every(({ value }) => isReading(value)) && numberedPanels(labels, isPanel);
}

/** `Roof / mean: 88 µm`, below the points of the last panel. */
function isMeanOf({ label, value }: Line, isPanel: (label: string) => boolean): boolean {
  const [, panel = '', word = ''] = /^(.*?)\s*[/:,#-]\s*([^/:,#-]+)$/u.exec(label.trim()) ?? [];
  return isPanel(panel) && namesStatistic(word) && isReading(value);
}

/**
 * Whether a line above or below the known panels is a row as well, of a panel that nobody knows: several
 * readings, or one with its unit as the others have it. What is called as no panel would be is none.
 */
function isLike(
  line: Line,
  list: readonly Line[],
  { split }: Separator,
  isPanel: (label: string) => boolean,
): boolean {
  const name = line.label.trim();
  if (aboutFile.test(name) || namesStatistic(name) || roleOfKey(name) !== undefined) return false;
  const own = markOf(line, { split, sure: () => true }).split(line.value);
  const pieces = own.map((piece) => numberShape(piece.trim()));
  const sizes = sizesOf(list.flatMap((one) => split(one.value)));
  const films = pieces.flatMap((shape) => (shape === undefined ? [] : [numberOf(shape)]));
  if (sizes === undefined || films.length === 0 || films.length < pieces.length) return false;
  const hasUnit = unitNamed(pieces.at(-1)?.suffix ?? '') !== undefined;
  const namesPanel = name.split(/[^\p{L}]+/u).some((word) => word !== '' && isPanel(word));
  const asLarge = films.every((film) => film >= sizes.least / 5 && film <= sizes.most * 20);
  return asLarge && (films.length > 1 || hasUnit || namesPanel);
}

/** `bonnet - 104 106`, `bonnet 104/106`: what parts a name from its readings where no colon does. */
const loneMark = /(?<=\s)[-–—](?=\s+\d)|\s(?=\d[\d.,]*\/\d)/u;

function lineOf({ text }: Source, row: Row): Line | undefined {
  const line = lineFrom(text, row.start);
  const start = line.slice(0, longestLabel);
  // `bonnet 12:30: 104`: a colon before a blank parts a name from its readings, one in a time does not.
  const spaced = start.search(/[:=：]\s/u);
  const colon = spaced === -1 ? start.search(/[:=：]/u) : spaced;
  const mark = colon === -1 ? start.search(loneMark) : colon;
  if (mark === -1 || row.quoted) return undefined;
  const before = line.slice(0, mark);
  const label = before.replace(bullet(), '');
  const at = before.length - label.length;
  return hasLetter(label) ? { row, label, at, value: line.slice(mark + 1) } : undefined;
}

/** `- Bonnet`, `• Roof`, `2. Boot lid`: the sign of a list, or a place in it. */
const bullet = once(() => /^\s*(?:[-*•·–—▪◦+]|\d{1,3}[.)])\s+(?=\p{L})/u);

/** Names of panels are shorter. */
const longestLabel = 200;

const hasNumber = (value: string): boolean => /\d/u.test(value);
const isReading = (piece: string): boolean => {
  const text = piece.trim();
  const shape = numberShape(text);
  if (shape === undefined) return meansNoReading(text) || notReading(text) !== undefined;
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
  at('，'),
  at('、'),
  // `12/03` is a day: no part of one is as thick as paint.
  {
    split: (value) => value.split('/'),
    sure: (lines) =>
      some(lines, /\d\/\d/u) &&
      lines.every(({ value }) => value.split('/').every((piece) => Number.parseFloat(piece) >= 20)),
  },
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
function cellsOf({ row, label, at, value }: Line, { split }: Separator): Row {
  const cells = [label, ...split(value)];
  if (at === 0) return { ...row, cells };
  let offset = row.start + at;
  const offsets = cells.map((cell) => {
    const own = offset;
    offset += cell.length + 1;
    return own;
  });
  return { ...row, cells, offsets };
}
