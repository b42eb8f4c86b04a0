/**
 * The rows of a long file, a piece of its text at a time.
 *
 * A piece is a small source of its own, with the line of the file it starts at; the row at its end
 * that is not complete waits for the next. However the text is cut, the rows are the same.
 */
import { found, type Outcome, refused } from '../base/diagnostics.ts';
import type { Limits } from './limits.ts';
import { createSource, type QuoteMark, type Source } from './source.ts';
import { type Delimiter, type Row, splitRows } from './tokens.ts';

export type Piece = {
  readonly source: Source;
  readonly rows: readonly Row[];
  /** Where the rows end in the text: what follows waits for the next piece. */
  readonly end: number;
};
export type RowStream = {
  /** The rows complete by now; with `last`, all that are left. */
  readonly take: (text: string, last: boolean) => Outcome<Piece>;
};

export type RowStreamRules = {
  readonly delimiter: Delimiter;
  readonly quote: QuoteMark;
  readonly limits?: Limits;
};

export function createRowStream(
  name: string,
  { delimiter, quote, limits }: RowStreamRules,
  fromLine: number,
): RowStream {
  let held = '';
  let firstLine = fromLine;
  const take = (text: string, last: boolean): Outcome<Piece> => {
    const source = createSource(name, held + text, {
      firstLine,
      quote,
      ...(limits === undefined ? {} : { limits }),
    });
    const split = splitRows(source, delimiter, { offset: 0, line: firstLine }, { whole: last });
    if (split.faults.length > 0) return refused(...split.faults);
    held = source.text.slice(split.end.offset);
    firstLine = split.end.line;
    return found({ source, rows: split.rows, end: split.end.offset });
  };
  return { take };
}
