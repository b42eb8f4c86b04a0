/**
 * Vehicles and panels that are named on the first of their rows only, as in a spreadsheet with merged
 * cells: the rows below are of the same. A column in which most rows have a name and some have none
 * is another thing: a name is missing there.
 */
import type { Findings } from '../findings.ts';
import type { Row } from '../rows/tokens.ts';
import { placeOf, type Table } from './table.ts';

const roles = ['vehicle', 'panel'] as const;

export type FilledTable = { readonly table: Table; readonly evidence: readonly string[] };

export function fillDown(table: Table, findings: Findings): FilledTable {
  let filled = table;
  const evidence: string[] = [];
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
