/** What a key of a record means in its place. */
import { type KeyMeaning, keyMeanings } from './key-meanings.ts';
import { recordKeyMeanings } from './record-key-meanings.ts';
import { recordPlaceMeanings } from './record-place-meanings.ts';

const ofKeys = new Map(Object.entries(recordKeyMeanings));
const ofPlaces = new Map(Object.entries(recordPlaceMeanings));
const keysOfFiles = new Map(keyMeanings.map((one) => [one.key, one]));

/** A key that means the same in settings files is told as it is there. */
export type RecordMeaning = { readonly meaning: string; readonly ofFile: KeyMeaning | null };

/** From the record and the keys that lead to one, itself last: the meaning that names most of them. */
export function recordMeaning(record: string, path: readonly string[]): RecordMeaning | undefined {
  const place = [record, ...path].join('.').replaceAll('[]', '').replace(OF_A_ZONE, '.');
  const key = place.slice(place.lastIndexOf('.') + 1);
  const own = endMeaning(place) ?? ofKeys.get(key);
  if (own !== undefined) return { meaning: own, ofFile: null };
  const ofFile = keysOfFiles.get(key);
  return ofFile === undefined ? undefined : { meaning: ofFile.meaning, ofFile };
}

/** A zone has the keys of its panel, and two of its own. */
const OF_A_ZONE = /\.zones\.(?!(?:zone|points)$)/;

function endMeaning(place: string): string | undefined {
  for (let end = place; end.includes('.'); end = end.slice(end.indexOf('.') + 1)) {
    const said = ofPlaces.get(end);
    if (said !== undefined) return said;
  }
  return undefined;
}
