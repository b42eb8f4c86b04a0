import { error, found, type Outcome, refused } from '../../base/diagnostics.ts';
import type { LoadedFile } from '../../tasks/read/read-request.ts';

/** The text of a settings file: JSON is UTF-8 (RFC 8259), whatever an export of readings may be. */
export function utf8Text({ name, bytes }: Pick<LoadedFile, 'name' | 'bytes'>): Outcome<string> {
  try {
    return found(new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes));
  } catch (problem) {
    if (!(problem instanceof TypeError)) throw problem;
    return refused(
      error('json-syntax', 'the file is not UTF-8', {
        at: { file: name },
        hint: 'save it as UTF-8',
      }),
    );
  }
}
