/**
 * The readings of a long file, vehicle after vehicle, piece by piece.
 *
 * The first piece decides for all that follow: points and repeats are counted as in the whole, and a
 * row that contradicts a decision is told, not guessed at. A vehicle whose rows stand in two places
 * of the file is refused, for the second place cannot count on from the first. Of a file that is not
 * laid out by vehicles nothing comes and nothing is said: it is to be read whole.
 */
import {
  type Diagnostic,
  error,
  found,
  hasErrors,
  type Outcome,
  refused,
} from '../base/diagnostics.ts';
import type { Reading } from '../film/reading.ts';
import type { GaugePiece } from './bytes/decode.ts';
import { sampleBytes } from './bytes/limits.ts';
import type { IntakeOptions } from './intake-options.ts';
import { createLongPieces } from './long-pieces.ts';
import { type GaugeReadings, type IntakeDecisions, readGaugeFile } from './read-gauge-file.ts';
import { ownText } from './rows/own-text.ts';
import { noTotals, totalsWith, valuesIn } from './statistics/earlier-totals.ts';

/** Whole vehicles of the file as they were read, and the piece of it that they stand in. */
export type LongPart = GaugeReadings & {
  readonly piece: GaugePiece;
  readonly diagnostics: readonly Diagnostic[];
};

export type LongFile = {
  /** The vehicles that are complete by now; with `last`, all that are left. */
  readonly push: (bytes: Uint8Array, last: boolean) => Outcome<readonly LongPart[]>;
  /** What the first piece decided. */
  readonly decisions: () => IntakeDecisions | undefined;
};

export function createLongFile(
  name: string,
  options: IntakeOptions,
  sample = sampleBytes,
): LongFile {
  const pieces = createLongPieces(name, options, sample);
  const vehicles = new Set<string>();
  let decided: IntakeDecisions | undefined;
  let earlier = noTotals;

  /** Each piece has the names of the columns above it: what is said of them is said once. */
  const ofHeader = new Set<string>();
  const isNews = ({ severity, code, message, at }: Diagnostic, headerLine: number): boolean => {
    if (severity === 'error' || (at?.line ?? headerLine + 1) > headerLine) return true;
    const key = [code, at?.column, message].join('\0');
    const isKnown = ofHeader.has(key);
    ofHeader.add(key);
    return !isKnown;
  };

  const push = (bytes: Uint8Array, last: boolean): Outcome<readonly LongPart[]> => {
    const next = pieces.push(bytes, last);
    if (next.value === undefined || !next.value.byVehicle) return refused(...next.diagnostics);
    const complete: LongPart[] = [];
    const noticed: Diagnostic[] = [];
    for (const text of next.value.pieces) {
      const piece = { ...text, decided, earlier };
      const read = readGaugeFile({ name, bytes: noBytes, piece }, options);
      const headerLine = read.value?.decisions.headerLine ?? 0;
      const diagnostics = read.diagnostics.filter((one) => isNews(one, headerLine));
      noticed.push(...diagnostics);
      if (read.value === undefined) return refused(...noticed);
      const { readings, excluded, decisions } = read.value;
      const doubts = [...changed(decisions), ...returning(readings)];
      if (hasErrors(doubts)) return refused(...noticed, ...doubts);
      decided ??= decisions;
      earlier = totalsWith(earlier, valuesIn(readings, decisions.unit), excluded.length);
      complete.push({ ...read.value, piece, diagnostics });
    }
    return found(complete, noticed);
  };

  const changed = ({ unit }: IntakeDecisions) => {
    if (decided === undefined || decided.unit === unit) return [];
    const message = `the readings are in ${unit} from here on and were in ${decided.unit} before`;
    return [error('unit-conflict', message, { at: { file: name } })];
  };

  const returning = (readings: readonly Reading[]) => {
    const own = new Map<string, Reading['origin']>();
    let above: string | null | undefined;
    for (const { vehicle, origin } of readings) {
      if (vehicle !== above && !own.has(vehicle ?? '')) own.set(vehicle ?? '', origin);
      above = vehicle;
    }
    const again = [...own].find(([vehicle]) => vehicles.has(vehicle));
    for (const vehicle of own.keys()) vehicles.add(ownText(vehicle));
    if (again === undefined) return [];
    const [vehicle, at] = again;
    const message = `vehicle "${vehicle}" stands here again, after other vehicles`;
    const hint = 'a long file is read vehicle by vehicle: sort its rows by vehicle';
    return [error('cell-invalid', message, { at: { ...at, length: 1 }, hint })];
  };

  return { push, decisions: () => decided };
}

/** A piece is text already. */
const noBytes = new Uint8Array();
