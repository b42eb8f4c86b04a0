import { expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { removalPriors } from '../../../src/correction/removal/removal-knowledge.ts';
import { contradiction, usualRemoval } from '../../../src/correction/spot/spot-contradiction.ts';
import type { RemovedFilm } from '../../../src/correction/spot/spot-trial.ts';
import { combination, model, trial } from '../spot-trials.ts';

const MEDIUM = 'da/foam-medium/medium';
const priors = removalPriors('unknown', model);
const took = (mean: number): RemovedFilm =>
  ({ mean: micrometres(mean), standardError: micrometres(0.1) }) as RemovedFilm;
const said = (mean: number, place?: string) =>
  contradiction(trial(MEDIUM, { sets: 3 }), took(mean), priors, place).map(
    ({ code, text, value }) => [code, text, value],
  );

test('what is usual of a trial is that of all its sets', () => {
  const { perSet } = combination(MEDIUM);
  expect(usualRemoval(trial(MEDIUM, { sets: 1 }))).toBe(perSet);
  expect(usualRemoval(trial(MEDIUM, { sets: 3 }))).toBeCloseTo(3 * perSet, 12);
});

test('a trial that took about what is usual contradicts nothing', () => {
  // 3 sets of .897 µm.
  expect(said(2.7)).toEqual([]);
});

test('one that took far more makes nothing surer, and frees nothing', () => {
  expect(said(14)).toEqual([
    [
      'spot-contradicts',
      'test spot A took 14.0 µm where 2.69 µm is usual: outside 95 % of what paints and ways of working differ by. It makes nothing surer, and no more may go for it',
      14,
    ],
  ]);
});

test('one that took far less counts for nothing, at the place that is named', () => {
  expect(said(0.1, ' on bonnet')).toEqual([
    [
      'spot-contradicts',
      'test spot A on bonnet took 0.1 µm where 2.69 µm is usual: outside 95 % of what paints and ways of working differ by. It counts for nothing, and no step is stronger for it: check its readings, work it once more on a fresh place',
      0.1,
    ],
  ]);
});
