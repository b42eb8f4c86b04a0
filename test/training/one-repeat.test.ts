/** Repeats that lie apart: one figure that is not what the gauge showed, or an unsteady hand. */
import { expect, test } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import { expertReference } from '../../src/training/reference.ts';
import { gradeAgainst, readingAt, surveyOf } from './true-class.ts';

const POINTS = ['bonnet', 'roof', 'boot'].flatMap((panel) =>
  ['1', '2', '3', '4'].map((point) => ({ panel, point })),
);
/** Each point read twice, so far apart. */
const read = (apart: (panel: string, point: string) => number) =>
  surveyOf(
    POINTS.flatMap(({ panel, point }, i) =>
      [-0.5, 0.5].map((share, r) =>
        readingAt(panel, point, r + 1, 112 + Number(point) + share * apart(panel, point), {
          line: 2 * i + r + 2,
        }),
      ),
    ),
    micrometres(1.5),
  );
const expert = expertReference(read(() => 1));
const told = (roof3: number, others: number) => {
  const found = gradeAgainst(
    read((panel, point) => (panel === 'roof' && point === '3' ? roof3 : others)),
    expert,
  ).reasons.find(({ code }) => code === 'repeats-apart');
  return [found?.line, found?.text.split(': ').slice(1).join(': ')];
};

test('it is one figure where all other points repeat as is usual', () => {
  // The SD of two repeats is their difference by √2: of the other eleven 1.41/√2 = 1.00.
  expect(told(20, Math.SQRT2)).toEqual([
    14,
    'most of it is point 3 of the roof (105.0 and 125.0 µm), without it they differ by 1.00 µm: read it again, and look at the gauge before you write',
  ]);
});

test('it is the hand where the others lie apart as well', () => {
  expect(told(20, 6)).toEqual([
    14,
    'lift and set the probe down at the very same place, square and without sliding',
  ]);
});

test('the point is the one of which two repeats are farthest apart, wherever it stands', () => {
  expect(told(0.5, 8)[0]).toBe(2);
});
