/**
 * Names points and counts repeats as readings arrive.
 *
 * A row without a point is a point of its own, named by its place among those of the panel (and
 * layer), a place without a reading included, so that the names of a second round agree with the
 * first. A number the point column itself uses is stepped over: it would join two points in one.
 */
type NamedPoint = {
  readonly point: string;
  readonly repeat: number;
  /** The explicit repeat number was given to this point before. */
  readonly taken: boolean;
};

export type PointNames = {
  /** Keeps a name of the point column from being given to a row without one. */
  readonly reserve: (name: string) => void;
  readonly next: (
    vehicle: string | null,
    panel: string,
    point: string,
    layer: string,
    isReading: boolean,
    repeat: number | undefined,
  ) => NamedPoint;
};

type Group = {
  count: number;
  /** Points `1` to this number were read once each, in this order, and no others: nearly all panels. */
  inOrder: number;
  /** How often each point was read, or which repeats; of no meaning before a point is out of order. */
  points: Map<string, Set<number> | number> | undefined;
};

/** Points that are counted on, read once; of a panel with more each is written down. */
const counted = Array.from(
  { length: 200 },
  (_, k): NamedPoint => ({ point: String(k + 1), repeat: 1, taken: false }),
);

/** The points of a group one by one, from when they are no longer in order. */
function pointsOf(group: Group): Map<string, Set<number> | number> {
  group.points ??= new Map(counted.slice(0, group.inOrder).map(({ point }) => [point, 1]));
  return group.points;
}

/** With `severalOperators` the same repeat of a point may come once from each. */
export function createPointNames(severalOperators: boolean): PointNames {
  const reserved = new Set<string>();
  const groups = new Map<string, Group>();
  let last: { vehicle: string | null; panel: string; layer: string; group: Group } | undefined;
  /** Rows of one panel mostly stand together: the key is built where they change. */
  const groupOf = (vehicle: string | null, panel: string, layer: string): Group => {
    if (last?.vehicle === vehicle && last.panel === panel && last.layer === layer) {
      return last.group;
    }
    const key = `${vehicle ?? ''}\0${panel}\0${layer}`;
    const group = groups.get(key) ?? { count: 0, inOrder: 0, points: undefined };
    groups.set(key, group);
    last = { vehicle, panel, layer, group };
    return group;
  };
  const unreserved = (group: Group): string => {
    do group.count += 1;
    while (reserved.has(String(group.count)));
    return String(group.count);
  };
  return {
    reserve: (name) => {
      reserved.add(name);
    },
    next: (vehicle, panel, written, layer, isReading, explicit) => {
      const group = groupOf(vehicle, panel, layer);
      const point = written === '' ? unreserved(group) : written;
      if (!isReading) return { point, repeat: explicit ?? 0, taken: false };
      const isFirst = explicit === undefined || explicit === 1;
      const inOrder = counted[group.inOrder];
      if (isFirst && group.points === undefined && inOrder?.point === point) {
        group.inOrder += 1;
        return inOrder;
      }
      const points = pointsOf(group);
      const before = points.get(point) ?? 0;
      const next = explicit === undefined || explicit === Number(before) + 1;
      if (next && typeof before === 'number') {
        points.set(point, before + 1);
        return { point, repeat: before + 1, taken: false };
      }
      const used = typeof before === 'number' ? firstNumbers(before) : before;
      points.set(point, used);
      const repeat = explicit ?? Math.max(0, ...used) + 1;
      const taken = !severalOperators && used.has(repeat);
      used.add(repeat);
      return { point, repeat, taken };
    },
  };
}

const firstNumbers = (count: number): Set<number> =>
  new Set(Array.from({ length: count }, (_, k) => k + 1));
