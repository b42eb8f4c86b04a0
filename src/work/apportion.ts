/**
 * A whole sum shared out in whole units by the method of the largest remainder: each part gets its
 * exact share rounded down, what is left over goes in units of one to the largest remainders. So the
 * parts that are shown add up to the sum that is shown.
 */
import { divided, type RoundingMode, total } from './money.ts';

/** An exact part before rounding; the divisor is over 0. */
export type Fraction = { readonly dividend: bigint; readonly divisor: bigint };

/** A divisor that all of them have. */
const commonDivisor = (fractions: readonly Fraction[]): bigint =>
  [...new Set(fractions.map(({ divisor }) => divisor))].reduce(
    (product, divisor) => product * divisor,
    1n,
  );

/** Their sum, rounded once. */
export function sumRounded(fractions: readonly Fraction[], mode: RoundingMode): bigint {
  const common = commonDivisor(fractions);
  const sum = total(fractions.map(({ dividend, divisor }) => dividend * (common / divisor)));
  return divided(sum, common, mode);
}

/** A thing and its part of a whole, before rounding and after. */
type Part<T> = Fraction & { readonly of: T };
export type WholePart<T> = { readonly of: T; readonly amount: bigint };

/**
 * Whole numbers that add up to `sum`, each less than one from its fraction. `sum` is the sum of the
 * fractions, rounded in any way; equal remainders go by the larger part, then by order.
 */
export function roundedTogether<T>(
  parts: readonly Part<T>[],
  sum: bigint,
): readonly WholePart<T>[] {
  const common = commonDivisor(parts);
  const floored = parts.map(({ of, dividend, divisor }) => {
    const exact = dividend * (common / divisor);
    const amount = floorDivided(exact, common);
    return { of, exact, amount, remainder: exact - amount * common };
  });
  const left = Number(sum - total(floored.map(({ amount }) => amount)));
  const raised = new Set(
    [...floored]
      .sort((a, b) => order(b.remainder, a.remainder) || order(b.exact, a.exact))
      .slice(0, left),
  );
  return floored.map((part) => ({
    of: part.of,
    amount: raised.has(part) ? part.amount + 1n : part.amount,
  }));
}

/** A sum shared out over things in proportion to their weights, none under 0 and not all 0. */
export function apportioned<T>(
  sum: bigint,
  things: readonly T[],
  weightOf: (thing: T) => bigint,
): readonly WholePart<T>[] {
  const divisor = total(things.map(weightOf));
  return roundedTogether(
    things.map((of) => ({ of, dividend: sum * weightOf(of), divisor })),
    sum,
  );
}

const order = (a: bigint, b: bigint): number => (a < b ? -1 : a > b ? 1 : 0);

function floorDivided(dividend: bigint, divisor: bigint): bigint {
  const quotient = dividend / divisor;
  return dividend < 0n && quotient * divisor !== dividend ? quotient - 1n : quotient;
}
