/** What a trainee reads more or less all over the car: the middle, its interval, and what a consensus adds to it. */
import { describe, expect, test } from 'vitest';
import { carBias, isLikeBias } from '../../src/training/car-bias.ts';
import type { PanelScore } from '../../src/training/panel-score.ts';
import { consensusReference, expertReference } from '../../src/training/reference.ts';
import { normal, seededRandom } from '../samples/seeded-random.ts';
import {
  changed,
  drawCar,
  gradeAgainst,
  model,
  oneGauge,
  readCar,
  sigmaPt,
  surveyOf,
  usualHabit,
} from './true-class.ts';

/** Nothing else of a score makes a bias. */
const scoresOf = (differences: readonly number[], uncertainty = 0): readonly PanelScore[] =>
  differences.map(
    (difference) => ({ difference, reference: { uncertainty } }) as unknown as PanelScore,
  );
const against = (kind: 'expert' | 'consensus' = 'expert', surveys = 1) => ({
  sigmaPt,
  calibration: 0,
  gauges: oneGauge,
  reference: { kind, surveys },
});
const biasOf = (differences: readonly number[]) =>
  carBias(scoresOf(differences), against(), model.scores);

describe('the bias over the car', () => {
  test('of three panels is their median ± t₂·1.25·s/√3, as tables have t', () => {
    // t(.975; 2) = 4.303; of −0.1, 6.9 and 12.6 the sample SD is 6.355.
    const found = biasOf([-0.1, 6.9, 12.6]);
    const half = (4.303 * 1.25 * 6.355) / Math.sqrt(3);
    expect(found?.mean).toBe(6.9);
    expect(found?.low).toBeCloseTo(6.9 - half, 1);
    expect(found?.high).toBeCloseTo(6.9 + half, 1);
  });

  test.each([3, 4, 5, 7, 11])(
    'over %d panels lies within its stated 95 %% in at least 95 of 100 cars, and not in all',
    (panels) => {
      const random = seededRandom(4_711 + panels);
      const CARS = 4_000;
      const held = Array.from({ length: CARS }, () =>
        biasOf(Array.from({ length: panels }, () => 2 + 2 * normal(random))),
      ).filter((found) => found !== null && found.low <= 2 && found.high >= 2).length;
      expect(held / CARS).toBeGreaterThanOrEqual(0.945);
      expect(held / CARS).toBeLessThanOrEqual(0.99);
    },
  );

  test.each([3, 4, 5, 6, 7, 11])('over %d panels is not led off by one panel far off', (panels) => {
    const honest = Array.from({ length: panels - 1 }, (_, i) => 0.2 * i - 0.3);
    const found = biasOf([...honest, 116]);
    expect(found?.mean).toBeLessThanOrEqual(Math.max(...honest));
    expect(found?.verdict).toBe('satisfactory');
  });

  test('is no fault where it may as well be none, and is one where it is shown', () => {
    expect(biasOf([3, 8, 13])).toMatchObject({ verdict: 'satisfactory' });
    expect(biasOf([7.5, 8, 8.5])).toMatchObject({ verdict: 'questionable' });
    expect(biasOf([11.5, 12, 12.5])).toMatchObject({ verdict: 'unsatisfactory' });
  });

  test('is none that its interval reaches, however far off the middle lies', () => {
    // z = 40/√(3² + 14.4²) = 2.7 by itself; ± 4.303 · 14.4 reaches nothing at all.
    const found = biasOf([20, 40, 60]);
    expect(found?.z).toBeCloseTo(40 / Math.hypot(3, (1.25 * 20) / Math.sqrt(3)), 6);
    expect(found?.z).toBeGreaterThan(2);
    expect(found?.low).toBeLessThan(0);
    expect(found?.verdict).toBe('satisfactory');
    expect(biasOf([-20, -40, -60])?.verdict).toBe('satisfactory');
  });

  test('needs three panels', () => {
    expect(biasOf([8, 8.1])).toBeNull();
    expect(biasOf([8, 8.1, 8.2])).not.toBeNull();
  });
});

test('a panel is off as the car is where it is off to the same side, by less than twice as much', () => {
  const [above, below] = [{ mean: 6 as never }, { mean: -6 as never }];
  expect([0.1, 6, 11.9].map((by) => isLikeBias(by, above))).toEqual([true, true, true]);
  expect([-0.1, -6, 12, 20].map((by) => isLikeBias(by, above))).toEqual(Array(4).fill(false));
  expect([-11.9, -12, 6].map((by) => isLikeBias(by, below))).toEqual([true, false, false]);
});

describe('the bias against a consensus', () => {
  const differences = [9.8, 10, 10.2];

  test('is known no better than the consensus is, which is off by the same on every panel', () => {
    const plain = carBias(scoresOf(differences, 4), against('expert'), model.scores);
    const found = carBias(scoresOf(differences, 4), against('consensus', 4), model.scores);
    // u of the panels: 1.25 · 0.2/√3.
    expect(10 / (plain?.z ?? 0)).toBeCloseTo(Math.hypot(3, 0.1443), 3);
    expect(10 / (found?.z ?? 0)).toBeCloseTo(Math.hypot(3, 0.1443, 4), 3);
    // t(.975; 3) = 3.182 on nearly all of it.
    expect((found?.high ?? 0) - 10).toBeCloseTo(3.182 * Math.hypot(0.1443, 4), 1);
  });

  test('names the one trainee of four who is far off, and none of the others', () => {
    const random = seededRandom(44);
    const three = /^(bonnet|roof|boot)$/;
    const of = readCar(random, drawCar(random), { ...usualHabit, marked: true }).filter(
      ({ panel }) => three.test(panel),
    );
    const shifted = (by: number) =>
      surveyOf(changed(of, ({ thickness }) => thickness + by + 0.2 * normal(random)));
    const surveys = [0, 0.1, -0.1, 40].map(shifted);
    const reference = consensusReference(surveys, model.class);
    const grades = surveys.map((survey) => gradeAgainst(survey, reference));
    expect(grades.map(({ verdict }) => verdict)).toEqual([
      'satisfactory',
      'satisfactory',
      'satisfactory',
      'unsatisfactory',
    ]);
    expect(grades.map(({ reasons }) => reasons.some(({ code }) => code === 'car-off'))).toEqual([
      false,
      false,
      false,
      true,
    ]);
  });

  test('lays nothing to four honest trainees of six where two read 25 µm more', () => {
    const random = seededRandom(45);
    const car = drawCar(random);
    const surveys = [0, 0, 0, 0, 25, 25].map((bias) =>
      surveyOf(readCar(random, car, { ...usualHabit, marked: true, bias })),
    );
    const reference = consensusReference(surveys, model.class);
    const verdicts = surveys.map((survey) => gradeAgainst(survey, reference).verdict);
    expect(verdicts.slice(0, 4)).toEqual(Array(4).fill('satisfactory'));
    expect(verdicts.slice(4)).not.toContain('satisfactory');
  });
});

describe('a slip on one panel', () => {
  const random = seededRandom(46);
  const car = drawCar(random);
  const marked = { ...usualHabit, marked: true };
  const expert = expertReference(surveyOf(readCar(random, car, marked)));
  const own = readCar(random, car, marked);
  const slippedOn = (panels: RegExp, slipped: RegExp) =>
    gradeAgainst(
      surveyOf(
        changed(
          own.filter(({ panel }) => panels.test(panel)),
          ({ panel, thickness }) => (slipped.test(panel) ? 10 * thickness : thickness),
        ),
      ),
      expert,
    ).bias;

  test('is no bias: the panel is left out, and of two that are left none is told', () => {
    const four = slippedOn(/^(bonnet|roof|boot|wing-front-left)$/, /^roof$/);
    expect(Math.abs(four?.mean ?? 99)).toBeLessThan(3);
    expect((four?.high ?? 99) - (four?.low ?? 0)).toBeLessThan(15);
    expect(slippedOn(/^(bonnet|roof|boot)$/, /^roof$/)).toBeNull();
  });

  test('and no bias is told where more panels slipped than did not', () => {
    const seven = /^(bonnet|roof|boot|wing|door-front)/;
    expect(slippedOn(seven, /^(bonnet|roof|boot|wing-front-left)$/)).toBeNull();
    expect(slippedOn(seven, /^(bonnet|roof|boot)$/)).not.toBeNull();
  });
});
