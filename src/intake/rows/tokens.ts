/**
 * Text → rows of cells, each row with the place it starts at.
 *
 * A line without a quote is a row and splits at each delimiter. A row with quotes is followed to its
 * end (`row-walker.ts`), which finds what is wrong with it and cuts out its cells: that takes half the
 * time csv-parse does. Cells with a doubled quote are left to csv-parse, all in one go. Blank lines, lines that start with `#` and the rule lines of tables drawn with
 * `|` are no rows. A fault costs its own line only: the rows below are looked at as well.
 */

import { parse } from 'csv-parse/sync';
import { type Diagnostic, found, type Outcome, refused } from '../../base/diagnostics.ts';
import { countLineEnds, endOfLine } from './lines.ts';
import { plainCells } from './plain-cells.ts';
import { cellOffset, type Row } from './row.ts';
import { rowFault, tooManyColumns } from './row-faults.ts';
import { type Delimiter, type RowRules, type Span, walkRow, walkTo } from './row-walker.ts';
import { linesOmitted, type Source } from './source.ts';

export type { Row } from './row.ts';
export type { Delimiter, Span } from './row-walker.ts';
export type Start = { readonly offset: number; readonly line: number };
export type SplitRows = {
  readonly rows: readonly Row[];
  readonly faults: readonly Diagnostic[];
  /** Where the next row starts: the end of the text, or a row that is not complete yet. */
  readonly end: Start;
};

const noCells: readonly string[] = [];

type EscapedCell = { readonly row: number; readonly column: number };

/** Faults told of one text: more of them are one and the same. */
const mostFaults = 20;

/** All rows of a text, or only the first of them. */
export function tokenize(
  source: Source,
  delimiter: Delimiter,
  start: Start,
  atMost = Number.POSITIVE_INFINITY,
): Outcome<readonly Row[]> {
  if (source.split?.delimiter === delimiter)
    return found(rowsFrom(source.split.rows, start, atMost));
  const { rows, faults } = splitRows(source, delimiter, start, { whole: true, atMost });
  return faults.length > 0 ? refused(...faults) : found(rows);
}

function rowsFrom(rows: readonly Row[], { offset }: Start, atMost: number): readonly Row[] {
  const first = rows.findIndex(({ start }) => start >= offset);
  return first === -1 ? [] : rows.slice(first, first + atMost);
}

/** With `whole` the last row ends with the text; else it may go on in the next piece. */
export function splitRows(
  source: Source,
  delimiter: Delimiter,
  start: Start,
  {
    whole,
    atMost = Number.POSITIVE_INFINITY,
  }: { readonly whole: boolean; readonly atMost?: number },
): SplitRows {
  const { text } = source;
  const rules = rulesOf(source, delimiter);
  const rows: Row[] = [];
  const escaped: EscapedCell[] = [];
  const faults: Diagnostic[] = [];
  /** The cells of the row above, where they stand in the text as they are. */
  let above: readonly string[] = noCells;
  let { offset, line } = start;
  let quoteAt = text.indexOf(rules.quote, offset);
  while (offset < text.length && rows.length < atMost && faults.length < mostFaults) {
    const lineEnd = endOfLine(text, offset);
    if (quoteAt !== -1 && quoteAt < offset) quoteAt = text.indexOf(rules.quote, offset);
    const quoted = quoteAt !== -1 && quoteAt < lineEnd;
    const step = isNoRow(text, offset, lineEnd, delimiter)
      ? { end: lineEnd, cells: [] }
      : quoted
        ? rowWithQuotes(source, rules, offset)
        : rowWithoutQuotes(source, delimiter, offset, lineEnd, above);
    if (!whole && mayGoOn(step, text, offset, rules)) break;
    if (step.fault !== undefined) faults.push(step.fault);
    else if (step.cells.some(isFilled)) {
      for (const column of step.escaped ?? []) escaped.push({ row: rows.length, column });
      above = quoted ? noCells : step.cells;
      rows.push({
        cells: step.cells,
        line: line + linesOmitted(source.omitted, offset),
        start: offset,
        quoted,
      });
    }
    line += step.end === lineEnd ? 1 : countLineEnds(text, offset, step.end) + 1;
    offset = Math.min(step.end + 1, text.length);
  }
  return { rows: unescaped(rows, escaped, rules), faults, end: { offset, line } };
}

/** One row or line: where it ends, and its cells or what is wrong with it. */
type Step = {
  readonly end: number;
  readonly cells: string[];
  readonly escaped?: readonly number[];
  readonly fault?: Diagnostic;
  /** Whether the fault is one that more text could mend. */
  readonly open?: boolean;
};

/** The last row of a piece may end in the next one, unless it is too long already. */
const mayGoOn = (step: Step, text: string, start: number, { longestRow }: RowRules): boolean =>
  text.length - start <= longestRow &&
  (step.open === true || (step.fault === undefined && step.end === text.length));

function rowWithoutQuotes(
  source: Source,
  delimiter: Delimiter,
  start: number,
  end: number,
  above: readonly string[],
): Step {
  if (end - start > source.limits.longestRow) {
    return { end, cells: [], fault: rowFault(source, { kind: 'long', offset: start }) };
  }
  return withinWidth(source, start, {
    end,
    cells: plainCells(source.text, delimiter, { start, end }, above),
  });
}

function rowWithQuotes(source: Source, rules: RowRules, start: number): Step {
  const { end, cells, escaped, fault } = walkRow(source.text, rules, start);
  if (fault === undefined) return withinWidth(source, start, { end, cells, escaped });
  const lineEnd = endOfLine(source.text, fault.offset);
  return { end: lineEnd, cells: [], fault: rowFault(source, fault), open: fault.kind !== 'stray' };
}

function withinWidth(source: Source, start: number, step: Step): Step {
  const { length } = step.cells;
  return length > source.limits.mostColumns
    ? { ...step, fault: tooManyColumns(source, start, length) }
    : step;
}

const rulesOf = ({ quote, limits }: Source, delimiter: Delimiter): RowRules => ({
  delimiter,
  quote,
  longestRow: limits.longestRow,
});

/** Nearly every cell starts with a letter or a digit, and needs no trimming to tell. */
const isFilled = (cell: string): boolean => {
  const first = cell.charCodeAt(0);
  return (first > 32 && first < 127) || cell.trim() !== '';
};

/** `|---|:-:|`, `+----+----+`: a dash or two without a colon may stand for a missing reading. */
const ruleCell = '\\s*(?:-{3,}|:-+:?|-+:)\\s*';
const ruleLine = new RegExp(`^\\s*[|+]?${ruleCell}(?:[|+]${ruleCell})*[|+]?\\s*$`, 'u');
const longestRule = 5_000;

/** Blank lines, comments, and in a table drawn with `|` the lines between its head and its rows. */
const isNoRow = (text: string, start: number, end: number, delimiter: Delimiter): boolean =>
  start === end ||
  text[start] === '#' ||
  (delimiter === '|' && end - start < longestRule && ruleLine.test(text.slice(start, end)));

/** The cells that hold doubled quotes, each of them once, as csv-parse takes them out of their quotes. */
function unescaped(
  rows: readonly Row[],
  escaped: readonly EscapedCell[],
  { delimiter, quote }: RowRules,
): readonly Row[] {
  if (escaped.length === 0) return rows;
  const texts = escaped.map(({ row, column }) => rows[row]?.cells[column] ?? '');
  const records: string[][] = parse(texts.join('\n'), {
    columns: false,
    delimiter,
    quote,
    escape: quote,
    record_delimiter: '\n',
  });
  if (records.length !== texts.length) throw new Error('cells with doubled quotes came apart');
  const complete = [...rows];
  for (const [k, { row: at, column }] of escaped.entries()) {
    const row = complete[at];
    const text = records[k]?.[0];
    if (row === undefined || text === undefined) continue;
    complete[at] = { ...row, cells: row.cells.with(column, text) };
  }
  return complete;
}

/** Where a cell stands: quotes included, blanks around it not. */
export function cellSpan(source: Source, row: Row, column: number, delimiter: Delimiter): Span {
  const { text } = source;
  if (row.quoted) {
    return trimmed(text, walkTo(text, rulesOf(source, delimiter), row.start, column));
  }
  const cell = row.cells[column];
  const offset = cellOffset(row, column);
  if (cell === undefined) return { offset: Math.max(row.start, offset - 1), length: 0 };
  return trimmed(text, { offset, length: cell.length });
}

function trimmed(text: string, { offset, length }: Span): Span {
  const cell = text.slice(offset, offset + length);
  const bare = cell.trim();
  if (bare.length === length || bare === '') return { offset, length };
  return { offset: offset + cell.indexOf(bare), length: bare.length };
}
