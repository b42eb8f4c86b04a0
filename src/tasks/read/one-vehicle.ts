/**
 * Files that name no vehicle, or the same, are taken as rounds of one: where they read the same points, that is
 * said, and where their values are too far apart for that, refused.
 *
 * On more than half of the shared points, values farther apart than two readings of one place may be
 * (`points-read-apart.ts`) are those of another car or visit, or in another unit; on fewer each may be a slip, and
 * the first is told.
 */
import { counted } from '../../base/counted.ts';
import { type Diagnostic, error, type Place, warning } from '../../base/diagnostics.ts';
import { saidFile } from '../../base/file-name.ts';
import { groupBy, type OneOrMore } from '../../base/group-by.ts';
import { median } from '../../base/stats/summary.ts';
import type { Reading } from '../../film/reading.ts';
import { furthestApart, type Scatter } from '../../intake/doubts/points-read-apart.ts';
import type { Assumption } from '../settings/assumption.ts';

const SHARE_APART = 0.5;

export type OneVehicle = {
  readonly diagnostics: readonly Diagnostic[];
  readonly assumptions: readonly Assumption[];
};

const NOTHING: OneVehicle = { diagnostics: [], assumptions: [] };

type Told = {
  readonly nameOf: (panel: string) => string;
  readonly placeOf: (reading: Reading) => Place;
};

/** `readings` are those of a vehicle, or all that name none, their panels matched. */
export function takenAsOneVehicle(
  vehicle: string | null,
  readings: readonly Reading[],
  scatter: Scatter,
  { nameOf, placeOf }: Told,
): OneVehicle {
  const file = readings[0]?.origin.file;
  if (readings.every(({ origin }) => origin.file === file)) return NOTHING;
  const files = [...groupBy(readings, ({ origin }) => origin.file)].map(([file, own]) => ({
    file,
    points: groupBy(own, pointKey),
  }));
  const pairs = files.flatMap((second, i) =>
    files.slice(0, i).flatMap((first) => sharedPoints(first, second, scatter)),
  );
  return {
    diagnostics: pairs.flatMap((pair) => told(pair, vehicle, { nameOf, placeOf })),
    assumptions: [
      ...pairs.map(({ first, second, count }): Assumption => {
        const why = vehicle === null ? 'one vehicle: neither names it, and' : 'one visit:';
        return {
          code: 'files-one-vehicle',
          text: `${saidFile(first)} and ${saidFile(second)} are of ${why} both read ${points(count)}`,
          origin: 'readings',
        };
      }),
      ...farApart(pairs),
    ],
  };
}

/** The two files that are apart at the greatest share of their points, and how many others are besides. */
function farApart(pairs: readonly Shared[]): readonly Assumption[] {
  const [first, ...others] = pairs.filter(({ apart }) => apart.length > 0);
  if (first === undefined) return [];
  const share = ({ apart, count }: Shared): number => apart.length / count;
  const most = others.reduce((far, one) => (share(one) > share(far) ? one : far), first);
  const also =
    others.length === 0 ? '' : `; so with ${counted(others.length, 'more pair')} of files`;
  const text = `${saidFile(most.first)} and ${saidFile(most.second)} are too far apart for one place at ${most.apart.length} of the ${points(most.count)} that both read${also}`;
  return [{ code: 'files-doubted', text, origin: 'readings' }];
}

const pointKey = ({ panel, point, layer, place }: Reading): string =>
  JSON.stringify([panel, point, layer, place]);

type FileOfPoints = {
  readonly file: string;
  readonly points: ReadonlyMap<string, OneOrMore<Reading>>;
};
type Shared = {
  readonly first: string;
  readonly second: string;
  readonly count: number;
  readonly example: Reading;
  /** Points too far apart for one place. */
  readonly apart: readonly Apart[];
};
type Apart = { readonly before: Reading; readonly own: Reading };

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
  const apart = both.flatMap(({ before: [before, ...beforeAgain], own: [own, ...ownAgain] }) => {
    const [one, other] = [middle([before, ...beforeAgain]), middle([own, ...ownAgain])];
    const isApart = Math.abs(one - other) > furthestApart((one + other) / 2, scatter);
    return isApart ? [{ before, own }] : [];
  });
  return [{ first: first.file, second: second.file, count: both.length, example, apart }];
}

const middle = (readings: readonly Reading[]): number =>
  median(readings.map(({ thickness }) => thickness));

const points = (count: number): string => (count === 1 ? 'one point' : `${count} points`);
const more = (count: number, what: string): string =>
  count === 0 ? '' : ` and ${points(count)} more${what}`;

const asVehicles =
  'if they are two vehicles, survey them one at a time, or add a column "vehicle" to each';
const asVisits = 'if they are two visits, give one at a time, or leastcut compare the two';

function told(
  { first, second, count, example, apart }: Shared,
  vehicle: string | null,
  { nameOf, placeOf }: Told,
): readonly Diagnostic[] {
  const at = placeOf(example);
  const files = `${saidFile(first)} and ${saidFile(second)}`;
  const [both, one, hint] =
    vehicle === null
      ? [`${files} name no vehicle`, 'one vehicle', asVehicles]
      : [`${files} are of vehicle "${vehicle}"`, 'one visit', asVisits];
  if (apart.length > SHARE_APART * count) {
    const message = `${both}, and ${apart.length} of the ${points(count)} that both read differ by more than two gauges do: they are hardly ${one}`;
    return [error('files-two-vehicles', message, { at, hint })];
  }
  const message = `${both} and both read point ${example.point} of the ${nameOf(example.panel)}${more(count - 1, '')}: taken as ${one}, their readings as repeats`;
  return [
    warning('files-one-vehicle', message, { at, hint }),
    ...apart.slice(0, 1).map(({ before, own }) =>
      warning(
        'reading-doubted',
        `point ${own.point} of the ${nameOf(own.panel)} was read in ${saidFile(first)}, line ${before.origin.line}, as well, and the two are too far apart for one place${more(apart.length - 1, ' are so')}`,
        {
          at: placeOf(own),
          hint: 'if it is another point, number it so; if the same, take one out',
        },
      ),
    ),
  ];
}
