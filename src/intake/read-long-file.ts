/**
 * A long file, vehicle after vehicle → its readings piece by piece, in memory that does not grow.
 *
 * How the table is laid out is decided on a sample, the first megabyte. Then the file is read in
 * pieces that end where a vehicle ends, each under the head of the table and under the decisions
 * taken: so points and repeats are counted as in the whole, and a row that contradicts a decision
 * is told, not guessed at. A vehicle whose rows stand in two places of the file is refused, for the
 * second place cannot count on from the first. A file of another layout is read whole.
 */
import { error, found, hasErrors, type Outcome, refused } from '../base/diagnostics.ts';
import type { Reading } from '../film/reading.ts';
import type { IntakeOptions } from './intake-options.ts';
import { sampleBytes } from './limits.ts';
import { ownText } from './own-text.ts';
import {
  type GaugeReadings,
  type IntakeDecisions,
  readGaugeFile,
  readGaugeText,
} from './read-gauge-file.ts';
import { joined, openText, type TextReader } from './text-pieces.ts';
import { createVehiclePieces, type VehiclePieces, vehicleTable } from './vehicle-pieces.ts';

export type LongFile = {
  /** The vehicles that are complete by now; with `last`, all that are left. */
  readonly push: (bytes: Uint8Array, last: boolean) => Outcome<readonly GaugeReadings[]>;
};

type Flow = { readonly reader: TextReader; readonly pieces: VehiclePieces };

export function createLongFile(
  name: string,
  options: IntakeOptions,
  sample = sampleBytes,
): LongFile {
  let gathered: Uint8Array = new Uint8Array();
  let flow: Flow | undefined;
  let whole = false;
  let fixed = options;
  let decided: IntakeDecisions | undefined;
  const vehicles = new Set<string>();

  const push = (bytes: Uint8Array, last: boolean): Outcome<readonly GaugeReadings[]> => {
    if (flow !== undefined) return readOn(flow, bytes, last);
    gathered = joined(gathered, bytes);
    if (last) return single(readGaugeFile({ name, bytes: gathered }, options));
    if (whole || gathered.length < sample) return found([]);
    const reader = openText(name, gathered, { ...options, whole: false });
    if (reader.value === undefined) return refused(...reader.diagnostics);
    const text = reader.value.read(gathered, false);
    if (text.value === undefined) return refused(...text.diagnostics);
    const table = vehicleTable(name, text.value, options);
    if (table === undefined) {
      whole = true;
      return found([]);
    }
    gathered = new Uint8Array();
    fixed = { ...options, delimiter: table.delimiter };
    flow = { reader: reader.value, pieces: createVehiclePieces(name, table, options.limits) };
    return readPieces(flow, table.body, false);
  };

  const readOn = (on: Flow, bytes: Uint8Array, last: boolean) => {
    const text = on.reader.read(bytes, last);
    return text.value === undefined
      ? refused<readonly GaugeReadings[]>(...text.diagnostics)
      : readPieces(on, text.value, last);
  };

  const readPieces = (
    { reader, pieces }: Flow,
    text: string,
    last: boolean,
  ): Outcome<readonly GaugeReadings[]> => {
    const piece = pieces.take(text, last);
    if (piece.diagnostics.length > 0) return refused(...piece.diagnostics);
    if (piece.value === undefined) return found([]);
    const { encoding } = reader;
    const decoded = { source: piece.value, encoding, evidence: reader.evidence() };
    const read = readGaugeText(decoded, fixed);
    if (read.value === undefined) return refused(...read.diagnostics);
    const doubts = [...changed(read.value.decisions), ...returning(read.value.readings)];
    if (hasErrors(doubts)) return refused(...read.diagnostics, ...doubts);
    return found([read.value], read.diagnostics);
  };

  /** The first piece decides for all that follow. */
  const changed = (decisions: IntakeDecisions) => {
    if (decided === undefined) {
      decided = decisions;
      fixed = { ...fixed, decimal: decisions.decimal === ',' ? ',' : '.' };
      return [];
    }
    if (decided.unit === decisions.unit) return [];
    const message = `the readings are in ${decisions.unit} from here on and were in ${decided.unit} before`;
    return [error('unit-conflict', message, { at: { file: name } })];
  };

  const returning = (readings: readonly Reading[]) => {
    const own = new Map<string, Reading['origin']>();
    for (const { vehicle, origin } of readings) {
      if (!own.has(vehicle ?? '')) own.set(vehicle ?? '', origin);
    }
    const again = [...own].find(([vehicle]) => vehicles.has(vehicle));
    for (const vehicle of own.keys()) vehicles.add(ownText(vehicle));
    if (again === undefined) return [];
    const [vehicle, at] = again;
    const message = `vehicle "${vehicle}" stands here again, after other vehicles`;
    const hint = 'a long file is read vehicle by vehicle: sort its rows by vehicle';
    return [error('cell-invalid', message, { at: { ...at, length: 1 }, hint })];
  };

  return { push };
}

const single = ({ value, diagnostics }: Outcome<GaugeReadings>) =>
  value === undefined
    ? refused<readonly GaugeReadings[]>(...diagnostics)
    : found<readonly GaugeReadings[]>([value], diagnostics);
