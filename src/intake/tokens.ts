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
  /** Offset of the row's first quote: up to there its cells stand in the text as they are. */
  readonly quoteAt: number;
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
    if (quote === -1 || quote > end) {
      rows.push({ cells, line, start, quoteAt: Number.POSITIVE_INFINITY });
      offset = end + 1;
      line += 1;
      continue;
    }
    const walked = walkRow(text, delimiter, start);
    if (walked.fault !== undefined) return refused(quoteFault(source, walked.fault));
    rows.push({ cells, line, start, quoteAt: quote });
    offset = walked.offset + 1;
    line += countLineEnds(text, start, walked.offset) + 1;
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
type Walked = Span & { readonly fault?: QuoteFault };

/**
 * The cell of a number as it stands in the text, quotes included; beyond the last cell, an empty
 * span at the end of the row. A quote in the wrong place on the way is told.
 */
function walkTo(text: string, delimiter: Delimiter, start: number, column: number): Walked {
  for (let offset = start, k = 0; ; k += 1) {
    const end = cellEnd(text, delimiter, offset);
    if (typeof end !== 'number') return { offset: text.length, length: 0, fault: end };
    if (k === column) return { offset, length: end - offset };
    if (text[end] !== delimiter) return { offset: end, length: 0 };
    offset = end + 1;
  }
}

const walkRow = (text: string, delimiter: Delimiter, start: number): Walked =>
  walkTo(text, delimiter, start, Number.POSITIVE_INFINITY);

function cellEnd(text: string, delimiter: Delimiter, start: number): number | QuoteFault {
  if (text[start] === '"') return quotedEnd(text, delimiter, start);
  let end = start;
  let bare = -1;
  for (; end < text.length; end += 1) {
    const character = text[end];
    if (character === delimiter || character === '\n') break;
    if (bare === -1 && character !== ' ' && character !== '\t') bare = end;
  }
  return bare > start && text[bare] === '"' ? { kind: 'stray', offset: bare } : end;
}

function quotedEnd(text: string, delimiter: Delimiter, start: number): number | QuoteFault {
  let at = text.indexOf('"', start + 1);
  while (at !== -1 && text[at + 1] === '"') at = text.indexOf('"', at + 2);
  if (at === -1) return { kind: 'open', offset: start };
  const next = text[at + 1];
  const closes = next === undefined || next === '\n' || next === delimiter;
  if (closes) return at + 1;
  // Over a line end, the quote that seems to close is the opening one of a later cell.
  return countLineEnds(text, start, at) > 0
    ? { kind: 'open', offset: start }
    : { kind: 'stray', offset: at };
}

/** Where a cell stands: quotes included, blanks around it not. */
export function cellSpan(source: Source, row: Row, column: number, delimiter: Delimiter): Span {
  const { text } = source;
  let offset = row.start;
  for (let k = 0; k < column && offset <= row.quoteAt; k += 1) {
    const cell = row.cells[k];
    if (cell === undefined) return { offset: Math.max(row.start, offset - 1), length: 0 };
    offset += cell.length + 1;
  }
  const cell = row.cells[column];
  if (offset + (cell?.length ?? 0) > row.quoteAt || offset === row.quoteAt) {
    return trimmed(text, walkTo(text, delimiter, row.start, column));
  }
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
    const size = row.offset - offset;
    if (size >= longestRow / 4) return tooLong(source, delimiter, offset, size);
    offset = row.offset + 1;
  }
  return error('quote-unclosed', 'the cells of the file cannot be told apart', {
    at: { file: source.name },
  });
}

/** A cell that swallowed many lines was opened by a forgotten quote; else this is no table. */
function tooLong(source: Source, delimiter: Delimiter, start: number, size: number): Diagnostic {
  const { text } = source;
  for (let column = 0; ; column += 1) {
    const { offset, length } = walkTo(text, delimiter, start, column);
    if (length > size / 2 && text[offset] === '"')
      return quoteFault(source, { kind: 'open', offset });
    if (offset + length >= start + size) break;
  }
  const { lineText: _, ...at } = source.placeAt(start, 1);
  return error('row-too-long', `a row of ${size} characters is no row of readings`, { at });
}
