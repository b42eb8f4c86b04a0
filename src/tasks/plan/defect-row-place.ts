/** Where a row of a defects file stands, at one of its words. */
import type { Place } from '../../base/diagnostics.ts';
import type { DefectRow } from '../../intake/read-defects-file.ts';

export function rowPlace({ origin, lineText, panel }: DefectRow, word = panel): Place {
  const column = lineText.indexOf(word) + 1;
  return {
    file: origin.file,
    line: origin.line,
    lineText,
    ...(column === 0 ? {} : { column, length: word.length }),
  };
}
