/**
 * Tables whose columns no usual delimiter sets apart: `panel^point^reading`, columns aligned by blanks,
 * rows that a spreadsheet has wrapped in quotes as a whole, or a table that something stands around:
 * `> ` of an answered mail before each line, line ends that are none of a text file, “ ” for quotes.
 *
 * They are asked for only in a file that has no header else. The marks that set the columns apart become
 * tabs, one each, and the quotes around rows blanks: every cell stays at its place, and what is shown of a
 * line is the line as it was written.
 */
import { type Diagnostic, error, found, type Outcome, refused } from '../../base/diagnostics.ts';
import { alignByBlanks } from './aligned-columns.ts';
import { delimiters } from './dialect.ts';
import { plainRows } from './plain-rows.ts';
import { rewritten, type Source } from './source.ts';

export type OtherMarks = {
  readonly source: Source;
  /** The mark that it was, where the decisions name it. */
  readonly shown: string | undefined;
  readonly evidence: string;
};

/** Signs that stand for nothing else in a table; a colon may, and comes last. */
const marks = ['^', '~', '¦', '\u001f', '\\t', '/', ':'] as const;
const nameOfMark: Partial<Record<(typeof marks)[number], string>> = {
  '\u001f': 'unit separator',
  '\\t': 'tab, written out',
};

/** The header is looked for among these lines. */
const headLines = 5000;

/** Undefined where no line is a header in this way either; refused where a row does not fit below it. */
export function otherMarks(
  source: Source,
  isHeader: (cells: readonly string[]) => boolean,
): Outcome<OtherMarks> | undefined {
  const headed = (line: string): boolean =>
    delimiters.some((delimiter) =>
      isHeader(line.split(delimiter).map((cell) => cell.replace(/^\s*"|"\s*$/gu, ''))),
    );
  const { text, evidence: bared } = plainRows(source.text);
  if (bared.length > 0 && text.split('\n').slice(0, headLines).some(headed)) {
    return found({ source: rewritten(source, text), shown: undefined, evidence: bared.join('; ') });
  }
  const lines = text.split('\n');
  const own = marks.find((one) =>
    lines.slice(0, headLines).some((line) => line.includes(one) && isHeader(line.split(one))),
  );
  const said = (sentence: string): string => [...bared, sentence].join('; ');
  // Between tabs only a mark that nobody types is one of columns.
  if (own !== undefined && !(text.includes('\t') && own !== '\u001f')) {
    const shown = nameOfMark[own] ?? own;
    const evidence = said(`the sign ${shown} as delimiter, it alone makes a line a header`);
    const apart = text.replaceAll(own, own.length === 1 ? '\t' : ' \t');
    return found({ source: rewritten(source, apart), shown, evidence });
  }
  if (text.includes('\t')) return undefined;
  const aligned = alignByBlanks(text, isHeader);
  const single = aligned === undefined ? bySingleBlanks(lines, isHeader) : undefined;
  if (single !== undefined) {
    const evidence = said('one blank between columns: every row has as many cells as the header');
    return found({ source: rewritten(source, single), shown: 'blanks', evidence });
  }
  if (aligned === undefined) return undefined;
  if (aligned.text === undefined) return refused(tellOdd(source, lines, aligned.odd));
  const evidence = said(
    'two blanks and more between columns: every row has its cells under the header',
  );
  return found({ source: rewritten(source, aligned.text), shown: 'blanks', evidence });
}

/** Where names of several words stood among the cells, some row would have more of them. */
function bySingleBlanks(
  lines: readonly string[],
  isHeader: (cells: readonly string[]) => boolean,
): string | undefined {
  const head = lines.slice(0, headLines).findIndex((line) => {
    const cells = line.split(' ');
    return cells.length > 1 && !/[:;=|,]/u.test(line) && isHeader(cells);
  });
  const width = lines[head]?.split(' ').length;
  if (width === undefined) return undefined;
  const below = lines.slice(head);
  const fits = below.every((line) => line.trim() === '' || line.split(' ').length === width);
  return fits
    ? [...lines.slice(0, head), ...below.map((line) => line.replaceAll(' ', '\t'))].join('\n')
    : undefined;
}

function tellOdd(source: Source, lines: readonly string[], odd: number): Diagnostic {
  const start = lines.slice(0, odd).reduce((sum, line) => sum + line.length + 1, 0);
  const message =
    'blanks set the columns apart, and here they do not say which cell is of which column';
  return error('delimiter-ambiguous', message, {
    at: source.placeAt(start, lines[odd]?.length ?? 1),
    hint: 'put a comma, a semicolon or a tab between the columns, in every row',
  });
}
