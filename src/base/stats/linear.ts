/**
 * Small dense matrices, row by row, and linear equations.
 *
 * A matrix of no rows is allowed everywhere. Nothing is checked for shape: the callers build what they pass.
 */
import { at } from '../at.ts';

export type Matrix = readonly (readonly number[])[];

export const identity = (size: number): Matrix =>
  Array.from({ length: size }, (_, i) => Array.from({ length: size }, (_, j) => (i === j ? 1 : 0)));

export const transpose = (a: Matrix): Matrix =>
  (a[0] ?? []).map((_, j) => a.map((row) => at(row, j)));

export const dot = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, value, i) => sum + value * at(b, i), 0);

export function multiply(a: Matrix, b: Matrix): Matrix {
  const columns = transpose(b);
  return a.map((row) => columns.map((column) => dot(row, column)));
}

export const times = (a: Matrix, x: readonly number[]): readonly number[] =>
  a.map((row) => dot(row, x));

export const add = (a: Matrix, b: Matrix): Matrix =>
  a.map((row, i) => row.map((value, j) => value + at(at(b, i), j)));

/**
 * X of A·X = B, by elimination with the largest pivot of each column (Golub & Van Loan, Matrix
 * Computations, 3.4). Well-conditioned A: some 1e-14 of the largest entry. A singular A is a mistake of the
 * caller and throws.
 */
export function solveLinear(a: Matrix, b: Matrix): Matrix {
  const size = a.length;
  const rows = a.map((row, i) => [...row, ...at(b, i)]);
  for (let column = 0; column < size; column += 1) {
    const pivot = bringUpPivot(rows, column);
    for (let below = column + 1; below < size; below += 1) {
      const row = at(rows, below);
      subtract(row, pivot, at(row, column) / at(pivot, column), column);
    }
  }
  for (let column = size - 1; column >= 0; column -= 1) {
    const pivot = at(rows, column);
    const by = at(pivot, column);
    for (let i = column; i < pivot.length; i += 1) pivot[i] = at(pivot, i) / by;
    for (let above = 0; above < column; above += 1) {
      const row = at(rows, above);
      subtract(row, pivot, at(row, column), column);
    }
  }
  return rows.map((row) => row.slice(size));
}

function bringUpPivot(rows: number[][], column: number): number[] {
  let largest = column;
  for (let i = column + 1; i < rows.length; i += 1) {
    if (Math.abs(at(at(rows, i), column)) > Math.abs(at(at(rows, largest), column))) largest = i;
  }
  const [pivot, other] = [at(rows, largest), at(rows, column)];
  if (!(Math.abs(at(pivot, column)) > 0)) throw new RangeError('these equations have no answer');
  rows[largest] = other;
  rows[column] = pivot;
  return pivot;
}

function subtract(row: number[], pivot: readonly number[], share: number, from: number): void {
  for (let i = from; i < row.length; i += 1) row[i] = at(row, i) - share * at(pivot, i);
}
