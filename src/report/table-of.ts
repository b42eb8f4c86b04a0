import type { DataCell, DataTable } from './model.ts';

/** What stands in each column of a row, in the order of the columns. */
export type ColumnsOf<Row> = Readonly<Record<string, (row: Row) => DataCell>>;

/** The codes of remarks in one cell, each once. */
export const codesOf = (said: readonly { readonly code: string }[]): string =>
  [...new Set(said.map(({ code }) => code))].join(' ');

/** A table for a spreadsheet: its columns by name, each with what it says of a row. */
export function tableOf<Row>(columns: ColumnsOf<Row>, rows: readonly Row[]): DataTable {
  const cells = Object.values(columns);
  return {
    columns: Object.keys(columns),
    rows: rows.map((row) => cells.map((cellOf) => cellOf(row))),
  };
}
