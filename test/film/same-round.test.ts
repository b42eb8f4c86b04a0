import { expect, test } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import { roundDifference, roundsDiffer } from '../../src/film/same-round.ts';
import { filmModel } from '../../src/formats/models.ts';
import { readingParts } from '../../src/intake/doubts/read-again.ts';
import { normal, seededRandom } from '../samples/seeded-random.ts';

const { measurement } = filmModel;
const { rounds, repeatability } = measurement;

/** How many of so many pairs of rounds, of points that scatter `times` as the gauge is held to, are held to differ. */
function shareTold(count: number, shift: number, times: number, named: boolean): number {
  const random = seededRandom(count + 100 * times);
  const rule = { ...measurement, pointsAreNamed: named };
  const sd = times * Math.SQRT2 * Math.hypot(repeatability, named ? 0 : rounds.film);
  const differs = () =>
    roundsDiffer(
      roundDifference(
        Array.from({ length: count }, () => shift + sd * normal(random)),
        rule,
      ),
      rule,
    );
  return Array.from({ length: FILES }, differs).filter(Boolean).length / FILES;
}
const FILES = 2000;
/** Three standard deviations of a share of so many. */
const byChance = (share: number): number => share + 3 * Math.sqrt((share * (1 - share)) / FILES);

test.each([2, 3, 5, 8, 15, 40])(
  'two honest rounds of %i points are held to differ as rarely as stated',
  (count) => {
    for (const named of [true, false]) {
      expect(shareTold(count, 0, 1, named)).toBeLessThanOrEqual(byChance(rounds.falseAlarm));
      // Where the gauge scatters twice as much as held.
      expect(shareTold(count, 0, 2, named)).toBeLessThanOrEqual(byChance(0.03));
    }
  },
);

test('a shift of 5 µm of twenty points is told of nearly every time, one under the least never', () => {
  expect(shareTold(20, 5, 1, true)).toBeGreaterThan(0.99);
  const rule = { ...measurement, pointsAreNamed: true };
  const exact = roundDifference(
    Array.from({ length: 1000 }, () => rounds.leastShift - 0.01),
    rule,
  );
  expect(roundsDiffer(exact, rule)).toBe(false);
});

test('the chance is shared among several questions', () => {
  const rule = { ...measurement, pointsAreNamed: true };
  const of = roundDifference([3.8, 3.9, 4.0, 4.1], rule);
  expect([1, 100].map((among) => roundsDiffer(of, rule, among))).toEqual([true, false]);
});

test('parts of a file that read five points anew are held to by the same rule', () => {
  const random = seededRandom(5);
  const how = { pointsAreNamed: true, repeatsAreNumbered: false, scatter: measurement };
  const part = (shift: number) =>
    Array.from({ length: 5 }, (_, k) => ({
      ...{ vehicle: null, panel: 'roof', point: `${k}`, repeat: 1, layer: '' },
      ...{ place: 'face' as const, marked: false, curved: false },
      thickness: micrometres(110 + shift + repeatability * normal(random)),
      origin: { file: 'r.csv', line: k + 2, column: 1 },
    }));
  const refused = (shift: number): number =>
    Array.from({ length: 500 }, () => {
      const next = readingParts(how);
      next(part(0));
      return next(part(shift))?.agree;
    }).filter((agree) => agree === false).length;
  expect(refused(0)).toBeLessThanOrEqual(500 * byChance(rounds.falseAlarm));
  expect(refused(-8)).toBeGreaterThan(495);
});
