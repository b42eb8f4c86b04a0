/**
 * A header behind a `#`: `#,panel,reading_um`, `# panel;point;reading`.
 *
 * Some programs mark the line of names so. It is asked for only in a file that has no other header:
 * the `#` of the first such line with rows below it becomes a blank, so that every place stays.
 */
import { delimiters } from './dialect.ts';
import { rewritten, type Source } from './source.ts';

export function uncommentHeader(
  source: Source,
  isHeader: (cells: readonly string[]) => boolean,
): Source | undefined {
  const { text } = source;
  for (const { index, 1: line = '' } of text.matchAll(/^#(.*)$/gmu)) {
    if (!delimiters.some((delimiter) => isHeader(line.split(delimiter)))) continue;
    if (!/\n[^#\s]/u.test(text.slice(index))) return undefined;
    return rewritten(source, `${text.slice(0, index)} ${text.slice(index + 1)}`);
  }
  return undefined;
}
