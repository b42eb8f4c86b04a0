/** Where to measure on a panel: points spread over its face, a fifth of it away from every edge. */
import type { MeasuringPoint } from './template.ts';

const NEAR = 0.2;
const MIDDLE = 0.5;
const FAR = 0.8;

type Row = { readonly v: number; readonly count: number };

const oneRow = (count: number): readonly Row[] => [{ v: MIDDLE, count }];
const twoRows = (top: number, bottom: number): readonly Row[] => [
  { v: NEAR, count: top },
  { v: FAR, count: bottom },
];
const threeRows = (top: number, middle: number, bottom: number): readonly Row[] => [
  { v: NEAR, count: top },
  { v: MIDDLE, count: middle },
  { v: FAR, count: bottom },
];

/** The rows from the top, by how many points there are in all. */
const layouts: ReadonlyMap<number, readonly Row[]> = new Map([
  [4, twoRows(2, 2)],
  [5, threeRows(2, 1, 2)],
  [6, twoRows(3, 3)],
  [7, threeRows(2, 3, 2)],
  [8, threeRows(3, 2, 3)],
  [9, threeRows(3, 3, 3)],
]);

/** `count` places from a fifth to four fifths; a single one in the middle. */
const spread = (count: number): readonly number[] =>
  count === 1
    ? [MIDDLE]
    : Array.from({ length: count }, (_, i) => {
        const at = NEAR + ((FAR - NEAR) * i) / (count - 1);
        return Math.round(100 * at) / 100;
      });

/** A row along the middle of a narrow panel. */
export const pointsInRow = (count: number): readonly MeasuringPoint[] => pointsIn(oneRow(count));

/** Over a face: five as on a die, nine as three rows of three; up to three or beyond nine, a row. */
export const pointsOverFace = (count: number): readonly MeasuringPoint[] =>
  pointsIn(layouts.get(count) ?? oneRow(count));

/** The points in rows from the top: what lies at one height stands in one row, in its own order. */
export function rowsOfPoints<P extends { readonly v: number }>(
  points: readonly P[],
): readonly (readonly P[])[] {
  const heights = [...new Set(points.map(({ v }) => v))].sort((a, b) => a - b);
  return heights.map((height) => points.filter(({ v }) => v === height));
}

const pointsIn = (rows: readonly Row[]): readonly MeasuringPoint[] =>
  rows
    .flatMap(({ v, count }) => spread(count).map((u) => ({ u, v })))
    .map((place, i) => ({ point: `${i + 1}`, ...place }));
