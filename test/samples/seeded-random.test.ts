import { describe, expect, it } from 'vitest';
import { normalCdf } from '../../src/base/stats/normal.ts';
import { normal, seededRandom } from './seeded-random.ts';

const draws = (count: number, draw: () => number): number[] => Array.from({ length: count }, draw);

/** mulberry32 as its author wrote it in C (public domain), in whole numbers modulo 2³². */
function mulberry32(seed: number): () => number {
  const mask = 0xffff_ffffn;
  let x = BigInt(seed);
  return () => {
    x = (x + 0x6d2b79f5n) & mask;
    let z = x;
    z = ((z ^ (z >> 15n)) * (z | 1n)) & mask;
    z ^= (z + (((z ^ (z >> 7n)) * (z | 61n)) & mask)) & mask;
    return Number(z ^ (z >> 14n)) / 2 ** 32;
  };
}

/** Largest distance between the empirical distribution and the stated one (Kolmogorov 1933). */
function distance(sample: readonly number[], cdf: (x: number) => number): number {
  const sorted = [...sample].sort((a, b) => a - b);
  const gaps = sorted.map((x, k) =>
    Math.max((k + 1) / sorted.length - cdf(x), cdf(x) - k / sorted.length),
  );
  return Math.max(...gaps);
}
/** Smirnov (1948): the distance exceeds 1.95/√n once in a thousand samples. */
const critical = (count: number): number => 1.95 / Math.sqrt(count);

describe('seeded random numbers', () => {
  it.each([0, 1, 1041, 0xffff_ffff])('follow mulberry32 from seed %i', (seed) => {
    expect(draws(2000, seededRandom(seed))).toEqual(draws(2000, mulberry32(seed)));
  });

  it('are spread evenly from 0 to 1', () => {
    const sample = draws(20_000, seededRandom(5));
    expect(Math.min(...sample)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...sample)).toBeLessThan(1);
    expect(distance(sample, (x) => x)).toBeLessThan(critical(20_000));
  });

  it('give normal deviates that follow the normal distribution', () => {
    const random = seededRandom(6);
    const sample = draws(20_000, () => normal(random));
    expect(distance(sample, normalCdf)).toBeLessThan(critical(20_000));
  });

  it('give normal deviates that do not depend on the one before', () => {
    const random = seededRandom(7);
    const sample = draws(20_000, () => normal(random));
    const products = sample.slice(1).map((z, k) => z * (sample[k] ?? 0));
    const correlation = products.reduce((sum, product) => sum + product, 0) / products.length;
    expect(Math.abs(correlation)).toBeLessThan(3.3 / Math.sqrt(products.length));
  });

  it('stay finite where the uniform draw is 0 and where it is the largest there is', () => {
    expect(normal(() => 0)).toBeCloseTo(0, 12);
    const largest = 1 - 2 ** -32;
    expect(Math.abs(normal(() => largest))).toBeCloseTo(Math.sqrt(64 * Math.LN2), 6);
  });
});
