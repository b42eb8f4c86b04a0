/** Whether a number is the mean of others, as it may have been rounded. */
import { numberOf, numberShape } from '../cells/numbers.ts';

/** Decimals that a mean may have been rounded to. */
const ROUNDING = [0, 1, 2] as const;

export function isMean(
  value: number | undefined,
  others: readonly (number | undefined)[],
): boolean {
  const known = others.filter((one) => one !== undefined);
  if (value === undefined || known.length < 2 || known.length < others.length) return false;
  // Readings that are all one are their own mean.
  if (new Set(known).size === 1) return false;
  return isRoundedMean(value, known);
}

function isRoundedMean(value: number, known: readonly number[]): boolean {
  const mean = known.reduce((sum, one) => sum + one, 0) / known.length;
  return ROUNDING.some(
    (digits) => Math.abs(value - mean) <= 0.5 * 10 ** -digits + 1e-9 && fits(value, digits),
  );
}

/** Whether a number is written with no more decimals than this. */
const fits = (value: number, digits: number): boolean =>
  Math.abs(value * 10 ** digits - Math.round(value * 10 ** digits)) < 1e-6;

/** The same of texts; readings that are all one agree with a mean that is as they are. */
export function isMeanOf(text: string, others: readonly string[]): boolean {
  const [value, ...known] = [text, ...others].map((one) => {
    const shape = numberShape(one.trim());
    return shape === undefined ? undefined : numberOf(shape);
  });
  const own = known.filter((one) => one !== undefined);
  return value !== undefined && own.length === known.length && isRoundedMean(value, own);
}
