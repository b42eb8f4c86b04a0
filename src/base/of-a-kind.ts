/** A fault that a file repeats in thousands of places is told in the first of them, and counted. */
import type { Diagnostic } from './diagnostics.ts';
import { groupBy } from './group-by.ts';

/** Told of one kind in one file. */
export const mostTold = 100;

/** Of each code and severity in a file the first, and how many more there are; what has no line of its own is kept. */
export function cutOfAKind(diagnostics: readonly Diagnostic[]): readonly Diagnostic[] {
  if (diagnostics.length <= mostTold) return diagnostics;
  const inLines = diagnostics.filter(({ at }) => at?.line !== undefined);
  const long = [...groupBy(inLines, kindOf).values()].filter(({ length }) => length > mostTold);
  const cut = new Set(long.flatMap((same) => same.slice(mostTold)));
  const counts = long.map(([first, ...others]) => moreLike(first, 1 + others.length - mostTold));
  return [...diagnostics.filter((one) => !cut.has(one)), ...counts];
}

/** For what is not looked at one by one. */
export const moreLike = ({ severity, code, at }: Diagnostic, count: number): Diagnostic => ({
  severity,
  code,
  message: moreText(count),
  ...(at === undefined ? {} : { at: { file: at.file } }),
});

export const moreText = (count: number): string => `and ${count} more of this kind`;

const MORE = /^and (\d+) more of this kind$/;

/** How many there are of it: one, unless it is itself a count of others. */
export const standsFor = ({ message }: Diagnostic): number => Number(MORE.exec(message)?.[1] ?? 1);

const kindOf = ({ severity, code, at }: Diagnostic): string => [severity, code, at?.file].join(' ');
