/**
 * A file of many vehicles as a list of jobs: each vehicle is one, by its name.
 *
 * The file is read twice and never held. The first pass takes the checksum, proves that each vehicle
 * stands in one place, and decides on the first vehicle that reads how all are read; the second hands
 * out the vehicles. What is wrong with the rows of one vehicle is wrong with its job alone.
 */
import { createHash } from 'node:crypto';
import type { Diagnostic } from '../../base/diagnostics.ts';
import type { Decoded } from '../../intake/bytes/decode.ts';
import type { IntakeOptions } from '../../intake/intake-options.ts';
import { createLongPieces } from '../../intake/long-pieces.ts';
import { type IntakeDecisions, readGaugeFile } from '../../intake/read-gauge-file.ts';
import { singleVehicles, type VehicleSource } from '../../intake/single-vehicles.ts';
import { type Chunks, chunksOf } from '../chunks.ts';
import type { World } from '../command.ts';
import { changedFile } from '../long-input.ts';
import { toPart, type VehiclePart } from './vehicle-part.ts';

export type VehicleJob = { readonly vehicle: string; readonly part: VehiclePart };

export type VehicleJobs = {
  readonly count: number;
  /** In the order of the file. */
  readonly jobs: AsyncIterable<VehicleJob>;
  /** When all were handed out: what is wrong if the file is no longer the one it was. */
  readonly afterwards: () => readonly Diagnostic[];
};

const nothing = new Uint8Array();

/** Undefined where the file is not laid out by vehicles, one after the other: it is read whole. */
export async function openVehicleJobs(
  name: string,
  options: IntakeOptions,
  load: World['load'],
): Promise<VehicleJobs | undefined> {
  const chunks = await chunksOf(name, load, 1);
  if (chunks === undefined) return undefined;
  const hash = createHash('sha256');
  const seen = new Set<string>();
  let decided: IntakeDecisions | undefined;
  for await (const vehicles of vehiclesOf(name, options, chunks, hash)) {
    if (vehicles === undefined) return undefined;
    for (const { vehicle, decoded } of vehicles) {
      if (vehicle === '' || seen.has(vehicle)) return undefined;
      seen.add(vehicle);
      decided ??= readGaugeFile(
        { name, bytes: nothing, piece: { ...decoded, decided: undefined } },
        options,
      ).value?.decisions;
    }
  }
  if (seen.size === 0) return undefined;
  const sha256 = hash.digest('hex');
  const again = createHash('sha256');
  let isThrough = false;
  const jobs = jobsOf(vehiclesOf(name, options, chunks, again), { sha256, decided }, () => {
    isThrough = true;
  });
  return {
    count: seen.size,
    jobs,
    // A batch that stops on its way has not read all of the file again.
    afterwards: () => (!isThrough || again.digest('hex') === sha256 ? [] : [changedFile(name)]),
  };
}

type Vehicle = { readonly vehicle: string; readonly decoded: Decoded };

/** The vehicles of a file, some at a time; undefined where it turns out not to be laid out so. */
async function* vehiclesOf(
  name: string,
  options: IntakeOptions,
  chunks: Chunks,
  hash: ReturnType<typeof createHash>,
): AsyncIterable<readonly Vehicle[] | undefined> {
  const pieces = createLongPieces(name, options);
  const next = (bytes: Uint8Array, last: boolean): readonly Vehicle[] | undefined => {
    const { value } = pieces.push(bytes, last);
    if (value === undefined || !value.byVehicle) return undefined;
    const { column } = value;
    if (column === undefined) return [];
    return value.pieces.flatMap(({ source, ...told }) =>
      singleVehicles(source, column).map((one: VehicleSource) => ({
        vehicle: one.vehicle,
        decoded: { source: one.source, ...told },
      })),
    );
  };
  for await (const chunk of chunks()) {
    hash.update(chunk);
    yield next(chunk, false);
  }
  yield next(nothing, true);
}

async function* jobsOf(
  read: AsyncIterable<readonly Vehicle[] | undefined>,
  about: Pick<VehiclePart, 'sha256' | 'decided'>,
  atEnd: () => void,
): AsyncIterable<VehicleJob> {
  for await (const vehicles of read) {
    for (const { vehicle, decoded } of vehicles ?? []) {
      const { source, encoding, evidence } = decoded;
      yield { vehicle, part: toPart(source, { encoding, evidence, ...about }) };
    }
  }
  atEnd();
}
