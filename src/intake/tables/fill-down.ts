/**
 * Vehicles and panels that are named on the first of their rows only, as in a spreadsheet with merged
 * cells: the rows below are of the same. A column in which most rows have a name and some have none
 * is another thing: a name is missing there, unless the points of each panel count from 1 and those of the
 * nameless rows count on. A panel may also stand in a row of its own above those of its readings, where
 * every panel does; and a sign for "the same as above" in its place.
 */

import { ditto } from '../cells/words.ts';
import type { Findings } from '../findings.ts';
import { isDataRow } from '../parts/section-state.ts';
import { isCanonicalCsv } from '../rows/canonical-csv.ts';
import { columnTexts, someText } from '../rows/column-texts.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { placeOf, type Table } from './table.ts';

const roles = ['vehicle', 'panel'] as const;

export type FilledTable = { readonly table: Table; readonly evidence: readonly string[] };

export function fillDown(table: Table, findings: Findings): FilledTable {
  // What this program writes names every row.
  if (isCanonicalCsv(table.source)) return { table, evidence: [] };
  const below = fillFromNameRows(table);
  let filled = below ?? table;
  const evidence = below === undefined ? [] : ['each panel is named in a row above its readings'];
  for (const role of roles) {
    const column = table.layout.columns.get(role);
    if (column === undefined) continue;
    const repeated = withoutDittos(filled.rows, column);
    if (repeated !== undefined) {
      filled = { ...filled, rows: repeated };
      evidence.push(
        `a sign for the same stands below each ${role}: those rows are of the one above`,
      );
    }
    const blank = countBlank(filled.rows, column);
    if (blank === 0 || blank === filled.rows.length) continue;
    const names = filled.rows.map((row) => cellText(row, column));
    if (isMerged(names, blank)) {
      if (role === 'panel') tellPointless(filled, column, findings);
      filled = { ...filled, rows: withNames(filled.rows, column) };
      evidence.push(`each ${role} is named on the first of its rows, those below are of the same`);
    } else if (role === 'panel' && countsOn(filled, names)) {
      filled = { ...filled, rows: withNames(filled.rows, column) };
      evidence.push(
        'the points of each panel count from 1: rows that name none go on with the last',
      );
    } else if (role === 'vehicle') {
      tellNoVehicle(filled, column, findings);
    }
  }
  return { table: filled, evidence };
}

/**
 * Every row is a panel's name alone, or a reading without a name; the first is a name, and each name has
 * readings below it. A name without any may be one whose readings stand elsewhere.
 */
function fillFromNameRows(table: Table): Table | undefined {
  const { layout, rows } = table;
  const panelAt = layout.columns.get('panel');
  if (panelAt === undefined || layout.header.length === 0) return undefined;
  const [first] = rows;
  if (first === undefined || !isNameRow(first, panelAt)) return undefined;
  const filled: Row[] = [];
  let above: Row | undefined;
  let count = 0;
  for (const row of rows) {
    if (isNameRow(row, panelAt)) {
      if (above !== undefined && count === 0) return undefined;
      above = row;
      count = 0;
      continue;
    }
    if (cellText(row, panelAt) !== '' || panelAt >= row.cells.length) return undefined;
    const name = (above?.cells[panelAt] ?? '').trim();
    filled.push({ ...row, cells: row.cells.with(panelAt, name), quoted: true });
    count += 1;
  }
  return count === 0 ? undefined : { ...table, rows: filled };
}

const isNameRow = ({ cells }: Row, panelAt: number): boolean =>
  cells.every((cell, k) => (cell.trim() !== '') === (k === panelAt));

const countBlank = (rows: readonly Row[], column: number): number =>
  columnTexts(rows, column).get('')?.count ?? 0;

/** The first row has a name, no two rows in sequence do alike, and most rows have none. */
const isMerged = (names: readonly string[], blank: number): boolean =>
  names[0] !== '' &&
  blank * 2 >= names.length &&
  names.every((name, k) => name === '' || name !== names[k - 1]);

/** Every named panel begins at point 1, and every row without a name has the point after the one above. */
function countsOn({ layout, rows }: Table, names: readonly string[]): boolean {
  const pointAt = layout.columns.get('point') ?? -1;
  const points = rows.map((row) => Number(cellText(row, pointAt)));
  const begins = [...names.keys()].filter((k) => names[k] !== '' && isNewName(names, k));
  return (
    begins.length > 1 &&
    begins[0] === 0 &&
    begins.every((k) => points[k] === 1) &&
    names.every((name, k) => name !== '' || points[k] === (points[k - 1] ?? Number.NaN) + 1)
  );
}

const isNewName = (names: readonly string[], at: number): boolean =>
  names.slice(0, at).findLast((name) => name !== '') !== names[at];

/** `"` or `〃` below a name: the rows under the names above them; undefined where none is written so. */
function withoutDittos(rows: readonly Row[], column: number): readonly Row[] | undefined {
  const isSame = (row: Row): boolean => ditto.test(cellText(row, column));
  const [first] = rows;
  const isWritten = someText(rows, column, (text) => ditto.test(text));
  if (first === undefined || !isWritten || isSame(first)) return undefined;
  let above = '';
  return rows.map((row) => {
    if (isSame(row)) return { ...row, cells: row.cells.with(column, above), quoted: true };
    above = row.cells[column] ?? '';
    return row;
  });
}

/** In a table whose rows have points, a reading under a merged name and without one is of nobody knows what. */
function tellPointless(table: Table, panelAt: number, findings: Findings): void {
  const pointAt = table.layout.columns.get('point');
  if (pointAt === undefined) return;
  const isBlank = (row: Row, at: number): boolean => cellText(row, at) === '';
  const isNameless = (row: Row): boolean => isBlank(row, panelAt) && isBlank(row, pointAt);
  const { rows } = table;
  const nameless = rows.filter((row) => isNameless(row) && isDataRow(row, table.layout));
  if (nameless.length === 0 || !rows.some((row) => !isBlank(row, pointAt))) return;
  if (!rows.every((row) => isNameless(row) || !isBlank(row, pointAt))) return;
  for (const row of nameless) {
    findings.add('error', 'panel-missing', () => ({
      message: 'the row names neither panel nor point, as the others do',
      at: placeOf(table, row, panelAt),
      hint: 'if it is a reading of the panel above, number its point; else take the row out',
    }));
  }
}

/** The cells are no longer as long as in the text, so places are read off the text itself. */
function withNames(rows: readonly Row[], column: number): readonly Row[] {
  let last = '';
  return rows.map((row) => {
    const name = cellText(row, column);
    if (name !== '') {
      last = name;
      return row;
    }
    if (column >= row.cells.length) return row;
    return { ...row, cells: row.cells.with(column, last), quoted: true };
  });
}

function tellNoVehicle(table: Table, column: number, findings: Findings): void {
  for (const row of table.rows) {
    if (cellText(row, column) !== '') continue;
    findings.add('error', 'cell-invalid', () => ({
      message: 'the row names no vehicle, and other rows do',
      at: placeOf(table, row, column),
      hint: 'name the vehicle in every row',
    }));
  }
}
