/** Gauges whose truth is known, checked as a shop does: how often does a check say what is not so? */
import { expect, test } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import { checkGauge, driftBetween, type ShimReading } from '../../src/film/gauge/gauge-check.ts';
import { normal, seededRandom } from '../samples/seeded-random.ts';

const SHIMS = [0, 50, 125, 250] as const;
const REPEATS = 5;
const GAUGES = 3000;
const SCATTER = 0.4;
/** Of the shims, k = 2. */
const SHIM_U = 0.6;

type Truth = { readonly random: () => number; readonly step: number };

/** One check of a gauge that is off by `offset` on every shim; its shims are off by what they are. */
function checkOf(offset: number, shimsOff: readonly number[], { random, step }: Truth) {
  const readings = SHIMS.flatMap((shim, i): readonly ShimReading[] =>
    Array.from({ length: REPEATS }, () => {
      const shown = shim + (shimsOff[i] ?? 0) + offset + SCATTER * normal(random);
      return {
        shim: micrometres(shim),
        shimUncertainty: micrometres(SHIM_U),
        reading: micrometres(step * Math.round(shown / step)),
      };
    }),
  );
  return checkGauge(readings, {
    permitted: { fixed: micrometres(2), proportional: 0 },
    assumedRepeatability: micrometres(1.5),
    step: micrometres(step),
  });
}

const drawShims = (random: () => number): readonly number[] =>
  SHIMS.map(() => (SHIM_U / 2) * normal(random));

test.each([0.1, 1])(
  'a gauge that holds still (step %d µm) is seldom said to have moved',
  (step) => {
    const truth = { random: seededRandom(611), step };
    let alarms = 0;
    for (let i = 0; i < GAUGES; i += 1) {
      const shims = drawShims(truth.random);
      const [before, after] = [checkOf(0.3, shims, truth), checkOf(0.3, shims, truth)];
      if (driftBetween(before, after).some(({ proved }) => proved)) alarms += 1;
    }
    // 5 % of GAUGES, and three standard deviations of the count.
    expect(alarms / GAUGES).toBeLessThan(0.05 + 3 * Math.sqrt((0.05 * 0.95) / GAUGES));
  },
);

test('one that moved by four times its scatter is found out nearly always', () => {
  const truth = { random: seededRandom(612), step: 0.1 };
  let found = 0;
  for (let i = 0; i < GAUGES; i += 1) {
    const shims = drawShims(truth.random);
    const drift = driftBetween(checkOf(0, shims, truth), checkOf(4 * SCATTER, shims, truth));
    if (drift.some(({ proved }) => proved)) found += 1;
  }
  expect(found / GAUGES).toBeGreaterThan(0.99);
});

test('on the edge of its limit a gauge passes, or fails, on a shim in 2.5 % of checks at most', () => {
  const truth = { random: seededRandom(613), step: 0.1 };
  const verdicts = { pass: 0, fail: 0, undecided: 0 };
  for (let i = 0; i < GAUGES; i += 1) {
    const [shim] = checkOf(2, drawShims(truth.random), truth).shims;
    if (shim !== undefined) verdicts[shim.verdict] += 1;
  }
  const most = 0.025 + 3 * Math.sqrt((0.025 * 0.975) / GAUGES);
  expect(verdicts.pass / GAUGES).toBeLessThan(most);
  expect(verdicts.fail / GAUGES).toBeLessThan(most);
  expect(verdicts.pass + verdicts.fail).toBeGreaterThan(0);
});
