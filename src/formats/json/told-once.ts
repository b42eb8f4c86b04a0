/** A key that means nothing in any of many like places is told where it first stands, with a count of the others. */
import type { Diagnostic } from '../../base/diagnostics.ts';
import { groupBy } from '../../base/group-by.ts';

/** In their order; few that are alike are told each by itself. */
export function toldOnce(diagnostics: readonly Diagnostic[]): readonly Diagnostic[] {
  if (diagnostics.length <= MOST_ALIKE) return diagnostics;
  const unknown = diagnostics.filter(({ code }) => code === 'settings-unknown-key');
  const alike = groupBy(unknown, ({ message, hint }) => JSON.stringify([message, hint]));
  const [first, others] = [new Map<Diagnostic, Diagnostic>(), new Set<Diagnostic>()];
  for (const [one, ...rest] of alike.values()) {
    if (rest.length < MOST_ALIKE) continue;
    first.set(one, { ...one, message: `${one.message}, ${norIn(rest)}` });
    for (const other of rest) others.add(other);
  }
  return diagnostics.filter((one) => !others.has(one)).map((one) => first.get(one) ?? one);
}

const MOST_ALIKE = 3;

function norIn(rest: readonly Diagnostic[]): string {
  const lines = [...new Set(rest.flatMap(({ at }) => at?.line ?? []))];
  const named =
    lines.length > SOME + 1
      ? `${lines.slice(0, SOME).join(', ')} … ${lines.at(-1)}`
      : lines.join(', ');
  const where = lines.length === 1 ? 'line' : 'lines';
  return `nor in ${rest.length} further places (${where} ${named})`;
}

/** Lines named before the last. */
const SOME = 3;
