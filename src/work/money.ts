/**
 * Money as whole minor units of one currency (pence, cents, yen, fils), in bigint: a fraction cannot
 * be mixed in, and no product is ever too large to be exact. What is rounded is rounded here.
 */

/** An amount of money in minor units. */
export type Minor = bigint;

/** A currency by its code of ISO 4217, with how many digits of it are minor units. */
export type Currency = { readonly code: string; readonly digits: number };

/** A share as parts of a million: 20 % is 200000. Exact for every per cent of four decimals. */
export type Share = bigint;
export const WHOLE: Share = 1_000_000n;

/** Decimals that a per cent may have. */
export const PERCENT_DECIMALS = 4;
const PER_PERCENT = 10 ** PERCENT_DECIMALS;

export const shareOfPercent = (percent: number): Share => BigInt(Math.round(percent * PER_PERCENT));
export const percentOfShare = (share: Share): number => Number(share) / PER_PERCENT;

/** `half-up`: a half goes away from nothing. `down`: towards it, whatever is behind the point. */
export const roundingModes = ['half-up', 'half-even', 'down', 'up'] as const;
export type RoundingMode = (typeof roundingModes)[number];

/** A quotient as a whole number; the divisor is over 0. */
export function divided(dividend: bigint, divisor: bigint, mode: RoundingMode): bigint {
  const sign = dividend < 0n ? -1n : 1n;
  const size = dividend * sign;
  const whole = size / divisor;
  const rest = size % divisor;
  return sign * (roundsAway(rest, divisor, whole, mode) ? whole + 1n : whole);
}

function roundsAway(rest: bigint, divisor: bigint, whole: bigint, mode: RoundingMode): boolean {
  switch (mode) {
    case 'down':
      return false;
    case 'up':
      return rest > 0n;
    case 'half-up':
      return 2n * rest >= divisor;
    case 'half-even':
      return 2n * rest > divisor || (2n * rest === divisor && whole % 2n === 1n);
  }
}

export const total = (amounts: readonly bigint[]): bigint =>
  amounts.reduce((sum, amount) => sum + amount, 0n);

/** The nearest amount that coins can pay, where the least of them is worth `step`; a half goes up. */
export const toCash = (amount: Minor, step: bigint): Minor =>
  step * divided(amount, step, 'half-up');

/** Whether JSON, spreadsheets and other programs can hold the amount exactly. */
export const isExactNumber = (amount: Minor): boolean =>
  amount <= BigInt(Number.MAX_SAFE_INTEGER) && amount >= BigInt(Number.MIN_SAFE_INTEGER);
