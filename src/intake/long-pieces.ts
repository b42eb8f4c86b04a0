/**
 * A long file, vehicle after vehicle → pieces of whole vehicles, in memory that does not grow.
 *
 * How the table is laid out is decided on a sample, the first megabyte. Then the file is cut where
 * one vehicle ends and the next begins; each piece stands under the head of the table and reads like
 * a file of its own, whose rows keep their lines.
 */
import { found, type Outcome, refused } from '../base/diagnostics.ts';
import type { Decoded } from './bytes/decode.ts';
import { sampleBytes } from './bytes/limits.ts';
import { joined, openText, type TextReader } from './bytes/text-pieces.ts';
import type { IntakeOptions } from './intake-options.ts';
import { createVehiclePieces, type VehiclePieces, vehicleTable } from './vehicle-pieces.ts';

/** The vehicles that are complete by now, if any; or that the file is not laid out by vehicles. */
export type LongPiece = {
  readonly byVehicle: boolean;
  readonly pieces: readonly Decoded[];
  /** Column of the vehicle's name, as soon as it is known. */
  readonly column?: number;
};

export type LongPieces = {
  /** What the next bytes complete; with `last`, all that is left. */
  readonly push: (bytes: Uint8Array, last: boolean) => Outcome<LongPiece>;
};

type Flow = {
  readonly reader: TextReader;
  readonly pieces: VehiclePieces;
  readonly column: number;
};

export function createLongPieces(
  name: string,
  options: IntakeOptions,
  sample = sampleBytes,
): LongPieces {
  let gathered: Uint8Array = new Uint8Array();
  let flow: Flow | undefined;

  const push = (bytes: Uint8Array, last: boolean): Outcome<LongPiece> => {
    if (flow !== undefined) {
      const text = flow.reader.read(bytes, last);
      return text.value === undefined
        ? refused(...text.diagnostics)
        : piecesOf(flow, text.value, last);
    }
    gathered = joined(gathered, bytes);
    if (!last && gathered.length < sample) return found({ byVehicle: true, pieces: [] });
    return begin(gathered, last);
  };

  const begin = (start: Uint8Array, last: boolean): Outcome<LongPiece> => {
    const reader = openText(name, start, { ...options, whole: last });
    if (reader.value === undefined) return refused(...reader.diagnostics);
    const text = reader.value.read(start, last);
    if (text.value === undefined) return refused(...text.diagnostics);
    const table = vehicleTable(name, text.value, options);
    if (table === undefined) return found({ byVehicle: false, pieces: [] });
    gathered = new Uint8Array();
    const { column } = table;
    flow = {
      ...{ reader: reader.value, column },
      pieces: createVehiclePieces(name, table, options.limits),
    };
    return piecesOf(flow, table.body, last);
  };
  return { push };
}

/** Characters of a piece, as long as no vehicle has more: few vehicles are in memory at a time. */
const pieceLength = 128 * 1024;

function piecesOf(
  { reader, pieces, column }: Flow,
  text: string,
  last: boolean,
): Outcome<LongPiece> {
  const own: Decoded[] = [];
  let at = 0;
  do {
    const end = at + pieceLength;
    const taken = pieces.take(text.slice(at, end), last && end >= text.length);
    if (taken.diagnostics.length > 0) return refused(...taken.diagnostics);
    const { encoding } = reader;
    if (taken.value !== undefined)
      own.push({ source: taken.value, encoding, evidence: reader.evidence() });
    at = end;
  } while (at < text.length);
  return found({ byVehicle: true, pieces: own, column });
}
