/**
 * Several readings in one cell: `104, 106, 103`, `104/106/103`, `104 106 103`, or one to a line.
 *
 * Taken so only where one mark parts the cells of the whole column and each part can be a film by itself,
 * while the cell as one number could not. The parts become columns of their own behind the others.
 *
 * Two numbers by a slash in every cell may be two readings, or the film before and after, or the least and the
 * largest: they are read where something says that they are readings, and refused otherwise.
 */

import { remembered } from '../../base/kept.ts';
import { notReading } from '../cells/not-readings.ts';
import { numberOf, numberShape } from '../cells/numbers.ts';
import type { Findings } from '../findings.ts';
import { plainNames, plainWords } from '../header/header.ts';
import type { ReadingColumn } from '../header/layout.ts';
import { columnTexts } from '../rows/column-texts.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { isMeanOf } from '../statistics/mean-of.ts';
import { statisticOf } from '../statistics/statistic-words.ts';
import { placeOf, type Table } from './table.ts';

type Mark = { readonly name: string; readonly split: (cell: string) => readonly string[] };

const marks: readonly Mark[] = [
  { name: 'a line each', split: (cell) => cell.split('\n') },
  { name: '/', split: (cell) => cell.split('/') },
  { name: ';', split: (cell) => cell.split(';') },
  { name: '|', split: (cell) => cell.split('|') },
  { name: 'a comma and a blank', split: (cell) => cell.split(/,(?= )/u) },
  { name: 'blanks', split: (cell) => cell.split(/(?<=\S) (?=\s*\S)/u) },
];

const saysNothing = remembered((text) => notReading(text) !== undefined);

export function partSeveral(
  table: Table,
  findings: Findings,
): { readonly table: Table; readonly evidence: string } | undefined {
  const { layout, rows } = table;
  const [only, second] = layout.readings;
  const single = only !== undefined && second === undefined && only.panel === null;
  if (!single || layout.header.length === 0) return undefined;
  const cells = [...columnTexts(rows, only.column)].flatMap(([text, { count }]) =>
    saysNothing(text) ? [] : [{ text, count }],
  );
  const mark = mostMayBeSeveral(cells) ? marks.find((one) => partsAll(cells, one)) : undefined;
  if (mark === undefined || rows.some((row) => isOverfull(row, layout.header.length)))
    return undefined;
  if (mark.name === '/' && arePairs(cells) && !saidToBeReadings(table, only.column)) {
    tellPairs(table, only.column, findings);
  }
  const parted = rows.map((row) => partedRow(row, only.column, layout.header.length, mark));
  const most = Math.max(...cells.map(({ text }) => mark.split(text).length));
  const readings = Array.from(
    { length: most },
    (_, k): ReadingColumn => ({
      column: k === 0 ? only.column : layout.header.length + k - 1,
      panel: null,
      number: k + 1,
    }),
  );
  const header = [...layout.header, ...readings.slice(1).map(() => ({ text: '', label: '' }))];
  const kind = layout.kind === 'blocks' ? 'blocks' : 'repeats';
  return {
    table: { ...table, rows: parted, layout: { ...layout, kind, header, readings } },
    evidence: `cells hold several readings, set apart by ${mark.name}: each is read`,
  };
}

type CountedText = { readonly text: string; readonly count: number };

const isOverfull = ({ cells }: Row, width: number): boolean =>
  cells.length > width && cells.some((cell, k) => k >= width && cell.trim() !== '');

/** What every mark between readings has in it, sought first: nearly all tables have none. */
const inSomeMark = /[\n/;| ]/u;

function mostMayBeSeveral(cells: readonly CountedText[]): boolean {
  let [all, several] = [0, 0];
  for (const { text, count } of cells) {
    all += count;
    if (inSomeMark.test(text)) several += count;
  }
  return isMost(several, all);
}

const isMost = (several: number, all: number): boolean => several > 0 && several * 3 >= all * 2;

/** Most cells hold two parts and more, and whatever a cell holds is a film. */
function partsAll(cells: readonly CountedText[], { split }: Mark): boolean {
  let [all, several] = [0, 0];
  for (const { text, count } of cells) {
    all += count;
    if (split(text).length > 1) several += count;
  }
  return isMost(several, all) && cells.every(({ text }) => split(text).every(isFilm));
}

const arePairs = (cells: readonly CountedText[]): boolean =>
  cells.every(({ text }) => text.split('/').length === 2);

const pluralsOfReading = plainNames(
  `readings|values|measurements|measured values|repeats|messwerte|werte|messungen|einzelwerte|mesures|valeurs|
  releves|lectures|medidas|lecturas|mediciones|valores|misure|letture|valori|misurazioni|metingen|meetwaarden|
  waarden|medicoes|leituras|pomiary|odczyty|wartosci|matningar|matvarden|malinger|vaerdier|показания|измерения|
  значения|mereni|hodnoty`,
);

/** A plural above them; or a column of means that agrees with the two of each cell. */
function saidToBeReadings({ layout, rows }: Table, column: number): boolean {
  if (pluralsOfReading.has(plainWords(layout.header[column]?.label ?? ''))) return true;
  return layout.unknown.some((k) => {
    if (statisticOf(layout.header[k]?.label ?? '') !== 'mean') return false;
    const pairs = rows.filter(({ cells }) => (cells[column] ?? '').includes('/'));
    return pairs.every(({ cells }) => isMeanOf(cells[k] ?? '', (cells[column] ?? '').split('/')));
  });
}

function tellPairs(table: Table, column: number, findings: Findings): void {
  const row = table.rows.find(({ cells }) => (cells[column] ?? '').includes('/'));
  if (row === undefined) return;
  const text = cellText(row, column);
  findings.add('error', 'reading-ambiguous', () => ({
    message: `"${text}" may be two readings, or before and after, or the least and the largest`,
    at: placeOf(table, row, column),
    hint: 'write each in a cell of its own; if both are readings, call the column "Readings"',
  }));
}

/** No thinner than paint in µm, or with decimals: `4/5` may be a day. */
function isFilm(part: string): boolean {
  const shape = numberShape(part.trim());
  if (shape === undefined || shape.thousands !== '' || shape.negative || shape.plusBehind) {
    return false;
  }
  const value = numberOf(shape);
  const fraction = shape.fraction.length;
  return value <= 5000 && (value >= 20 || (value >= 0.5 && fraction > 0 && fraction < 3));
}

/** In the last column each part stands at its place in the text; elsewhere at the end of its row. */
function partedRow(row: Row, column: number, width: number, { split }: Mark): Row {
  const cell = row.cells[column] ?? '';
  if (notReading(cell.trim()) !== undefined) return row;
  if (column === width - 1 && !row.quoted) {
    const parts = split(cell);
    return { ...row, cells: [...row.cells.slice(0, column), ...parts, ...row.cells.slice(width)] };
  }
  const [first = '', ...more] = split(cell.trim());
  const own = Array.from({ length: width }, (_, k) => row.cells[k] ?? '').with(column, first);
  return { ...row, quoted: true, cells: [...own, ...more] };
}
