/**
 * A long table cut where one vehicle ends and the next begins, each piece under the table's head.
 *
 * A piece is a text that reads like a file of its own and knows which lines of the file it leaves
 * out, so that every row keeps its line.
 */
import { found, type Outcome, refused } from '../base/diagnostics.ts';
import { type Limits, usualLimits } from './bytes/limits.ts';
import { numberShape } from './cells/numbers.ts';
import type { IntakeOptions } from './intake-options.ts';
import { findTable } from './parts/table-start.ts';
import { createRowStream } from './rows/row-stream.ts';
import { chooseQuote } from './rows/single-quotes.ts';
import { createSource, type QuoteMark, type Source } from './rows/source.ts';
import type { Delimiter, Row } from './rows/tokens.ts';

export type VehicleTable = {
  readonly delimiter: Delimiter;
  readonly quote: QuoteMark;
  /** Column of the vehicle's name. */
  readonly column: number;
  /** The text above the first reading: preamble, names of columns, row of units. */
  readonly head: string;
  /** What of the sample stands below. */
  readonly body: string;
};

/** Where a sample may be cut, for its last row may go on beyond it. */
const mostCuts = 50;

/** The table that a sample starts, if it is one of vehicles with a reading in each row. */
export function vehicleTable(
  name: string,
  sample: string,
  options: IntakeOptions,
): VehicleTable | undefined {
  const { quote } = chooseQuote(sample);
  let end = sample.length;
  for (let k = 0; k < mostCuts && end > 0; k += 1) {
    const source = createSource(name, sample.slice(0, end), {
      quote,
      limits: options.limits ?? usualLimits,
    });
    const { value: split, diagnostics } = findTable(source, options);
    if (split === undefined) {
      if (diagnostics.every(({ code }) => code !== 'quote-unclosed')) return undefined;
      end = sample.lastIndexOf('\n', end - 2) + 1;
      continue;
    }
    const { layout, line } = split.start;
    const column = layout.columns.get('vehicle');
    const reading = layout.readings[0]?.column ?? -1;
    const isReading = ({ line: own, cells }: Row): boolean =>
      own > line && numberShape((cells[reading] ?? '').trim()) !== undefined;
    const first = split.rows.find(isReading);
    if (layout.kind !== 'long' || column === undefined || first === undefined) return undefined;
    // A table whose rows were rewritten to read them, and not its head alone, is read whole.
    if (split.source.text.slice(first.start) !== source.text.slice(first.start)) return undefined;
    const text = split.source === source ? sample : split.source.text + sample.slice(end);
    return {
      ...{ delimiter: split.delimiter, quote, column },
      ...{ head: text.slice(0, first.start), body: text.slice(first.start) },
    };
  }
  return undefined;
}

export type VehiclePieces = {
  /** The vehicles complete by now, if any; with `last`, all that are left. */
  readonly take: (text: string, last: boolean) => Outcome<Source>;
};

export function createVehiclePieces(
  name: string,
  { delimiter, quote, column, head }: VehicleTable,
  limits: Limits = usualLimits,
): VehiclePieces {
  const stream = createRowStream(name, { delimiter, quote, limits, head });
  let waiting = '';
  /** Characters to wait for: a vehicle longer than a piece is not split anew with every piece. */
  let wanted = 0;

  const take = (text: string, last: boolean): Outcome<Source> => {
    waiting += text;
    if (!last && waiting.length < wanted) return { diagnostics: [] };
    const piece = stream.take(waiting, last);
    if (piece.value === undefined) return refused(...piece.diagnostics);
    const { source, rows } = piece.value;
    const first = rows.findIndex(({ start }) => start >= head.length);
    const start = last ? rows.length : lastVehicle(rows, first, column);
    const next = rows[start];
    if (next !== undefined) stream.putBack(piece.value, next);
    waiting = '';
    const nothing = first === -1 || start === first;
    wanted = nothing ? source.text.length : 0;
    return nothing ? { diagnostics: [] } : found(upTo(source, rows.slice(0, start), next));
  };
  const upTo = (source: Source, rows: readonly Row[], next: Row | undefined): Source =>
    createSource(name, source.text.slice(0, next?.start), {
      ...{ quote, limits },
      omitted: source.omitted,
      split: { delimiter, rows },
    });
  return { take };
}

/** Where the last vehicle of the rows starts; a row without a name is of the vehicle above it. */
function lastVehicle(rows: readonly Row[], first: number, column: number): number {
  let start = rows.length;
  let name = '';
  for (let k = rows.length - 1; k >= first; k -= 1) {
    const own = (rows[k]?.cells[column] ?? '').trim();
    if (own === '') continue;
    if (name !== '' && own !== name) return start;
    name = own;
    start = k;
  }
  return first;
}
