/**
 * Rounding for people, in one place. Comparisons are made before rounding (the absolute method of
 * ASTM E29); machine output carries more digits than anyone reads.
 */

/** Rounded half away from zero in decimal, so that 2.675 shown with two digits is 2.68. */
export function roundTo(value: number, digits: number): number {
  if (!Number.isFinite(value)) return value;
  const scale = powersOfTen[digits] ?? Number.NaN;
  const scaled = Math.abs(value) * scale;
  const rest = scaled - Math.floor(scaled);
  // Away from a tie the binary number rounds as its decimal digits do, without writing them down.
  if (scaled < mostExact && Math.abs(rest - 0.5) > nearTie)
    return (Math.sign(value) * Math.round(scaled)) / scale;
  return roundDigits(value, digits);
}

const powersOfTen = [1, 10, 100, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9] as const;
/** Up to here a product is off by less than a quarter of what counts as near a tie. */
const mostExact = 1e9;
const nearTie = 1e-6;

/** The same by the shortest decimal digits that stand for the number. */
function roundDigits(value: number, digits: number): number {
  const [mantissa, exponent = 0] = Math.abs(value).toString().split('e');
  const shifted = Math.round(Number(`${mantissa}e${Number(exponent) + digits}`));
  const [whole, power = 0] = shifted.toString().split('e');
  return Math.sign(value) * Number(`${whole}e${Number(power) - digits}`);
}

/** A number as a person reads it, with a fixed count of decimals. `toFixed` gives −0 no sign. */
export const shown = (value: number, digits: number): string =>
  roundTo(value, digits).toFixed(digits);

/** `2.3–3.1`, from the least to the most; the one where both are written alike. */
export function rangeShown(
  values: readonly number[],
  textOf: (value: number) => string,
  to = '–',
): string {
  const [low, high] = [textOf(Math.min(...values)), textOf(Math.max(...values))];
  return low === high ? low : `${low}${to}${high}`;
}

/** A chance or a share: a figure behind the point where it is under ten per cent. */
export const finePercent = (share: number): string =>
  `${shown(100 * share, share < 0.0995 ? 1 : 0)} %`;

/** Of what is told with two decimals: less is written as nought, and two that differ by less look the same. */
export const LEAST_TOLD = 0.005;

/** Rounded to as many digits as count, wherever the point stands. */
export const toDigits = (value: number, digits: number): number =>
  Number(value.toPrecision(digits));

/** A number of the model as a person writes it: at most `digits` that count, no trailing noughts. */
export const figure = (value: number, digits = 4): string => String(toDigits(value, digits));

/** Less is 0.0 where a figure is told to a tenth. */
export const LEAST_TENTH = 0.05;
