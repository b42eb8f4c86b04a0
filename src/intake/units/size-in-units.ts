/**
 * Numbers that fit those beside them in the other unit only: 106 among 4.1 to 4.4 mil is 4.2 mil if it is
 * in µm. µm and mil are a factor of 25.4 apart, and no two films of a car's paint need be.
 */
import { numberIn } from '../cells/numbers.ts';
import { micrometresPer, type TableUnit } from '../cells/unit.ts';

export type Sizes = { readonly least: number; readonly most: number };

/** How far beyond the others a film may lie and still be like them. */
const beyond = 2;

/** The least and the largest of the numbers, undefined where there is none. */
export function sizesOf(texts: Iterable<string>): Sizes | undefined {
  let [least, most] = [Infinity, 0];
  for (const text of texts) {
    const value = numberIn(text);
    if (value === undefined || value <= 0) continue;
    least = Math.min(least, value);
    most = Math.max(most, value);
  }
  return most === 0 ? undefined : { least, most };
}

const isLike = (own: number, { least, most }: Sizes): boolean =>
  own >= least / beyond && own <= most * beyond;

/** Whether a number in a unit of its own is far from the others, and is like them as they are written. */
export function isSlipOfUnit(
  text: string,
  own: 'um' | 'mil',
  ofOthers: 'um' | 'mil',
  others: Sizes,
): boolean {
  const value = numberIn(text);
  if (value === undefined || value <= 0) return false;
  const asSaid = (value * micrometresPer[own]) / micrometresPer[ofOthers];
  return isLike(value, others) && !isLike(asSaid, others);
}

/** Whether a number would be like the others if it were in the other unit, and is not in this one. */
export function fitsOtherUnit(text: string, unit: TableUnit, sizes: Sizes): boolean {
  const value = numberIn(text);
  if (value === undefined || (unit !== 'um' && unit !== 'mil')) return false;
  const factor = micrometresPer.mil / micrometresPer.um;
  const other = unit === 'um' ? value * factor : value / factor;
  return !isLike(value, sizes) && isLike(other, sizes);
}
