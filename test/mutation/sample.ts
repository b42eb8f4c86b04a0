/**
 * Which mutants a run tries. All of a room take hours; one in N, chosen by nothing but what and where they are, give
 * a fair estimate of the share that would be killed: no mutant is likelier to be chosen for being easy.
 */
import { createHash } from 'node:crypto';

export type Mutant = {
  readonly fileName: string;
  readonly mutatorName: string;
  readonly replacement: string;
  readonly location: { readonly start: Place; readonly end: Place };
};

type Place = { readonly line: number; readonly column: number };

export type Sample = {
  /** One in this many. */
  readonly every: number;
  /** Another seed takes others. */
  readonly seed: number;
};

const place = ({ line, column }: Place): string => `${line}:${column}`;

/** The path from src/ on, which is the same in every copy of the tree. */
export const inTree = (path: string): string =>
  path.replaceAll('\\', '/').replace(/^.*\/(?=src\/)/, '');

/** The same seed takes the same mutants, whatever others there are, until their place or their change is another. */
export function isSampled(mutant: Mutant, { every, seed }: Sample): boolean {
  const { fileName, mutatorName, replacement, location } = mutant;
  const what = [
    seed,
    inTree(fileName),
    place(location.start),
    place(location.end),
    mutatorName,
    replacement,
  ];
  const digest = createHash('sha256').update(what.join('\n')).digest();
  return digest.readUInt32BE(0) % every === 0;
}
