/** Files taken as one vehicle whose lines beside the readings name another car each. */
import { saidFile } from '../../base/file-name.ts';
import type { Reading } from '../../film/reading.ts';
import type { ReadInput } from '../read/read-request.ts';
import type { Assumption } from '../settings/assumption.ts';

/** What names a car and is no id of it by itself: an id parts the readings by vehicle. A bare "model" may be the gauge’s. */
const NAMES_A_CAR =
  /^(?:(?:vehicle|car) (?:model|make|name|type|number|no)|make and model|chassis(?: (?:number|no))?|(?:vin|plate|registration) (?:number|code))$/;

type Said = { readonly file: string; readonly key: string; readonly value: string };

/** The first two that name it otherwise under one word. */
export function filesNameOthers(
  readings: readonly Reading[],
  inputs: readonly ReadInput[],
): readonly Assumption[] {
  const files = new Set(readings.map(({ origin }) => origin.file));
  const said = inputs.filter(({ file }) => files.has(file)).flatMap(namesIn);
  for (const [i, other] of said.entries()) {
    const one = said.slice(0, i).find((before) => isOtherCar(before, other));
    if (one === undefined) continue;
    const text = `${saidFile(one.file)} says ${one.key}: ${one.value}, ${saidFile(other.file)} says ${other.value}`;
    return [{ code: 'files-doubted', text, origin: 'readings' }];
  }
  return [];
}

const namesIn = ({ file, decisions }: ReadInput): readonly Said[] =>
  (decisions?.metadata ?? [])
    .map(({ key, value }) => ({ file, key: plain(key), value: value.trim() }))
    .filter(({ key, value }) => value !== '' && NAMES_A_CAR.test(key));

const isOtherCar = (one: Said, other: Said): boolean =>
  one.file !== other.file && one.key === other.key && plain(one.value) !== plain(other.value);

const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
