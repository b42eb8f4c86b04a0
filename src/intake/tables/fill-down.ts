/**
 * Vehicles and panels that are named on the first of their rows only, as in a spreadsheet with merged
 * cells: the rows below are of the same. A column in which most rows have a name and some have none
 * is another thing: a name is missing there. A panel may also stand in a row of its own above those of
 * its readings, where every panel does.
 */
import type { Findings } from '../findings.ts';
import type { Row } from '../rows/tokens.ts';
import { placeOf, type Table } from './table.ts';

const roles = ['vehicle', 'panel'] as const;

export type FilledTable = { readonly table: Table; readonly evidence: readonly string[] };

export function fillDown(table: Table, findings: Findings): FilledTable {
  const below = fillFromNameRows(table);
  let filled = below ?? table;
  const evidence = below === undefined ? [] : ['each panel is named in a row above its readings'];
  for (const role of roles) {
    const column = table.layout.columns.get(role);
    if (column === undefined) continue;
    const blank = countBlank(filled.rows, column);
    if (blank === 0 || blank === filled.rows.length) continue;
    const names = filled.rows.map(({ cells }) => (cells[column] ?? '').trim());
    if (isMerged(names, blank)) {
      filled = { ...filled, rows: withNames(filled.rows, column) };
      evidence.push(`each ${role} is named on the first of its rows, those below are of the same`);
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
    if ((row.cells[panelAt] ?? '').trim() !== '' || panelAt >= row.cells.length) return undefined;
    const name = (above?.cells[panelAt] ?? '').trim();
    filled.push({ ...row, cells: row.cells.with(panelAt, name), quoted: true });
    count += 1;
  }
  return count === 0 ? undefined : { ...table, rows: filled };
}

const isNameRow = ({ cells }: Row, panelAt: number): boolean =>
  cells.every((cell, k) => (cell.trim() !== '') === (k === panelAt));

function countBlank(rows: readonly Row[], column: number): number {
  let blank = 0;
  for (const { cells } of rows) if ((cells[column] ?? '').trim() === '') blank += 1;
  return blank;
}

/** The first row has a name, no two rows in sequence do alike, and most rows have none. */
const isMerged = (names: readonly string[], blank: number): boolean =>
  names[0] !== '' &&
  blank * 2 >= names.length &&
  names.every((name, k) => name === '' || name !== names[k - 1]);

/** The cells are no longer as long as in the text, so places are read off the text itself. */
function withNames(rows: readonly Row[], column: number): readonly Row[] {
  let last = '';
  return rows.map((row) => {
    const name = (row.cells[column] ?? '').trim();
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
    if ((row.cells[column] ?? '').trim() !== '') continue;
    findings.add('error', 'cell-invalid', () => ({
      message: 'the row names no vehicle, and other rows do',
      at: placeOf(table, row, column),
      hint: 'name the vehicle in every row',
    }));
  }
}
