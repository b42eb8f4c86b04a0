import { describe, expect, test } from 'vitest';
import { pointsInRow, pointsOverFace } from '../../../src/film/template/point-layout.ts';
import { withPoints } from '../../../src/tasks/template/sheet-points.ts';
import { plainPanel } from '../../film/car-builder.ts';

const face = plainPanel('lid', { points: pointsOverFace(5) });
const narrow = plainPanel('rail', { points: pointsInRow(3) });

describe('the points of a panel on a sheet', () => {
  test('are its own where no number is asked for, or its own number is', () => {
    expect(withPoints(face, undefined)).toBe(face);
    expect(withPoints(face, 5)).toBe(face);
  });

  test('are spread over a face, and along a narrow panel', () => {
    expect(withPoints(face, 9).points).toEqual(pointsOverFace(9));
    expect(withPoints(narrow, 9).points).toEqual(pointsInRow(9));
  });
});
