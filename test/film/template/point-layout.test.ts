import { describe, expect, test } from 'vitest';
import {
  pointsInRow,
  pointsOverFace,
  rowsOfPoints,
} from '../../../src/film/template/point-layout.ts';

describe('points spread over a face', () => {
  test.each([1, 2, 3, 4, 5, 6, 7, 8, 9])(
    '%i points are as many, each in its own place, a fifth from the edges',
    (count) => {
      const points = pointsOverFace(count);
      expect(points.map(({ point }) => point)).toEqual(
        Array.from({ length: count }, (_, i) => `${i + 1}`),
      );
      expect(new Set(points.map(({ u, v }) => `${u} ${v}`)).size).toBe(count);
      for (const at of points.flatMap(({ u, v }) => [u, v])) {
        expect(at).toBeGreaterThanOrEqual(0.2);
        expect(at).toBeLessThanOrEqual(0.8);
      }
    },
  );

  test('five lie as on a die, nine as three rows of three', () => {
    const rows = (count: number) => rowsOfPoints(pointsOverFace(count)).map((row) => row.length);
    expect(rows(5)).toEqual([2, 1, 2]);
    expect(rows(9)).toEqual([3, 3, 3]);
  });

  test('beyond nine they are one row', () => {
    expect(rowsOfPoints(pointsOverFace(12)).map((row) => row.length)).toEqual([12]);
  });

  test('on a narrow panel they lie along its middle, evenly', () => {
    expect(pointsInRow(4)).toEqual([
      { point: '1', u: 0.2, v: 0.5 },
      { point: '2', u: 0.4, v: 0.5 },
      { point: '3', u: 0.6, v: 0.5 },
      { point: '4', u: 0.8, v: 0.5 },
    ]);
  });
});
