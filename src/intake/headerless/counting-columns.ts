/**
 * Of columns of numbers without names, those that count the rows: from wherever the gauge stood, over the file or on
 * each panel anew. They are no films where readings would hardly ever count up so by chance.
 */
import { numberOf, numberShape } from '../cells/numbers.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { type NumberColumn, predictable } from '../statistics/predictable-column.ts';

/** Chance does so less often than once in ten thousand files. */
const CERTAIN = 1e-4;

/** `columns`: those of numbers; `panels`: of which panel, or below which line, each row is. */
export function countingColumns(
  rows: readonly Row[],
  columns: readonly number[],
  panels: readonly string[],
): readonly number[] {
  const whole = columns.filter((column) =>
    rows.every((row) => /^\d{1,5}$/u.test(cellText(row, column))),
  );
  if (columns.length < 2 || whole.length === 0) return [];
  const numbers = new Map(columns.map((column) => [column, numbersOf(rows, column)]));
  const counting = whole.filter((column) => {
    const others = columns.flatMap((k) => (k === column ? [] : [numbers.get(k) ?? []]));
    const told = predictable(numbers.get(column) ?? [], others, panels);
    return told !== undefined && told.pattern !== 'constant' && told.chance < CERTAIN;
  });
  return counting.length < columns.length ? counting : [];
}

const numbersOf = (rows: readonly Row[], column: number): NumberColumn =>
  rows.map((row) => {
    const shape = numberShape(cellText(row, column));
    return shape === undefined
      ? undefined
      : { value: numberOf(shape), step: 10 ** -shape.fraction.length };
  });
