/** Where a reading stands, with its line as the user wrote it. */
import type { Place } from '../../base/diagnostics.ts';
import type { Reading } from '../../film/reading.ts';
import { lineAt, type Source, shownLine } from '../rows/source.ts';

const number = /^[^\s,;|\t]*\d[\d.,]*/u;

export function readingPlace(source: Source, { origin }: Reading): Place {
  const line = lineAt(source, origin.line) ?? '';
  const length = number.exec(line.slice(origin.column - 1))?.[0].length ?? 1;
  return { ...origin, length, ...shownLine(line, origin.column) };
}

/** A whole line. */
export function linePlace(source: Source, line: number): Place {
  const text = lineAt(source, line) ?? '';
  return { file: source.name, line, column: 1, length: text.length, ...shownLine(text, 1) };
}
