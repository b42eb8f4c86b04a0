/** JSON of another program, which was named in place of a table. */
import { type Diagnostic, error } from '../../base/diagnostics.ts';
import type { Source } from '../rows/source.ts';

/** Undefined where the text as a whole is none; lines that are objects each are no such text. */
export function tellJson({ name, text }: Source): Diagnostic | undefined {
  if (!/^\s*[[{]/u.test(text) || !parses(text)) return undefined;
  return error('file-other-kind', 'the file is JSON, and no table of readings', {
    at: { file: name, line: 1, column: 1, length: 1, lineText: '' },
    hint: 'export the readings as CSV; or write a table of them with the columns panel, point, reading_um',
  });
}

function parses(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}
