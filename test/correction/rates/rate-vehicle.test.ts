import { describe, expect, it } from 'vitest';
import type { RateEvidence } from '../../../src/correction/rates/rate-evidence.ts';
import { information, vehicleCase } from '../../../src/correction/rates/rate-vehicle.ts';
import { measured } from '../rates-drawn.ts';

/** Nothing varies from vehicle to vehicle: only the gauge errs. */
const sure = { paint: 0, combination: () => 0, step: 0 };
const places = ['usual', 'k', 'l'];
const says = (...evidence: readonly RateEvidence[]) =>
  information(
    vehicleCase(evidence, sure, (id) => places.indexOf(id)),
    [0, 0, 0],
  );

describe('what a vehicle’s readings say of the shop’s rates', () => {
  it('is of each combination by its own readings: slope² and slope · (read − foretold) over the error²', () => {
    // 2 µm foretold of k and 3 of l, 2.5 and 2.6 read, ± 0.5 and ± 1.
    const { matrix, pull } = says(measured('a', 'k', 2, 2.5, 0.5), measured('a', 'l', 3, 2.6, 1));
    expect(matrix).toEqual([
      [expect.closeTo(2 ** 2 / 0.25, 9), expect.closeTo(0, 9)],
      [expect.closeTo(0, 9), expect.closeTo(3 ** 2, 9)],
    ]);
    expect(pull).toEqual([expect.closeTo((2 * 0.5) / 0.25, 9), expect.closeTo(3 * -0.4, 9)]);
  });

  it('is of both where one reading is of both', () => {
    const steps = [
      { combination: 'k', foretold: 2 },
      { combination: 'l', foretold: 3 },
    ];
    const removed = { value: 6, standardError: 1 };
    const { matrix, pull } = says({ vehicle: 'a', steps, sets: 2, removed });
    expect(matrix.flat()).toEqual([4, 6, 6, 9].map((value) => expect.closeTo(value, 9)));
    expect(pull).toEqual([2, 3].map((value) => expect.closeTo(value, 9)));
  });

  it('takes a reading lower than noise explains as two standard errors under nothing', () => {
    for (const error of [1, 0.5]) {
      const { pull } = says(measured('a', 'k', 2, -10 * error, error));
      // No gauge is believed nearer than a twentieth of what it read: half of a standard error here.
      expect(pull[0]).toBeCloseTo((2 * (-2 * error - 2)) / error ** 2, 9);
    }
  });
});
