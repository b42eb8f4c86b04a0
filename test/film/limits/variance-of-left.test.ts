/** What the doubt about the topcoat that is left is made of, worked by hand from round numbers. */
import { expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { doubtAboutWhatIsLeft, shareOf } from '../../../src/film/limits/variance-of-left.ts';
import { film, knowledge, sharing } from './layers-by-hand.ts';

const um = micrometres;

/** Half of 4² is the topcoat's: 8, held 25 − 8 + 1 = 18 and 64 − 8 = 56 under it, 3² + 4²/4 of the total itself. */
const told = { film, knowledge };

/** Of the topcoat by a prior of variance 18 and a total of this variance. */
const both = (total: number): number => (18 * total) / (18 + total);

test('each source has the share of what the variance falls by without it, the largest first', () => {
  const parts = {
    layers: both(56),
    // 2 µm of ln-SD ½: m²·e^{σ²}(e^{σ²} − 1).
    removal: 4 * Math.exp(0.25) * (Math.exp(0.25) - 1),
    // 1.645²·8/(2·8).
    spread: 2.7055434540954106 / 2,
    gauge: both(69) - both(60),
    sampling: both(69) - both(65),
  };
  const sum = Object.values(parts).reduce((total, part) => total + part, 0);
  const found = doubtAboutWhatIsLeft({ told }, { median: um(2), logSd: 0.5 }, sharing);
  expect(found.map(({ source }) => source)).toEqual([
    'layers',
    'removal',
    'spread',
    'gauge',
    'sampling',
  ]);
  for (const { source, share } of found) expect(share).toBeCloseTo(parts[source] / sum, 9);
  expect(shareOf('gauge', found)).toBeCloseTo(parts.gauge / sum, 9);
});

test('a topcoat that is known for certain is in no doubt by anything, in shares of nought', () => {
  const film = {
    ...told.film,
    spread: { sd: um(0), dof: 8 },
    calibration: um(0),
    taken: { mean: um(3), sd: um(0) },
  };
  const knowledge = { ...told.knowledge, top: { mean: um(40), sd: um(0) } };
  const found = doubtAboutWhatIsLeft(
    { told: { film, knowledge } },
    { median: um(0), logSd: 0.5 },
    sharing,
  );
  expect(found.map(({ share }) => share)).toEqual([0, 0, 0, 0, 0]);
});
