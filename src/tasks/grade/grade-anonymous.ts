/**
 * Names of trainees out of everything that is said: in their place stands `Trainee 1`, `Trainee 2` … in the order
 * of the files, and in place of their files `survey-1.csv`, `survey-2.csv` …
 */
import type { Diagnostic } from '../../base/diagnostics.ts';
import type { ReadInput } from '../read/read-request.ts';
import type { HandedFile } from './grade-request.ts';

/** Files are renamed before they are read, so that no message ever knows the name. */
export const namelessFiles = (files: readonly HandedFile[]): readonly HandedFile[] =>
  files.map((file, i) => ({ ...file, name: `survey-${i + 1}.csv` }));

export const namelessTrainee = (place: number): string => `Trainee ${place + 1}`;

/** By name as given, what stands in its place. */
export type Names = ReadonlyMap<string, string>;

/** A line of a file may name who read it, and so may a cell that a message quotes. */
export function namelessDiagnostic(diagnostic: Diagnostic, names: Names): Diagnostic {
  const { at, message, hint } = diagnostic;
  const { lineText: _, length: __, ...place } = at ?? { file: '' };
  return {
    ...diagnostic,
    message: namelessText(message, names),
    ...(hint === undefined ? {} : { hint: namelessText(hint, names) }),
    ...(at === undefined ? {} : { at: { ...place, file: takenOut(place.file, names) } }),
  };
}

/**
 * As whole words: a trainee who signs as `n` has no letter of other words. What a file says stands in quotes, and there
 * every name is taken out; in our own words only one that these never hold, for a trainee may be called `a` or `mark`.
 */
export function namelessText(text: string, names: Names): string {
  const distinct = new Map([...names].filter(([name]) => isNoWordOfOurs(name)));
  return text
    .split(/("[^"]*")/u)
    .map((part, i) => takenOut(part, i % 2 === 1 ? names : distinct))
    .join('');
}

const isNoWordOfOurs = (name: string): boolean => /\p{Lu}\p{Ll}|[^\p{L}\p{N}]/u.test(name);

/** All at once, and stand-ins before names, so that no stand-in is read again. */
function takenOut(text: string, names: Names): string {
  const longestFirst = [...names.keys()].filter(Boolean).sort((a, b) => b.length - a.length);
  if (longestFirst.length === 0) return text;
  const any = longestFirst.map((name) => name.replaceAll(/[\\^$.*+?()[\]{}|]/g, '\\$&')).join('|');
  const word = new RegExp(
    `survey-\\d+\\.csv|Trainee \\d+|(?<![\\p{L}\\p{N}])(?:${any})(?![\\p{L}\\p{N}])`,
    'gu',
  );
  return text.replaceAll(word, (name) => names.get(name) ?? name);
}

/** Lines beside a table name people; what else was decided of a file does not. */
export const namelessInput = (input: ReadInput, names: Names): ReadInput => ({
  ...input,
  decisions:
    input.decisions === null
      ? null
      : {
          ...input.decisions,
          metadata: [],
          evidence: input.decisions.evidence.map((text) => namelessText(text, names)),
        },
});
