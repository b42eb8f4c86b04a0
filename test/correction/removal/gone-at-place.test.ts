import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Z_95 } from '../../../src/base/stats/normal.ts';
import { micrometres } from '../../../src/base/units.ts';
import { goneAtPlace } from '../../../src/correction/removal/gone-at-place.ts';
import { heldRemoval } from '../../../src/correction/removal/measured-removal.ts';

const planned = { median: micrometres(3), high: micrometres(7) };
const read = (value: number, standardError: number) => ({
  value: micrometres(value),
  standardError: micrometres(standardError),
});

describe('what is held of a spot whose place was read', () => {
  test('is less than the middle of its plan only by a reading that bears it', () => {
    expect(goneAtPlace(planned, read(0, 6)).mean).toBeGreaterThanOrEqual(3);
    expect(goneAtPlace(planned, read(1.5, 0.2)).mean).toBeLessThan(2);
    // A reading that the plan does not expect is held to all that it may be off by.
    expect(goneAtPlace(planned, read(-2, 1)).mean).toBe(0);
    expect(goneAtPlace(planned, read(-1, 1)).mean).toBeCloseTo(Z_95 - 1, 6);
  });

  test('is as foretold by what was measured else, and as measured where nothing was foretold', () => {
    const logSd = Math.log(7 / 3) / Z_95;
    expect(goneAtPlace(planned, read(5, 1))).toEqual(
      heldRemoval({ median: planned.median, logSd }, read(5, 1)),
    );
    const none = { median: micrometres(0), high: micrometres(0) };
    expect(goneAtPlace(none, read(5, 1))).toEqual({ mean: 5, sd: 1 });
  });

  test('never lies under both the middle of the plan and what the reading may be at most', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 12, noNaN: true }),
        fc.double({ min: 1, max: 4, noNaN: true }),
        fc.double({ min: -10, max: 20, noNaN: true }),
        fc.double({ min: 0.05, max: 8, noNaN: true }),
        (median, times, value, standardError) => {
          const place = { median: micrometres(median), high: micrometres(median * times) };
          const { mean, sd } = goneAtPlace(place, read(value, standardError));
          expect(mean).toBeGreaterThanOrEqual(
            Math.max(0, Math.min(median, value + Z_95 * standardError)),
          );
          expect(sd).toBeGreaterThanOrEqual(0);
        },
      ),
    );
  });
});
