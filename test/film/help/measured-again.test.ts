import { expect, test } from 'vitest';
import { studentTCdf } from '../../../src/base/stats/student-t.ts';
import { chanceAfter, SET_DOWN } from '../../../src/film/help/measured-again.ts';
import { amongSound, onFace } from '../car-builder.ts';

/** Repaint whose largest point reads a little under the line of filler, 500 µm. */
const nearFiller = () => {
  const { panel } = amongSound(onFace('tested', 240, 250, 496, 245, 242));
  const line = panel.sureness?.comparisons.find(({ compared }) => compared === 'largest-point');
  if (line === undefined) throw new Error('the largest point is held against the line of filler');
  return { points: panel.points, line };
};

test('a point that decides is surer by the root of how often it was read, its gauge and its shape as they were', () => {
  const { line, points } = nearFiller();
  const chance = chanceAfter(line, points, { count: 9, checked: false });
  // Read once, and three times more: what scatters is halved.
  const part = (source: string) => line.difference.components.get(source)?.contribution ?? 0;
  const halved = ['repeatability', 'resolution', 'curvature'].map((source) => part(source) / 2);
  const u = Math.hypot(part('calibration'), ...halved);
  expect(SET_DOWN).toBe(3);
  expect(part('repeatability')).toBeGreaterThan(0);
  expect(chance).toBeCloseTo(studentTCdf(-4 / u, Number.POSITIVE_INFINITY), 6);
  expect(chance).toBeLessThan(line.otherSide);
});

test('a point that decides is no surer by points elsewhere, and by a checked gauge it is', () => {
  const { line, points } = nearFiller();
  const after = (count: number, checked: boolean) =>
    chanceAfter(line, points, { count, checked }) ?? Number.NaN;
  expect(after(99, false)).toBe(after(5, false));
  expect(after(9, true)).toBeLessThan(after(9, false));
});
