/**
 * Files that name no vehicle are taken as rounds of one: where they read the same points, that is
 * said, and where their values are too far apart for that, refused.
 *
 * On more than half of the shared points, values farther apart than two readings of one place may be
 * (`points-read-apart.ts`) are those of another car, or in another unit.
 */
import { type Diagnostic, error, type Place, warning } from '../../base/diagnostics.ts';
import { saidFile } from '../../base/file-name.ts';
import { groupBy } from '../../base/group-by.ts';
import { median } from '../../base/stats/summary.ts';
import type { Reading } from '../../film/reading.ts';
import { furthestApart, type Scatter } from '../../intake/doubts/points-read-apart.ts';
import type { Assumption } from '../settings/assumption.ts';

const SHARE_APART = 0.5;

export type OneVehicle = {
  readonly diagnostics: readonly Diagnostic[];
  readonly assumptions: readonly Assumption[];
};

type Told = {
  readonly nameOf: (panel: string) => string;
  readonly placeOf: (reading: Reading) => Place;
};

/** `readings` are those without a vehicle, their panels matched. */
export function takenAsOneVehicle(
  readings: readonly Reading[],
  scatter: Scatter,
  { nameOf, placeOf }: Told,
): OneVehicle {
  const files = [...groupBy(readings, ({ origin }) => origin.file)].map(([file, own]) => ({
    file,
    points: groupBy(own, pointKey),
  }));
  const pairs = files.flatMap((second, i) =>
    files.slice(0, i).flatMap((first) => sharedPoints(first, second, scatter)),
  );
  return {
    diagnostics: pairs.map((pair) => told(pair, { nameOf, placeOf })),
    assumptions: pairs.map(({ first, second, count }) => ({
      code: 'files-one-vehicle',
      text: `${saidFile(first)} and ${saidFile(second)} are of one vehicle: neither names it, and both read ${points(count)}`,
      origin: 'readings',
    })),
  };
}

const pointKey = ({ panel, point, layer, place }: Reading): string =>
  JSON.stringify([panel, point, layer, place]);

type FileOfPoints = {
  readonly file: string;
  readonly points: ReadonlyMap<string, readonly Reading[]>;
};
type Shared = {
  readonly first: string;
  readonly second: string;
  readonly count: number;
  readonly example: Reading;
  /** How many of the points are too far apart for one vehicle. */
  readonly apart: number;
};

function sharedPoints(
  first: FileOfPoints,
  second: FileOfPoints,
  scatter: Scatter,
): readonly Shared[] {
  const both = [...second.points].flatMap(([key, own]) => {
    const before = first.points.get(key);
    return before === undefined ? [] : [{ before, own }];
  });
  const [example] = both[0]?.own ?? [];
  if (example === undefined) return [];
  const apart = both.filter(({ before, own }) => {
    const [one, other] = [middle(before), middle(own)];
    return Math.abs(one - other) > furthestApart((one + other) / 2, scatter);
  }).length;
  return [{ first: first.file, second: second.file, count: both.length, example, apart }];
}

const middle = (readings: readonly Reading[]): number =>
  median(readings.map(({ thickness }) => thickness));

const points = (count: number): string => (count === 1 ? 'one point' : `${count} points`);

const remedy =
  'if they are two vehicles, survey them one at a time, or add a column "vehicle" to each';

function told(
  { first, second, count, example, apart }: Shared,
  { nameOf, placeOf }: Told,
): Diagnostic {
  const at = placeOf(example);
  const both = `${saidFile(first)} and ${saidFile(second)} name no vehicle`;
  if (apart > SHARE_APART * count) {
    const message = `${both}, and ${apart} of the ${points(count)} that both read differ by more than two gauges do: they are hardly one vehicle`;
    return error('files-two-vehicles', message, { at, hint: remedy });
  }
  const more = count === 1 ? '' : ` and ${points(count - 1)} more`;
  const message = `${both} and both read point ${example.point} of the ${nameOf(example.panel)}${more}: taken as one vehicle, their readings as repeats`;
  return warning('files-one-vehicle', message, { at, hint: remedy });
}
