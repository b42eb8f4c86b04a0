/**
 * Text → rows of cells, each row with the place it starts at.
 *
 * csv-parse splits; it is asked for cells only, because its own positions cost several times the
 * work. Where a row and a cell stand is read off the text itself: a row without a quote is a line,
 * and a cell of it starts after the cells before it. Blank lines and lines that start with `#` are
 * no rows. A quote opens a cell only as its first character and closes it only as its last;
 * anything else is refused where it stands, since the split after it would be a guess.
 */
import { parse } from 'csv-parse/sync';
import { type Diagnostic, error, found, type Outcome, refused } from '../base/diagnostics.ts';
import type { Source } from './source.ts';

export type Delimiter = ',' | ';' | '\t';
export type Row = {
  readonly cells: readonly string[];
  /** Line of the row's first character, from 1. */
  readonly line: number;
  /** Offset of the row's first character, always the first of a line. */
  readonly start: number;
  /** No quote in the row: it is one line, its cells stand in the text as they are. */
  readonly plain: boolean;
};
export type Span = { readonly offset: number; readonly length: number };
export type Start = { readonly offset: number; readonly line: number };

/** Characters of the longest row read: beyond it a quote was forgotten or this is no table. */
const longestRow = 100_000;

export function tokenize(
  source: Source,
  delimiter: Delimiter,
  start: Start,
  atMost = -1,
): Outcome<readonly Row[]> {
  let records: string[][];
  try {
    records = parse(source.text.slice(start.offset), {
      columns: false,
      delimiter,
      record_delimiter: '\n',
      comment: '#',
      comment_no_infix: true,
      skip_empty_lines: true,
      relax_column_count: true,
      relax_quotes: true,
      max_record_size: longestRow,
      ...(atMost > 0 ? { to: atMost } : {}),
    });
  } catch {
    return refused(whyNotSplit(source, delimiter, start));
  }
  return placeRows(source, delimiter, start, records);
}

function placeRows(
  source: Source,
  delimiter: Delimiter,
  from: Start,
  records: readonly string[][],
): Outcome<readonly Row[]> {
  const { text } = source;
  const rows: Row[] = [];
  let { offset, line } = from;
  let quote = text.indexOf('"', offset);
  for (const cells of records) {
    while (text[offset] === '#' || text[offset] === '\n') {
      offset = lineEnd(text, offset) + 1;
      line += 1;
    }
    if (quote !== -1 && quote < offset) quote = text.indexOf('"', offset);
    const start = offset;
    const end = lineEnd(text, offset);
    const plain = quote === -1 || quote > end;
    if (plain) {
      rows.push({ cells, line, start, plain });
      offset = end + 1;
      line += 1;
      continue;
    }
    const walked = walkRow(text, delimiter, start);
    if (walked.fault !== undefined) return refused(quoteFault(source, walked.fault));
    rows.push({ cells, line, start, plain });
    offset = walked.end + 1;
    line += countLineEnds(text, start, walked.end) + 1;
  }
  return found(rows.filter(({ cells }) => cells.some((cell) => cell.trim() !== '')));
}

const lineEnd = (text: string, from: number): number => {
  const at = text.indexOf('\n', from);
  return at === -1 ? text.length : at;
};

export function countLineEnds(text: string, from: number, to: number): number {
  let count = 0;
  for (let at = text.indexOf('\n', from); at !== -1 && at < to; at = text.indexOf('\n', at + 1)) {
    count += 1;
  }
  return count;
}

type QuoteFault = { readonly kind: 'open' | 'stray'; readonly offset: number };
type WalkedRow = {
  readonly spans: readonly Span[];
  readonly end: number;
  readonly fault?: QuoteFault;
};

/** The cells of one row as they stand in the text, quotes included. */
function walkRow(text: string, delimiter: Delimiter, start: number): WalkedRow {
  const spans: Span[] = [];
  for (let offset = start; ; ) {
    const end = cellEnd(text, delimiter, offset);
    if (typeof end !== 'number') return { spans, end: text.length, fault: end };
    spans.push({ offset, length: end - offset });
    if (text[end] !== delimiter) return { spans, end };
    offset = end + 1;
  }
}

function cellEnd(text: string, delimiter: Delimiter, start: number): number | QuoteFault {
  if (text[start] === '"') return quotedEnd(text, delimiter, start);
  let end = start;
  while (end < text.length && text[end] !== delimiter && text[end] !== '\n') end += 1;
  const blank = text.slice(start, end).search(/\S/);
  return blank > 0 && text[start + blank] === '"' ? { kind: 'stray', offset: start + blank } : end;
}

function quotedEnd(text: string, delimiter: Delimiter, start: number): number | QuoteFault {
  let at = text.indexOf('"', start + 1);
  while (at !== -1 && text[at + 1] === '"') at = text.indexOf('"', at + 2);
  if (at === -1) return { kind: 'open', offset: start };
  const next = text[at + 1];
  const closes = next === undefined || next === '\n' || next === delimiter;
  return closes ? at + 1 : { kind: 'stray', offset: at };
}

/** Where a cell stands: quotes included, blanks around it not. */
export function cellSpan(source: Source, row: Row, column: number, delimiter: Delimiter): Span {
  const { text } = source;
  if (!row.plain) {
    const { spans, end } = walkRow(text, delimiter, row.start);
    return trimmed(text, spans[column] ?? { offset: end, length: 0 });
  }
  let offset = row.start;
  for (let k = 0; k < column; k += 1) {
    const cell = row.cells[k];
    if (cell === undefined) return { offset: offset - 1, length: 0 };
    offset += cell.length + 1;
  }
  const cell = row.cells[column];
  if (cell === undefined) return { offset: Math.max(row.start, offset - 1), length: 0 };
  return trimmed(text, { offset, length: cell.length });
}

function trimmed(text: string, { offset, length }: Span): Span {
  const cell = text.slice(offset, offset + length);
  const bare = cell.trim();
  if (bare.length === length || bare === '') return { offset, length };
  return { offset: offset + cell.indexOf(bare), length: bare.length };
}

function quoteFault(source: Source, { kind, offset }: QuoteFault): Diagnostic {
  const at = source.placeAt(offset, 1);
  if (kind === 'open') {
    return error('quote-unclosed', 'the quote that opens here is never closed', {
      at,
      hint: 'close it with a second ", or write "" for a quote inside a quoted cell',
    });
  }
  return error('cell-invalid', 'a quote stands in the wrong place of its cell', {
    at,
    hint: 'a quoted cell starts and ends with "; write "" for a quote inside it',
  });
}

/** csv-parse stopped: at a quote never closed, or at a row too long to be one. */
function whyNotSplit(source: Source, delimiter: Delimiter, from: Start): Diagnostic {
  const { text } = source;
  let offset = from.offset;
  while (offset < text.length) {
    const end = lineEnd(text, offset);
    if (text[offset] === '#' || offset === end) {
      offset = end + 1;
      continue;
    }
    const row = walkRow(text, delimiter, offset);
    if (row.fault !== undefined) return quoteFault(source, row.fault);
    if (row.end - offset >= longestRow / 4) {
      const widest = row.spans.reduce((a, b) => (b.length > a.length ? b : a), {
        offset,
        length: 0,
      });
      if (text[widest.offset] === '"')
        return quoteFault(source, { kind: 'open', offset: widest.offset });
      const { lineText: _, ...at } = source.placeAt(offset, 1);
      return error(
        'row-too-long',
        `a row of ${row.end - offset} characters is no row of readings`,
        {
          at,
        },
      );
    }
    offset = row.end + 1;
  }
  return error('quote-unclosed', 'the cells of the file cannot be told apart', {
    at: { file: source.name },
  });
}
