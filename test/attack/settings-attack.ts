/**
 * Every value of a sound file of every kind made nasty, one at a time, and nasty keys beside its own:
 * the file is read, or refused with a place in it; nothing is thrown, nothing polluted, and nobody waits.
 */
import { checkSettingsFile } from '../../src/formats/check-file.ts';
import { nastyKeys, nastyValues } from './nasty-values.ts';

/** Where a value of a file stands in it: a nasty one can be put there without writing the rest anew. */
const MARK = '\u0001here\u0001';

/** Entries of a list that are tried: the others are like them. */
const alike = 2;

type Path = readonly (string | number)[];

const isHolder = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

const pathsOf = (value: unknown, path: Path = []): readonly Path[] => [
  ...(path.length === 0 ? [] : [path]),
  ...(isHolder(value)
    ? Object.entries(value)
        .slice(0, Array.isArray(value) ? alike : undefined)
        .flatMap(([key, inner]) =>
          pathsOf(inner, [...path, Array.isArray(value) ? Number(key) : key]),
        )
    : []),
];

/** The same value with the mark at a path. */
function marked(value: unknown, [step, ...rest]: Path): unknown {
  if (step === undefined) return MARK;
  if (Array.isArray(value)) {
    return value.map((inner, i) => (i === step ? marked(inner, rest) : (inner as unknown)));
  }
  if (!isHolder(value)) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, inner]) => [key, key === step ? marked(inner, rest) : inner]),
  );
}

/** Texts of a sound file spoiled in one place each: all of them, or one in so many. */
export function* spoiledTexts(sound: string, oneIn = 1): Generator<string> {
  const value: unknown = JSON.parse(sound);
  const quoted = JSON.stringify(MARK);
  let number = 0;
  for (const path of pathsOf(value)) {
    const taken = nastyValues.filter((_, i) => (number + i) % oneIn === 0);
    number += nastyValues.length;
    if (taken.length === 0) continue;
    const [before = '', after = ''] = JSON.stringify(marked(value, path)).split(quoted);
    for (const nasty of taken) yield before + nasty + after;
  }
  const body = sound.trimStart().slice(1);
  for (const key of nastyKeys) {
    for (const nasty of ['1', '{"polluted":true}']) {
      yield `{${JSON.stringify(key)}: ${nasty},${body}`;
    }
  }
}

/** One in how many makes at most so many. */
export const oneInFor = (sound: string, most: number): number =>
  Math.ceil((pathsOf(JSON.parse(sound)).length * nastyValues.length) / most);

const SLOW_MS = 2000;

/** What is wrong with how a text was taken; nothing if all is well. */
export function settingsFault(text: string): string | undefined {
  const began = performance.now();
  try {
    const { value, diagnostics } = checkSettingsFile('settings.json', text);
    const errors = diagnostics.filter(({ severity }) => severity === 'error');
    if (value === undefined && errors.length === 0) return 'refused without a word';
    const lost = errors.find(({ at }) => at?.line === undefined || at.column === undefined);
    if (lost !== undefined) return `no place: ${lost.code} ${lost.message.slice(0, 200)}`;
    const long = diagnostics.find(({ message, hint = '' }) => message.length + hint.length > 2000);
    if (long !== undefined) return `told at length: ${long.message.slice(0, 100)}`;
    if (({} as { polluted?: unknown }).polluted !== undefined) return 'a prototype is polluted';
    const ms = performance.now() - began;
    return ms > SLOW_MS ? `took ${ms.toFixed(0)} ms` : undefined;
  } catch (problem) {
    return `threw ${problem instanceof Error ? problem.stack : String(problem)}`;
  }
}
