import { expect, test } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import { moderatedDifference, roundDifference, roundsDiffer } from '../../src/film/same-round.ts';
import { filmModel } from '../../src/formats/models.ts';
import { studentTQuantiles } from '../reference/distributions.ts';
import { atLeastPanels, onFace, plainPanel, surveyOf } from './car-builder.ts';

const { measurement } = filmModel;
const rule = {
  repeatability: micrometres(1.5),
  rounds: {
    ...measurement.rounds,
    assumedDof: 6,
    film: micrometres(5),
    leastShift: micrometres(1),
    falseAlarm: 0.01,
  },
  pointsAreNamed: true,
};
const shift = (um: number, count: number): readonly number[] =>
  Array.from({ length: count }, () => um);

test('rounds differ from the least shift on, of itself, up or down', () => {
  for (const sign of [1, -1]) {
    expect(roundsDiffer(roundDifference(shift(sign, 400), rule), rule)).toBe(true);
    expect(roundsDiffer(roundDifference(shift(sign * 0.99, 400), rule), rule)).toBe(false);
  }
});

test('of three points a difference is known as gauge and points say together', () => {
  // 3, 4, 5: s² = (6·2·1.5² + 2)/(6 + 2) = 3.625; without names 6·2·(1.5² + 5²).
  const named = roundDifference([3, 4, 5], rule);
  expect(named.difference).toBe(4);
  expect(named.dof).toBe(8);
  expect(named.standardError).toBeCloseTo(Math.sqrt(29 / 8 / 3), 12);
  const unnamed = roundDifference([3, 4, 5], { ...rule, pointsAreNamed: false });
  expect(unnamed.standardError).toBeCloseTo(Math.sqrt((12 * 27.25 + 2) / 8 / 3), 12);
  // t(.995; 8)·1.0992 = 3.688: 4 is more than chance makes at 1 in 100, 3.6 is not.
  const reach = (studentTQuantiles['8']?.[4] ?? 0) * named.standardError;
  expect(reach).toBeCloseTo(3.688, 3);
  expect(roundsDiffer(named, rule)).toBe(true);
  expect(roundsDiffer(roundDifference([2.6, 3.6, 4.6], rule), rule)).toBe(false);
});

test('what other sets scatter by counts beside, by its degrees of freedom', () => {
  const of = moderatedDifference({ difference: 4, count: 2 }, { squares: 33, dof: 14 }, rule);
  expect(of).toEqual({
    difference: 4,
    standardError: expect.closeTo(Math.sqrt((27 + 33) / 20 / 2), 12),
    dof: 20,
  });
});

test('a car of which no panel makes a usual film has nothing said of that film', () => {
  const panels = [plainPanel('roof'), plainPanel('boot')];
  const covered = surveyOf({
    panels,
    readings: [...onFace('roof', 300, 304, 302), ...onFace('boot', 301, 299, 303)],
    facts: { covered: true },
    model: atLeastPanels(1),
  });
  expect(covered.baseline).toBeNull();
  expect(covered.notes).toEqual([]);
});
