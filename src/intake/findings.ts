/**
 * A list of diagnostics that does not drown the reader: of each code and severity the first twenty
 * are kept, the rest counted in a line of their own. A diagnostic is built only if it is kept. What is
 * said of each number of a row, in the same words and place, is told once.
 */

import { type Diagnostic, error, note, type Severity, warning } from '../base/diagnostics.ts';
import { moreText } from '../base/of-a-kind.ts';

type Told = Omit<Diagnostic, 'severity'>;
const make = { error, warning, note } as const;
export const mostOfAKind = 20;

const isSame = (a: Diagnostic, b: Diagnostic): boolean =>
  a.code === b.code &&
  a.message === b.message &&
  a.severity === b.severity &&
  a.at?.file === b.at?.file &&
  a.at?.line === b.at?.line &&
  a.at?.column === b.at?.column;

export type Findings = {
  readonly add: (severity: Severity, code: Told['code'], tell: () => Omit<Told, 'code'>) => void;
  readonly addAll: (diagnostics: readonly Diagnostic[]) => void;
  readonly hasErrors: () => boolean;
  readonly list: () => readonly Diagnostic[];
};

export function createFindings(file: string): Findings {
  const kept: Diagnostic[] = [];
  const counts = new Map<string, { severity: Severity; code: Told['code']; count: number }>();
  let errors = 0;
  const add: Findings['add'] = (severity, code, tell) => {
    if (severity === 'error') errors += 1;
    const key = `${severity} ${code}`;
    const kind = counts.get(key) ?? { severity, code, count: 0 };
    kind.count += 1;
    counts.set(key, kind);
    if (kind.count > mostOfAKind) return;
    const { message, ...rest } = tell();
    const told = make[severity](code, message, rest);
    if (kept.some((other) => isSame(other, told))) kind.count -= 1;
    else kept.push(told);
  };
  const summaries = (): readonly Diagnostic[] =>
    [...counts.values()]
      .filter(({ count }) => count > mostOfAKind)
      .map(({ severity, code, count }) =>
        make[severity](code, moreText(count - mostOfAKind), { at: { file } }),
      );
  return {
    add,
    addAll: (diagnostics) => {
      for (const { severity, code, ...rest } of diagnostics) add(severity, code, () => rest);
    },
    hasErrors: () => errors > 0,
    list: () => [...kept, ...summaries()],
  };
}
