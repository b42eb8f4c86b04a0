/** Where to measure next on a panel: away from what was read, or close about the edge of a repair. */
import { pointsInRow, pointsOverFace, rowsOfPoints } from '../template/point-layout.ts';
import type { MeasuringPoint } from '../template/template.ts';

type Place = Pick<MeasuringPoint, 'u' | 'v'>;

const MOST_ON_A_FACE = 9;

/**
 * `count` places as far as can be from the points read and from one another, of those where a panel of
 * nine points has them; those read are taken to be where the template has its own.
 */
export function furtherPoints(
  own: readonly MeasuringPoint[],
  read: number,
  count: number,
): readonly Place[] {
  const inRow = rowsOfPoints(own).length === 1;
  const layout = (n: number) => (inRow ? pointsInRow(n) : pointsOverFace(n));
  const taken: Place[] = [...(read === own.length ? own : layout(read))];
  const free = [...layout(MOST_ON_A_FACE), ...layout(read + count), ...between(taken)];
  const chosen: Place[] = [];
  while (chosen.length < count) {
    const next = farthestFrom(free, [...taken, ...chosen]);
    if (next === undefined) return chosen;
    chosen.push(next);
  }
  return chosen;
}

/** Half-way between each point on one side and the nearest on the other, so that the edge is found sooner. */
export function pointsAboutEdge(
  own: readonly MeasuringPoint[],
  zones: readonly (readonly string[])[],
): readonly Place[] {
  const [one = [], other = []] = zones.map((names) =>
    own.filter(({ point }) => names.includes(point)),
  );
  const middles = one.flatMap((point) => {
    const near = nearest(point, other);
    return near === undefined ? [] : [middle(point, near)];
  });
  return middles.filter((place, i) => middles.findIndex((each) => isSame(each, place)) === i);
}

const between = (points: readonly Place[]): readonly Place[] =>
  points.flatMap((one) => points.map((other) => middle(one, other)));

const round = (share: number): number => Math.round(100 * share) / 100;
const middle = (a: Place, b: Place): Place => ({
  u: round((a.u + b.u) / 2),
  v: round((a.v + b.v) / 2),
});

const distance = (a: Place, b: Place): number => Math.hypot(a.u - b.u, a.v - b.v);
const isSame = (a: Place, b: Place): boolean => distance(a, b) < 1e-9;

const nearest = (from: Place, among: readonly Place[]): Place | undefined =>
  among.reduce<Place | undefined>(
    (near, one) => (near === undefined || distance(from, one) < distance(from, near) ? one : near),
    undefined,
  );

const gapTo = (place: Place, taken: readonly Place[]): number =>
  Math.min(...taken.map((one) => distance(place, one)));

/** None that is there already. */
function farthestFrom(free: readonly Place[], taken: readonly Place[]): Place | undefined {
  const open = free.filter((place) => !taken.some((one) => isSame(one, place)));
  return open.reduce<Place | undefined>(
    (far, one) => (far === undefined || gapTo(one, taken) > gapTo(far, taken) ? one : far),
    undefined,
  );
}
