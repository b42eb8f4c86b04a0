/** The numbers of a row, as they are written in its columns of readings. */

import { numberOf, numberShape } from '../cells/numbers.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import type { Table } from '../tables/table.ts';

type ColumnValue = { readonly column: number; readonly value: number };

export const columnValues = ({ layout }: Table, row: Row): readonly ColumnValue[] =>
  layout.readings.flatMap(({ column }) => {
    const shape = numberShape(cellText(row, column));
    return shape === undefined ? [] : [{ column, value: numberOf(shape) }];
  });

export const valuesOf = (table: Table, row: Row): readonly number[] =>
  columnValues(table, row).map(({ value }) => value);
