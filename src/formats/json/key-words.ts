/**
 * What a key that means nothing was meant to be: another unit of a known key (`area_ft2` for
 * `area_m2`), another way to join its words (`riskPct`), or a slip of the pen.
 */

import { suggest } from '../../base/did-you-mean.ts';
import { toDigits } from '../../base/rounding.ts';

const unitWords = new Set(
  `um µm micron microns micrometre micrometres micrometer micrometers mil mils thou nm mm cm m metre
  metres meter meters in inch inches ft feet m2 sqm ft2 sqft pct percent prob ms s sec secs second
  seconds min mins minute minutes h hr hrs hour hours d day days ml cl l litre litres liter liters oz
  floz g kg lb lbs n rpm per`.split(/\s+/),
);

const wordsOfKey = (key: string): readonly string[] =>
  key
    .replace(/([\p{Ll}\d])(\p{Lu})/gu, '$1_$2')
    .toLowerCase()
    .split(/[_\-\s]+/)
    .filter((word) => word !== '');

const withoutUnits = (key: string): string =>
  wordsOfKey(key)
    .filter((word) => !unitWords.has(word))
    .join('_');

/** What is meant, where just one thing can be. */
export const onlyOne = (found: readonly string[]): string | undefined =>
  found.length === 1 ? found[0] : undefined;

/** The known key that says the same in another unit, without one, or joined in another way. */
export function sameInOtherUnit(key: string, known: readonly string[]): string | undefined {
  const joined = wordsOfKey(key).join('_');
  const stem = withoutUnits(key);
  return (
    known.find((candidate) => candidate === joined) ??
    known.find((candidate) => stem !== '' && stem === withoutUnits(candidate)) ??
    onlyOne(known.filter((candidate) => stem !== '' && candidate.startsWith(`${joined}_`)))
  );
}

/** What a known unit is worth in others: one inch is 25.4 mm. */
const worth: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  um: { mil: 25.4, mils: 25.4, thou: 25.4, nm: 1e-3, mm: 1e3 },
  mm: { in: 25.4, inch: 25.4, inches: 25.4, cm: 10, m: 1e3 },
  m: { mm: 1e-3, cm: 1e-2, ft: 0.3048, feet: 0.3048, in: 0.0254, inch: 0.0254, inches: 0.0254 },
  m2: { ft2: 0.09290304, sqft: 0.09290304, sqm: 1 },
  min: { s: 1 / 60, sec: 1 / 60, secs: 1 / 60, seconds: 1 / 60, h: 60, hr: 60, hours: 60 },
  n: { kg: 9.80665, lb: 4.4482216, lbs: 4.4482216 },
};

/** The value in the unit of the known key, where both say theirs and it is a plain factor. */
function inUnitOf(known: string, key: string, value: unknown): number | undefined {
  const [to, from] = [known, key].map((name) => wordsOfKey(name).filter((w) => unitWords.has(w)));
  if (typeof value !== 'number' || to === undefined || to.length !== from?.length) return undefined;
  const factors = to.map((unit, i) => (unit === from[i] ? 1 : worth[unit]?.[from[i] ?? '']));
  return factors.every((factor) => factor !== undefined)
    ? toDigits(
        factors.reduce((product, factor) => product * factor, value),
        MEASURED_DIGITS,
      )
    : undefined;
}

/** They say as much as anybody measures. */
const MEASURED_DIGITS = 4;

/** A list of keys longer than this helps nobody. */
const MOST_KEYS_LISTED = 24;

/** What to write instead of a key that means nothing; `value` is what stands behind it. */
export function keyHint(
  key: string,
  known: readonly string[],
  value?: unknown,
): string | undefined {
  const same = sameInOtherUnit(key, known);
  if (same !== undefined) {
    const converted = inUnitOf(same, key, value);
    return converted === undefined || converted === value
      ? `write ${same}`
      : `write ${same}: ${converted}`;
  }
  const near = suggest(key, known);
  if (near !== undefined) return near;
  return known.length === 0 || known.length > MOST_KEYS_LISTED
    ? undefined
    : `keys known here: ${known.join(', ')}`;
}
