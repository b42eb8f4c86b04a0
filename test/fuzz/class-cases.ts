/** Visits to compare and classes to grade, of spoiled files: the same seed and number give the same case. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { createRandom, type Random } from '../intake/corpus/random.ts';
import { mutated } from './mutate.ts';

type FileOf = { readonly name: string; readonly bytes: Uint8Array };

export type ClassCase = {
  readonly task: 'compare' | 'grade';
  /** Visits in their order; of a class the reference first, unless it is its own. */
  readonly files: readonly FileOf[];
  readonly consensus: boolean;
  /** A rubric or a plan. */
  readonly settings: FileOf | undefined;
  /** Sets that were worked, or gloss. */
  readonly worked: FileOf | undefined;
  readonly gloss: FileOf | undefined;
  readonly marked: boolean;
  readonly anonymous: boolean;
};

type Starts = {
  readonly visits: readonly Uint8Array[];
  readonly surveys: readonly Uint8Array[];
  readonly rubric: Uint8Array;
  readonly plan: Uint8Array;
  readonly worked: Uint8Array;
  readonly gloss: Uint8Array;
};

export function classStarts(root: string): Starts {
  const read = (...names: readonly string[]): Uint8Array =>
    Uint8Array.from(readFileSync(join(root, ...names)));
  const surveys = ['reference', 'anneke', 'bram', 'caja', 'dov', 'elif'];
  return {
    visits: ['readings', 'after'].map((name) => read('samples', 'sound-saloon', `${name}.csv`)),
    surveys: surveys.map((name) => read('samples', 'class', `${name}.csv`)),
    rubric: read('samples', 'class', 'rubric.json'),
    plan: read('test', 'cases', 'compare-plan-text', 'plan.json'),
    worked: read('test', 'cases', 'compare-worked-text', 'worked.csv'),
    gloss: read('samples', 'sound-saloon', 'gloss.csv'),
  };
}

export function classCaseOf(starts: Starts, seed: number, number: number): ClassCase {
  const random = createRandom(Math.imul(seed, 0x9e3779b1) ^ Math.imul(number + 1, 0xc2b2ae35));
  const task = random.chance(0.5) ? 'compare' : 'grade';
  const whole = task === 'compare' ? starts.visits : starts.surveys;
  const all = random.chance(0.2) ? whole : whole.map(fewerPanels);
  const some = (bytes: Uint8Array, name: string, share: number): FileOf | undefined =>
    random.chance(share) ? { name, bytes: spoiled(bytes, all, random) } : undefined;
  return {
    task,
    files: filesOf(all, random, task === 'compare' ? 2 : 5),
    consensus: random.chance(0.2),
    settings:
      task === 'compare'
        ? some(starts.plan, 'plan.json', 0.5)
        : some(starts.rubric, 'rubric.json', 0.3),
    worked: task === 'compare' ? some(starts.worked, 'worked.csv', 0.4) : undefined,
    gloss: task === 'compare' ? some(starts.gloss, 'gloss.csv', 0.2) : undefined,
    marked: random.chance(0.5),
    anonymous: random.chance(0.2),
  };
}

/** The rows of a few panels: what goes wrong goes wrong with them as well, in a fraction of the time. */
const fewerPanels = (bytes: Uint8Array): Uint8Array =>
  Uint8Array.from(
    Buffer.from(
      Buffer.from(bytes).toString('latin1').split('\n').slice(0, 26).join('\n'),
      'latin1',
    ),
  );

/** Mostly as it is, so that something is compared; else spoiled, empty, or another file under its name. */
function spoiled(bytes: Uint8Array, all: readonly Uint8Array[], random: Random): Uint8Array {
  const fate = random.next();
  if (fate < 0.5) return bytes;
  if (fate < 0.53) return new Uint8Array();
  return fate < 0.6 ? random.pick(all) : mutated(bytes, random.pick(all), random);
}

/** Files in any order; two of one name are two attempts, or a file that is named twice. */
function filesOf(all: readonly Uint8Array[], random: Random, usual: number): readonly FileOf[] {
  // The command asks for more where there is less, before anything is read.
  const count = random.chance(0.8) ? usual : random.int(2, usual + 2);
  const ordered = random.chance(0.3) ? random.shuffled(all) : all;
  return Array.from({ length: count }, (_, k) => ({
    name: random.chance(0.1) ? 'again.csv' : `file-${k + 1}.csv`,
    bytes: spoiled(ordered[k] ?? random.pick(all), all, random),
  }));
}
