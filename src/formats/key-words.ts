/**
 * What a key that means nothing was meant to be: another unit of a known key (`area_ft2` for
 * `area_m2`), another way to join its words (`riskPct`), or a slip of the pen.
 */
import { suggest } from '../base/did-you-mean.ts';

const unitWords = new Set(
  `um µm micron microns micrometre micrometres micrometer micrometers mil mils thou nm mm cm m metre
  metres meter meters in inch inches ft feet m2 sqm ft2 sqft pct percent prob ms s sec secs second
  seconds min mins minute minutes h hr hrs hour hours d day days ml cl l litre litres liter liters oz
  floz g kg n rpm`.split(/\s+/),
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

/** The known key that says the same in another unit, without one, or joined in another way. */
export function sameInOtherUnit(key: string, known: readonly string[]): string | undefined {
  const joined = wordsOfKey(key).join('_');
  const stem = withoutUnits(key);
  return (
    known.find((candidate) => candidate === joined) ??
    known.find((candidate) => stem !== '' && stem === withoutUnits(candidate))
  );
}

export function keyHint(key: string, known: readonly string[]): string | undefined {
  const same = sameInOtherUnit(key, known);
  if (same !== undefined) return `write ${same}`;
  const near = suggest(key, known);
  if (near !== undefined) return near;
  return known.length === 0 ? undefined : `keys known here: ${known.join(', ')}`;
}
