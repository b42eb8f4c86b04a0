/**
 * Seeded random numbers, for data that must come out the same on every machine.
 *
 * `seededRandom` is mulberry32, a generator with 32 bits of state placed in
 * the public domain by Tommy Ettinger (2017): a Weyl sequence of step
 * 0x6D2B79F5 whose state is mixed by two multiply-xorshift rounds. It uses
 * integer arithmetic only, so every engine gives the same sequence. Its period
 * is 2³², enough for samples and for simulations of up to a few hundred
 * million draws; it is not for secrets.
 *
 * `normal` draws a standard normal by Box and Muller, "A Note on the Generation
 * of Random Normal Deviates", Ann. Math. Statist. 29 (1958) 610–611:
 *
 *     z = √(−2 ln u) · cos(2π v)      u in (0, 1], v in [0, 1)
 *
 * Only the cosine half of the pair is kept, so that one call always uses two
 * uniform draws and calls can be moved without hidden state. The largest |z|
 * that can appear is √(−2 ln 2⁻³²) ≈ 6.66.
 *
 * Math.log and Math.cos may differ by one unit in the last place between
 * engines; whoever writes the numbers to a file rounds them first.
 */

const WEYL_STEP = 0x6d2b79f5;
const TWO_TO_32 = 4_294_967_296;

/** Uniform numbers in [0, 1), a multiple of 2⁻³² each. The seed is taken modulo 2³². */
export function seededRandom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + WEYL_STEP) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / TWO_TO_32;
  };
}

/** One draw from the normal distribution with mean 0 and standard deviation 1. */
export function normal(random: () => number): number {
  const radius = Math.sqrt(-2 * Math.log(1 - random()));
  return radius * Math.cos(2 * Math.PI * random());
}
