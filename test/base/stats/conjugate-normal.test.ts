import { describe, expect, it } from 'vitest';
import { updatedNormal } from '../../../src/base/stats/conjugate-normal.ts';
import { normnp, trout } from '../../reference/three-point-times.ts';

describe('a mean updated by observations of known noise', () => {
  it('is that of Bolstad’s trout, in full and as printed', () => {
    const { mean: value, count, sd } = trout.values;
    const known = updatedNormal(
      trout.prior,
      Array.from({ length: count }, () => ({ value, sd })),
    );
    expect(known.mean).toBeCloseTo(trout.mean, 12);
    expect(known.sd).toBeCloseTo(trout.sd, 12);
    expect(known.mean).toBeCloseTo(trout.printed.mean, 2);
    expect(known.sd).toBeCloseTo(trout.printed.sd, 4);
  });

  it('is that of the normnp example of R’s Bolstad package', () => {
    const known = updatedNormal(
      normnp.prior,
      normnp.values.map((value) => ({ value, sd: 1 })),
    );
    expect(known.mean).toBeCloseTo(normnp.mean, 12);
    expect(known.sd).toBeCloseTo(normnp.sd, 12);
  });

  it('is what it was without any', () => {
    expect(updatedNormal({ mean: 3, sd: 2 }, [])).toEqual({ mean: 3, sd: 2 });
  });
});
