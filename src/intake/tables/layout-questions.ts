/**
 * What there is to say about a header that was found: which columns are doubled or unknown.
 */

import { counted } from '../../base/counted.ts';
import type { Place } from '../../base/diagnostics.ts';
import { suggest } from '../../base/did-you-mean.ts';
import { groupBy } from '../../base/group-by.ts';
import { median } from '../../base/stats/summary.ts';
import { numberOf, numberShape } from '../cells/numbers.ts';
import { isOtherQuantity } from '../doubts/other-quantities.ts';
import type { Findings } from '../findings.ts';
import { besideReadings } from '../header/beside-readings.ts';
import { gaugeVocabulary } from '../header/gauge-vocabulary.ts';
import { plainWords } from '../header/header.ts';
import type { Layout } from '../header/layout.ts';
import { isDoubtfulSeries } from '../header/series-columns.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { namesStatistic } from '../statistics/statistic-words.ts';
import { placeOf, type Table } from './table.ts';

/** Doubled columns are refused; unknown ones named, and in a wide table of numbers taken as panels. */
export function adoptColumns(table: Table, findings: Findings): Table {
  const { layout, header } = table;
  if (header === undefined) return table;
  const at = (column: number) => placeOf(table, header, column);
  for (const column of layout.repeated) tellRepeated(table, column, at, findings);
  tellUnnamed(table, at, findings);
  tellDoubtfulSeries(table, at, findings);
  tellPanelsTwice(table, at, findings);
  const panels = layout.unknown.filter(
    (k) => mayBePanel(layout, table.rows, k) && !isConstant(table.rows, k),
  );
  tellUnknown(table, panels, at, findings);
  if (panels.length === 0) return table;
  const readings = [
    ...layout.readings,
    ...panels.map((column) => ({
      column,
      panel: layout.header[column]?.label ?? '',
      number: null,
    })),
  ].sort((a, b) => a.column - b.column);
  return { ...table, layout: { ...layout, readings } };
}

type At = (column: number) => Place;

function tellRepeated({ layout }: Table, column: number, at: At, findings: Findings): void {
  const cell = layout.header[column];
  const role = cell?.role ?? 'reading';
  const first = layout.header.findIndex((other) => other.role === role);
  findings.add('error', 'column-repeated', () => ({
    message: `"${cell?.text}" and "${layout.header[first]?.text}" both name the ${role}`,
    at: at(column),
    hint: 'rename or remove one of them',
  }));
}

function tellDoubtfulSeries({ layout }: Table, at: At, findings: Findings): void {
  const [first, second] = layout.readings;
  if (first === undefined || second === undefined || layout.kind !== 'repeats') return;
  if (first.place !== undefined) return;
  const names = layout.readings.map(({ column }) => layout.header[column]?.label ?? '');
  if (!isDoubtfulSeries(names)) return;
  findings.add('warning', 'reading-doubted', () => ({
    message: `"${names[0]}" and "${names[1]}" are both taken for readings of the panel`,
    at: at(first.column),
    hint: 'if they are of two cars, people, gauges, layers or days, name the one that counts: --columns reading=NAME',
  }));
}

function tellUnnamed(table: Table, at: At, findings: Findings): void {
  const { layout, rows } = table;
  const read = new Set(layout.readings.map(({ column }) => column));
  for (const [column, { text, unit, role }] of layout.header.entries()) {
    if (text !== '' || unit !== undefined || role !== undefined || read.has(column)) continue;
    if (layout.unknown.includes(column)) continue;
    if (!holdsNumbers(rows, column) || (column === 0 && isIndex(rows))) continue;
    if (countsBeside(table, column)) {
      findings.add('warning', 'column-unknown', () => ({
        message: `column ${column + 1} has no name and is not read: its numbers are too small beside the readings to be any`,
        at: at(column),
      }));
      continue;
    }
    findings.add('error', 'column-unnamed', () => ({
      message: `column ${column + 1} has numbers and no name`,
      at: at(column),
      hint: 'name it, or delete it',
    }));
  }
}

/** A column of numbers beside those of panels that nothing says to be anything else. */
const mayBePanel = (layout: Layout, rows: readonly Row[], column: number): boolean =>
  layout.kind === 'wide' &&
  // Beside points under the names of their panels every column of a panel has its name above it.
  layout.series !== 'point' &&
  !noPanel(layout.header[column]?.label ?? '') &&
  !(column === 0 && isCounter(rows)) &&
  holdsNumbers(rows, column);

/** `Roof;Bonnet;Roof`: columns under one panel are read as points of it, and one of them may be another. */
function tellPanelsTwice({ layout }: Table, at: At, findings: Findings): void {
  if (layout.kind !== 'wide' || layout.series === 'point') return;
  const byPanel = groupBy(layout.readings, ({ panel }) => plainWords(panel ?? ''));
  const [[first, second] = [], ...others] = [...byPanel.values()].filter((own) => own.length > 1);
  if (first === undefined || second === undefined) return;
  const name = layout.header[first.column]?.text ?? '';
  const more = others.length === 0 ? '' : `; so it is with ${counted(others.length, 'more name')}`;
  findings.add('warning', 'reading-doubted', () => ({
    message: `columns ${first.column + 1} and ${second.column + 1} are both called "${name}": they are read as points of one panel${more}`,
    at: at(second.column),
    hint: 'if one of them is another panel, call it so',
  }));
}

function tellUnknown(
  { layout, rows }: Table,
  panels: readonly number[],
  at: At,
  findings: Findings,
): void {
  const names = Object.keys(gaugeVocabulary);
  for (const column of layout.unknown) {
    const cell = layout.header[column];
    if (panels.includes(column) || cell === undefined) continue;
    if (mayBePanel(layout, rows, column) && isConstant(rows, column)) {
      findings.add('warning', 'column-unknown', () => ({
        message: `column "${cell.text}" is not read: it has one number in every row, as a setting has`,
        at: at(column),
        hint: 'if it is a panel, give it the name of one',
      }));
      continue;
    }
    if (namesStatistic(cell.label)) {
      const message =
        cell.text === ''
          ? `column ${column + 1} has no name and is the mean of the readings beside it in every row: it is left out`
          : `a statistics column: ${cell.text} is no ${layout.kind === 'wide' ? 'panel' : 'reading'}`;
      const severity =
        cell.text !== '' && readingsBeside(layout, rows, column) ? 'note' : 'warning';
      findings.add(severity, 'statistics-left-out', () => ({ message, at: at(column) }));
      continue;
    }
    if (standsAmongReadings(layout, rows, column)) {
      findings.add('error', 'column-unnamed', () => ({
        message: `column "${cell.text}" stands among the columns of readings and has numbers as large, and nothing says what it is`,
        at: at(column),
        hint: 'if it holds readings as well, number the columns of readings 1, 2, 3 …; else move it behind them or take it out',
      }));
      continue;
    }
    findings.add('warning', 'column-unknown', () => {
      // One letter is near to any other.
      const hint = cell.label.length > 1 ? suggest(cell.label, names) : undefined;
      const message = `column "${cell.text}" is not read`;
      return { message, at: at(column), ...(hint === undefined ? {} : { hint }) };
    });
  }
}

/** Whether each number of a column of statistics stands beside readings it may be of. */
const readingsBeside = ({ readings }: Layout, rows: readonly Row[], column: number): boolean =>
  rows.every(
    (row) => !isNumber(row, column) || readings.some((reading) => isNumber(row, reading.column)),
  );

/** `L`, `K`, `R`: between two columns of readings, filled as they are. */
function standsAmongReadings(
  { kind, readings, header }: Layout,
  rows: readonly Row[],
  column: number,
): boolean {
  const own = readings.map((reading) => reading.column);
  if (kind === 'wide' || !own.includes(column - 1) || !own.includes(column + 1)) return false;
  if (besideReadings.test(header[column]?.label ?? '') || isConstant(rows, column)) return false;
  const [numbers, before, behind] = [column, column - 1, column + 1].map((k) =>
    rows.flatMap((row) => numberShape(cellText(row, k)) ?? []).map(numberOf),
  );
  const beside = [...(before ?? []), ...(behind ?? [])];
  if (numbers === undefined || numbers.length * 3 < rows.length * 2) return false;
  if (numbers.length === 0 || beside.length === 0) return false;
  const ratio = median(numbers) / median(beside);
  return ratio > 0.5 && ratio < 2;
}

const noPanel = (label: string): boolean =>
  namesStatistic(label) || besideReadings.test(label) || isOtherQuantity(label);

/** Whether the numbers in the first cells are 1, 2, 3 and so on, and no film. */
function isCounter(rows: readonly Row[]): boolean {
  const numbers = rows.flatMap((row) => {
    const text = cellText(row, 0);
    return /^\d{1,4}$/u.test(text) ? [Number(text)] : [];
  });
  return numbers.length > 1 && numbers.every((number, k) => number === k + 1);
}

/** Whether the first cells count the rows, or the points of each panel, from 0 or 1. */
function isIndex(rows: readonly Row[]): boolean {
  let before = 0;
  return rows.every((row) => {
    const text = cellText(row, 0);
    if (text === '' || numberShape(text) === undefined) return true;
    const number = Number(text);
    const counts = number === before + 1 || number === before || number === 0 || number === 1;
    before = number;
    return counts;
  });
}

/**
 * Whole numbers of two digits, each less than a fifth of any reading: a count, and no film like the others.
 * Behind a reading they may be its decimals.
 */
function countsBeside({ layout, rows }: Table, column: number): boolean {
  if (layout.readings.some(({ column: own }) => own < column)) return false;
  const [largest, least] = rows.reduce(
    ([most, few], row) => {
      const text = cellText(row, column);
      const counted = text === '' || /^\d{1,2}$/u.test(text) ? Number(text) : Number.NaN;
      const readings = layout.readings.flatMap(({ column: own }) => {
        const shape = numberShape(cellText(row, own));
        return shape === undefined ? [] : [numberOf(shape)];
      });
      return [Math.max(most, counted), Math.min(few, ...readings)];
    },
    [0, Number.POSITIVE_INFINITY],
  );
  return largest * 5 < least && Number.isFinite(least);
}

/** One number in every row is a setting; no film is so even. */
const isConstant = (rows: readonly Row[], column: number): boolean =>
  rows.length > 2 && new Set(rows.map((row) => cellText(row, column))).size === 1;

const isNumber = (row: Row, column: number): boolean =>
  numberShape(cellText(row, column)) !== undefined;

const holdsNumbers = (rows: readonly Row[], column: number): boolean =>
  rows.some((row) => isNumber(row, column));
