import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { allowanceOver, clearAllowance, clearRisk } from '../../../src/film/limits/removal-risk.ts';
import { evenly } from '../../evenly.ts';

const FLOOR = micrometres(30);
const clear = (room: number, sd: number) => ({
  mean: micrometres(FLOOR + room),
  sd: micrometres(sd),
});

describe('what may go of a clear', () => {
  test('scales with it: ten times the clear over its floor, known ten times worse, may lose ten times as much', () => {
    fc.assert(
      fc.property(
        evenly(1.8, 12),
        evenly(0.05, 8),
        evenly(0.1, 0.9),
        evenly(-2, 2),
        (sds, sd, logSd, power) => {
          const terms = { risk: 0.05, logSd };
          const times = 10 ** power;
          const allowed = clearAllowance(clear(sds * sd, sd), FLOOR, terms);
          const scaled = clearAllowance(clear(times * sds * sd, times * sd), FLOOR, terms);
          expect(allowed).toBeGreaterThan(0);
          expect(scaled / times / allowed).toBeCloseTo(1, 4);
        },
      ),
      { numRuns: 60 },
    );
  });

  test.each([0.02, 0.1, 0.5, 1, 4])(
    'is where its risk is the one that may be taken, though it is known to %d µm',
    (sd) => {
      for (const sds of [1.7, 2.4, 6]) {
        const of = clear(sds * sd, sd);
        const allowed = clearAllowance(of, FLOOR, { risk: 0.05, logSd: 0.4 });
        expect(allowed).toBeGreaterThan(0);
        expect(clearRisk(of, FLOOR, { median: allowed, logSd: 0.4 })).toBeCloseTo(0.05, 4);
      }
    },
  );

  test.each([0.02, 0.1, 0.5, 1, 4])(
    'is nothing where it is under its floor at that risk as it is, by %d µm (SD)',
    (sd) => {
      // z of a twentieth is 1.6449.
      for (const sds of [-3, 0, 1, 1.64]) {
        expect(clearAllowance(clear(sds * sd, sd), FLOOR, { risk: 0.05, logSd: 0.4 })).toBe(0);
      }
    },
  );

  test('over two clears is nothing where their chances of being under it come to that risk', () => {
    // At 1 SD over the floor 15.87 in 100 are under it, of which a third is 5.29.
    const over = (chance: number) =>
      allowanceOver(
        [
          { clear: clear(0.5, 0.5), chance },
          { clear: clear(6, 0.5), chance: 1 - chance },
        ],
        FLOOR,
        { risk: 0.05, logSd: 0.4 },
      );
    expect(over(1 / 3)).toBe(0);
    expect(over(0.3)).toBeGreaterThan(0);
  });
});
