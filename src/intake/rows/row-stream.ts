/**
 * The rows of a long file, a piece of its text at a time.
 *
 * A piece is a small source of its own that starts with the head of its table and knows which lines
 * of the file it leaves out below it. The row at its end that is not complete waits for the next
 * piece, and so do complete ones that are put back. However the text is cut, the rows are the same.
 */
import { found, type Outcome, refused } from '../../base/diagnostics.ts';
import type { Limits } from '../bytes/limits.ts';
import { countLineEnds } from './lines.ts';
import { createSource, type QuoteMark, type Source } from './source.ts';
import { type Delimiter, type Row, splitRows } from './tokens.ts';

export type Piece = { readonly source: Source; readonly rows: readonly Row[] };
export type RowStream = {
  /** The rows of the head, and below them those complete by now; with `last`, all that are left. */
  readonly take: (text: string, last: boolean) => Outcome<Piece>;
  /** The rows of a piece from one on are to be given with the next. */
  readonly putBack: (piece: Piece, from: Row) => void;
};

export type RowStreamRules = {
  readonly delimiter: Delimiter;
  readonly quote: QuoteMark;
  readonly limits?: Limits;
  /** Text of whole lines that starts every piece. */
  readonly head?: string;
};

export function createRowStream(
  name: string,
  { delimiter, quote, limits, head = '' }: RowStreamRules,
): RowStream {
  const headLines = countLineEnds(head, 0, head.length);
  let held = '';
  /** The line of the file that the held text starts at. */
  let line = headLines + 1;
  const take = (text: string, last: boolean): Outcome<Piece> => {
    const source = createSource(name, head + held + text, {
      quote,
      ...(limits === undefined ? {} : { limits }),
      omitted: { at: head.length, lines: line - headLines - 1 },
    });
    const split = splitRows(source, delimiter, { offset: 0, line: 1 }, { whole: last });
    if (split.faults.length > 0) return refused(...split.faults);
    hold(source, split.end.offset, line + split.end.line - headLines - 1);
    return found({ source, rows: split.rows });
  };
  const hold = (source: Source, offset: number, fromLine: number): void => {
    held = source.text.slice(offset);
    line = fromLine;
  };
  return { take, putBack: ({ source }, from) => hold(source, from.start, from.line) };
}
