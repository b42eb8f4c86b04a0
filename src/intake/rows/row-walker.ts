/**
 * Where the cells of a row start and end in the text, quotes considered.
 *
 * A quote opens a cell as its first character, blanks aside, and closes it as its last; a doubled
 * one stands for itself. A quote inside an unquoted cell (`12" disc`) is ordinary text. Anything
 * else is a fault at the place where it stands, since a split after it would be a guess.
 */
import { endOfLine } from './lines.ts';
import type { QuoteMark } from './source.ts';

export type Delimiter = ',' | ';' | '\t' | '|';
export type RowRules = {
  readonly delimiter: Delimiter;
  readonly quote: QuoteMark;
  readonly longestRow: number;
};
export type Span = { readonly offset: number; readonly length: number };

/** `open`: never closed; `stray`: in the wrong place; `long`: no line end where a row should have one. */
export type RowFault = { readonly kind: 'open' | 'stray' | 'long'; readonly offset: number };
export type Walked = Span & { readonly fault?: RowFault };

/**
 * The cell of a number as it stands in the text, quotes and blanks included; beyond the last cell,
 * an empty span at the end of the row. A fault on the way is told.
 */
export function walkTo(text: string, rules: RowRules, start: number, column: number): Walked {
  const furthest = start + rules.longestRow;
  for (let offset = start, k = 0; ; k += 1) {
    const end = cellEnd(text, rules, offset, furthest);
    if (typeof end !== 'number') return { offset: text.length, length: 0, fault: end };
    if (k === column) return { offset, length: end - offset };
    if (text[end] !== rules.delimiter) return { offset: end, length: 0 };
    offset = end + 1;
  }
}

export type WalkedRow = {
  /** Offset of the line end that closes the row, or of the end of the text. */
  readonly end: number;
  readonly fault?: RowFault;
  readonly cells: string[];
  /** Columns whose cell still stands in its quotes, for a quote is doubled within. */
  readonly escaped: readonly number[];
};

export function walkRow(text: string, rules: RowRules, start: number): WalkedRow {
  const { delimiter, quote } = rules;
  const furthest = start + rules.longestRow;
  const cells: string[] = [];
  const escaped: number[] = [];
  for (let offset = start; ; ) {
    const end = cellEnd(text, rules, offset, furthest);
    if (typeof end !== 'number') return { end: text.length, fault: end, cells, escaped };
    const first = afterBlanks(text, rules, offset);
    if (text[first] === quote) {
      const closing = text.lastIndexOf(quote, end - 1);
      const inner = text.slice(first + 1, closing);
      if (inner.includes(quote)) escaped.push(cells.length);
      cells.push(inner.includes(quote) ? text.slice(first, closing + 1) : inner);
    } else cells.push(text.slice(offset, end));
    if (text[end] !== delimiter) return { end, cells, escaped };
    offset = end + 1;
  }
}

function cellEnd(
  text: string,
  rules: RowRules,
  start: number,
  furthest: number,
): number | RowFault {
  const first = afterBlanks(text, rules, start);
  if (text[first] === rules.quote) return quotedEnd(text, rules, start, first, furthest);
  const [delimiter, lineEnd] = [text.indexOf(rules.delimiter, first), endOfLine(text, first)];
  const end = delimiter === -1 || delimiter > lineEnd ? lineEnd : delimiter;
  return end > furthest ? { kind: 'long', offset: furthest } : end;
}

function quotedEnd(
  text: string,
  rules: RowRules,
  start: number,
  opening: number,
  furthest: number,
): number | RowFault {
  const { quote, delimiter } = rules;
  let at = text.indexOf(quote, opening + 1);
  while (at !== -1 && at < furthest && text[at + 1] === quote) at = text.indexOf(quote, at + 2);
  const open: RowFault = { kind: 'open', offset: opening };
  if (at === -1) return open;
  const lineEnd = text.indexOf('\n', opening);
  const overLines = lineEnd !== -1 && lineEnd < at;
  if (at > furthest) return overLines ? open : { kind: 'long', offset: furthest };
  const next = afterBlanks(text, rules, at + 1);
  const closes = next >= text.length || text[next] === '\n' || text[next] === delimiter;
  // Behind blanks a quoted cell keeps to its line; one that starts with the delimiter and goes on
  // over lines is a sign for "the same" or a quote too many.
  const doubtful = overLines && (opening > start || text[opening + 1] === delimiter);
  if (closes && !doubtful) return next;
  // Over a line end, the quote that seems to close is the opening one of a later cell.
  return overLines ? open : { kind: 'stray', offset: opening > start ? opening : at };
}

function afterBlanks(text: string, { delimiter }: RowRules, from: number): number {
  let at = from;
  while (text[at] === ' ' || (text[at] === '\t' && delimiter !== '\t')) at += 1;
  return at;
}
