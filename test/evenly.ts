/**
 * Numbers drawn evenly over a range, for properties. `fc.double` draws floats, of which as many lie between 1e-300
 * and 1 as over it: half of what it draws from 0 to 10 is next to nothing.
 */
import fc from 'fast-check';

const STEPS = 1_000_000;

export const evenly = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: STEPS }).map((step) => min + ((max - min) * step) / STEPS);
