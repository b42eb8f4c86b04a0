/** Rows that have more cells than their header names, or too few to say what they mean. */

import { numberShape } from '../cells/numbers.ts';
import { mayBeShifted } from '../doubts/shifted-cells.ts';
import type { Findings } from '../findings.ts';
import { headsSide, sidesHint } from '../header/side-words.ts';
import { cellText } from '../rows/row.ts';
import type { Delimiter, Row } from '../rows/tokens.ts';
import { placeOf, type Table } from './table.ts';

export type Misfit =
  | { readonly kind: 'long'; readonly column: number }
  | { readonly kind: 'short'; readonly needed: number };

/** What is wrong with the number of a row's cells, if anything. */
export type RowShape = (row: Row) => Misfit | undefined;

export function rowShape(table: Table): RowShape {
  const { layout } = table;
  const width = layout.header.length === 0 ? Number.POSITIVE_INFINITY : layout.header.length;
  const panelAt = layout.columns.get('panel') ?? -1;
  const needed =
    layout.kind === 'wide' ? 0 : Math.max(panelAt, layout.readings[0]?.column ?? 0) + 1;
  return (row) => {
    const { cells } = row;
    if (cells.length > width) {
      const filled = cells.findIndex((cell, k) => k >= width && cell.trim() !== '');
      const extra = filled === -1 && mayBeShifted(table, row) ? width : filled;
      if (extra !== -1) return { kind: 'long', column: extra };
    }
    return cells.length < needed ? { kind: 'short', needed } : undefined;
  };
}

export function tellShape(table: Table, row: Row, misfit: Misfit, findings: Findings): void {
  const { layout, delimiter } = table;
  const { cells } = row;
  if (misfit.kind === 'long') {
    findings.add('error', 'row-too-long', () => ({
      message: `the row has ${cells.length} cells, the header names ${layout.header.length} columns`,
      at: placeOf(table, row, misfit.column),
      hint: tooLongHint(delimiter, (cells[misfit.column] ?? '').trim()),
    }));
    return;
  }
  const { needed } = misfit;
  const name = layout.header[needed - 1]?.text ?? '';
  findings.add('error', 'row-too-short', () => ({
    message: `the row ends before column ${needed}${name === '' ? '' : `, "${name}"`}`,
    at: placeOf(table, row, cells.length - 1),
    hint: headsSide(cellText(row, 0))
      ? sidesHint
      : 'add the missing cells, or take the line out if it is no row',
  }));
}

function tooLongHint(delimiter: Delimiter, extra: string): string {
  const isNumber = numberShape(extra) !== undefined;
  if (delimiter !== ',') {
    return isNumber
      ? 'a further reading? name its column; else take the cell out'
      : 'quote a cell that holds the delimiter';
  }
  return !isNumber
    ? 'a decimal comma or a comma in a note? quote that cell, or separate the columns by ;'
    : 'a decimal comma? quote each such number; a further reading? name its column';
}
