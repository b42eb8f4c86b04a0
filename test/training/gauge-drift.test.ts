/** When a line over the marks is a drift, reckoned by the analysis of covariance: one slope, a level for each panel. */
import { linearRegression } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { fUpperTail } from '../../src/base/stats/incomplete-beta.ts';
import { studentTCdf } from '../../src/base/stats/student-t.ts';
import { gaugeDrift } from '../../src/training/gauge-drift.ts';
import type { MarkCompared } from '../../src/training/marks-compared.ts';

/** Five marks on each of four panels: an error of each, a level of each panel, a slope from mark to mark. */
const errors = [0.4, -0.7, 0.1, 0.6, -0.5, -0.2, 0.8, -0.6, 0.3, -0.1];
const PANELS = 4;
const EACH = 5;
const n = PANELS * EACH;
const drifting = (slope: number, levels: readonly number[]): readonly number[] =>
  Array.from(
    { length: n },
    (_, i) => slope * i + (levels[Math.floor(i / EACH)] ?? 0) + (errors[i % errors.length] ?? 0),
  );
const marksOf = (values: readonly number[]): readonly MarkCompared[] =>
  values.map(
    (difference, i) =>
      ({ panel: { id: `panel-${Math.floor(i / EACH)}` }, difference }) as unknown as MarkCompared,
  );
const limits = { falseAlarm: 1, sigmaPt: 0, leastMarks: 10, levelsChance: 0, levelSd: 1.5 };

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
const squares = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value ** 2, 0);
const about = (values: readonly number[]): readonly number[] =>
  values.map((value) => value - mean(values));
const ofPanel = (values: readonly number[], panel: number): readonly number[] =>
  values.slice(panel * EACH, (panel + 1) * EACH);

/** The line, the variance about one line for each panel, that of the levels about the line, and their chances. */
function covariance(values: readonly number[]) {
  const x = values.map((_, i) => i);
  const { m: slope, b: start } = linearRegression(values.map((y, i) => [i, y]));
  const ofLine = squares(values.map((y, i) => y - start - slope * i));
  const within = [0, 1, 2, 3].map(
    (k) => [about(ofPanel(x, k)), about(ofPanel(values, k))] as const,
  );
  const [xs, ys] = [within.flatMap(([one]) => one), within.flatMap(([, one]) => one)];
  const common = xs.reduce((sum, one, i) => sum + one * (ys[i] ?? 0), 0) / squares(xs);
  const noise = squares(ys.map((y, i) => y - common * (xs[i] ?? 0))) / (n - PANELS - 1);
  const apart = (ofLine - noise * (n - PANELS - 1)) / (PANELS - 1);
  const spread = squares(about(x));
  const lever = squares([0, 1, 2, 3].map((k) => EACH * (mean(ofPanel(x, k)) - mean(x))));
  const slopeChance = (levelVariance: number): number => {
    const sd = Math.sqrt(noise / spread + (levelVariance * lever) / spread ** 2);
    return 2 * studentTCdf(-Math.abs(slope / sd), n - 2);
  };
  return {
    slope,
    slopeChance,
    /** What one level adds to a mean of five marks: (apart − noise)/5. */
    levelVariance: (apart - noise) / EACH,
    levelsChance: (levelSd: number): number =>
      fUpperTail(apart / (noise + levelSd ** 2 * EACH), PANELS - 1, n - PANELS - 1),
  };
}

const even = drifting(0.6, [0.3, -0.4, 0.2, -0.1]);
const uneven = drifting(0.6, [4, -5, 3, -2]);

describe('a drift', () => {
  test('is told with the line from the first mark to the last, and what it comes to on each panel', () => {
    const found = gaugeDrift(marksOf(even), limits);
    const { slope } = covariance(even);
    expect(found?.marks).toBe(20);
    expect(found?.total).toBeCloseTo(19 * slope, 10);
    // Panels lie about marks 2, 7, 12 and 17 of 0 to 19, whose middle is 9.5.
    expect([...(found?.onPanel ?? [])].map(([id]) => id)).toEqual([
      'panel-0',
      'panel-1',
      'panel-2',
      'panel-3',
    ]);
    [2, 7, 12, 17].forEach((middle, k) => {
      expect(found?.onPanel.get(`panel-${k}`)).toBeCloseTo(mean(even) + slope * (middle - 9.5), 10);
    });
  });

  test.each([
    ['no farther apart than usual', even, true],
    ['farther apart than usual, which counts then', uneven, false],
  ] as const)(
    'is told where its slope has a chance under the false alarm, with levels %s',
    (_, values, isUsual) => {
      const { slopeChance, levelVariance } = covariance(values);
      expect(levelVariance < limits.levelSd ** 2).toBe(isUsual);
      const chance = slopeChance(isUsual ? limits.levelSd ** 2 : levelVariance);
      const told = (times: number) =>
        gaugeDrift(marksOf(values), { ...limits, falseAlarm: times * chance }) !== null;
      expect([told(0.999), told(1.001)]).toEqual([false, true]);
    },
  );

  test('is none where levels of the panels’ own fit better than they usually do', () => {
    const chance = covariance(uneven).levelsChance(limits.levelSd);
    expect(chance).toBeGreaterThan(1e-9);
    const told = (times: number) =>
      gaugeDrift(marksOf(uneven), { ...limits, levelsChance: times * chance }) !== null;
    expect([told(0.999), told(1.001)]).toEqual([true, false]);
  });

  test('is none that comes to less than σ_pt, upwards or downwards', () => {
    for (const sign of [1, -1]) {
      const values = even.map((value) => sign * value);
      const total = 19 * Math.abs(covariance(values).slope);
      const told = (sigmaPt: number) =>
        gaugeDrift(marksOf(values), { ...limits, sigmaPt }) !== null;
      expect([told(0.999 * total), told(1.001 * total)]).toEqual([true, false]);
    }
  });

  test('takes as many marks as are asked for, two panels, and three marks more than panels', () => {
    const told = (marks: readonly MarkCompared[], leastMarks = 4) =>
      gaugeDrift(marks, { ...limits, leastMarks }) !== null;
    const marks = marksOf(even);
    expect([told(marks, 20), told(marks, 21)]).toEqual([true, false]);
    expect(told(marks.slice(0, 5))).toBe(false);
    expect(told(marks.slice(0, 6))).toBe(true);
    expect(told(marks.slice(1, 6))).toBe(true);
    expect(told(marks.slice(2, 6))).toBe(false);
  });
});
