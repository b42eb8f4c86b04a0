/**
 * A header behind a `#`: `#,panel,reading_um`, `# panel;point;reading`.
 *
 * Some programs mark the line of names so. It is asked for only in a file that has no other header:
 * the `#` of the first such line with rows below it becomes a blank, so that every place stays.
 */
import { createSource, type Source } from './source.ts';
import type { Delimiter } from './tokens.ts';

const delimiters: readonly Delimiter[] = [',', ';', '\t', '|'];

export function uncommentHeader(
  source: Source,
  isHeader: (cells: readonly string[]) => boolean,
): Source | undefined {
  const { name, text, ...rules } = source;
  for (const { index, 1: line = '' } of text.matchAll(/^#(.*)$/gmu)) {
    if (!delimiters.some((delimiter) => isHeader(line.split(delimiter)))) continue;
    if (!/\n[^#\s]/u.test(text.slice(index))) return undefined;
    const uncommented = `${text.slice(0, index)} ${text.slice(index + 1)}`;
    return createSource(name, uncommented, { ...rules, written: text });
  }
  return undefined;
}
