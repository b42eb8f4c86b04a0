import type { Outcome } from '../../src/base/diagnostics.ts';

/** `line:column sentence | hint`, one for each problem that a reader finds. */
export const told = (
  read: (file: string, text: string) => Outcome<unknown>,
  text: string,
): readonly string[] =>
  read('f.json', text).diagnostics.map(
    ({ at, message, hint }) =>
      `${at?.line}:${at?.column} ${message}${hint === undefined ? '' : ` | ${hint}`}`,
  );
