/** The files to start from, and the case of a number: the same seed and number give the same bytes. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { allKinds } from '../intake/corpus/all-kinds.ts';
import { createRandom } from '../intake/corpus/random.ts';
import { written } from '../intake/corpus/run-corpus.ts';
import { mutated } from './mutate.ts';

export type FuzzCase = { readonly bytes: Uint8Array; readonly unit: 'um' | undefined };

/** Longer files find nothing that shorter ones do not, and take longer. */
const LONGEST = 20_000;

/** Everything that is read from files below `samples`, and a file of each kind of the corpus. */
export function startingFiles(samples: string): readonly Uint8Array[] {
  const files = readdirSync(samples, { recursive: true, encoding: 'utf8' })
    .filter((name) => /readings\.(csv|tsv)$/.test(name))
    .sort()
    .map((name) => Uint8Array.from(readFileSync(join(samples, name))));
  const kinds = allKinds
    .filter(({ group }) => group !== 'sizes')
    .map((kind) => written(kind, 0).bytes);
  return [...files, ...kinds].filter(({ length }) => length <= LONGEST);
}

export function caseOf(files: readonly Uint8Array[], seed: number, number: number): FuzzCase {
  const random = createRandom(Math.imul(seed, 0x9e3779b1) ^ Math.imul(number + 1, 0x85ebca6b));
  const bytes = mutated(random.pick(files), random.pick(files), random);
  return { bytes, unit: random.chance(0.2) ? 'um' : undefined };
}
