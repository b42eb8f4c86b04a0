/** A result of ours in the place of readings: a page, or a table of what was worked out. It is refused for what it is. */
import { type Diagnostic, error } from '../../base/diagnostics.ts';
import { ownResult } from '../../base/own-files.ts';
import type { Source } from '../rows/source.ts';

/** A result says what it is near its beginning. */
const beginning = 4096;

export function tellOwnResult({ text, placeAt }: Source): Diagnostic | undefined {
  const called = ownResult(text.slice(0, beginning));
  if (called === undefined) return undefined;
  const [line = ''] = text.split(/\r\n?|\n/u, 1);
  return error('file-other-kind', `this is ${called} that leastcut wrote, and no readings`, {
    at: placeAt(0, Math.max(1, line.length)),
    hint: 'name the readings it was made of',
  });
}
