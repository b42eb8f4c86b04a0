/** One panel of two surveys → what came off it, and by what that was compared. */
import type { Micrometres } from '../../base/units.ts';
import type { AskedSlip } from '../condition/keying-slips.ts';
import { moderatedSpread } from '../spread.ts';
import type { PanelSurvey, ZoneName } from '../survey.ts';
import type { Panel } from '../template/template.ts';
import {
  changeOfMeans,
  changeOfPairs,
  type FilmChange,
  type GaugesCompared,
  meanChange,
  type PanelMean,
} from './compare-change.ts';
import {
  differencesOf,
  type MarkedTimes,
  type PointApart,
  type PointPair,
  pairPoints,
  pointApart,
  type UnpairedPoints,
} from './compare-points.ts';
import { type DifferenceScatter, type ScatterRules, scatterOf } from './difference-scatter.ts';
import type { Swap } from './swapped-points.ts';
import { asReadBy, type Readers } from './who-read.ts';

/** Pairs of marked points; means, where none was found again; or nothing to compare by. */
export type ComparedBy = 'pairs' | 'means' | 'nothing';

export type PanelComparison = {
  readonly panel: Panel;
  readonly zone: ZoneName | null;
  readonly by: ComparedBy;
  readonly pairs: readonly PointPair[];
  readonly unpaired: UnpairedPoints;
  /** Points on the face, read at either time. */
  readonly counts: { readonly before: number; readonly after: number };
  /** Null where there is nothing to compare by. */
  readonly change: FilmChange | null;
  /** More film than before, beyond chance, here or over the car: no paint that grew, but a gauge, wax, other places. */
  readonly gained: boolean;
  /** How much of it is paint, by its amount; null where none is. */
  readonly paint: Micrometres | null;
  /** Values of either time that look keyed wrongly: until they are read again, nothing is compared. */
  readonly slips: readonly AskedSlip[];
  /** Its points seem to be those of another panel, or to run the other way: nothing is compared until that is settled. */
  readonly swap: SwappedPanels | null;
  /** Points whose change stands out from its others: to be read again; null without any. */
  readonly apart: PanelApart | null;
  /** The two zones of a panel that carries two films, each by itself. */
  readonly zones: readonly PanelComparison[];
};

/** A panel with points that stand out is held to have lost the more of what it lost with them and without them. */
export type PanelApart = {
  readonly points: readonly PointApart[];
  /** Whether they count in what is held. */
  readonly counted: boolean;
  /** The panel compared the other way. */
  readonly otherwise: PanelComparison;
};

/** Two panels, or one whose points run the other way. */
export type SwappedPanels = { readonly kind: Swap['kind']; readonly panels: readonly Panel[] };

export type ComparisonRules = ScatterRules & {
  readonly marked: MarkedTimes;
  readonly gauges: GaugesCompared;
  /** Who read each point; absent where nobody knows. */
  readonly readers?: Readers;
};

export const notCompared = (
  one: PanelComparison,
  why: Partial<Pick<PanelComparison, 'slips' | 'swap'>>,
): PanelComparison => ({
  ...{ ...one, by: 'nothing', pairs: [], change: null, apart: null, zones: [] },
  ...why,
});

export const slipsOf = (first: PanelSurvey, second: PanelSurvey): readonly AskedSlip[] => [
  ...first.keyingSlips,
  ...second.keyingSlips,
];

export function comparePanel(
  first: PanelSurvey,
  second: PanelSurvey,
  scatter: DifferenceScatter,
  rules: ComparisonRules,
): PanelComparison {
  const all = compareWhole(first, second, scatter, rules);
  const found = scatter.apart.get(first.panel.id);
  if (all.change === null || found === undefined || found.apart.length === 0) return all;
  const { pairs } = pairPoints(first, second, rules.marked);
  const others = pairs.filter((_, place) => !found.apart.includes(place));
  const points = pairs
    .filter((pair) => !others.includes(pair))
    .map((pair) => pointApart(pair, others, found.reach));
  const names = new Set(points.map(({ point }) => point));
  const isOther = (point: string): boolean => !names.has(point);
  const rest = notUnmarked(
    compareWhole(first, second, scatter, { ...rules, marked: among(rules, isOther) }),
    isOther,
  );
  const counted = rest.change !== null && rest.change.removed.value < all.change.removed.value;
  return counted
    ? { ...all, apart: { points, counted, otherwise: rest } }
    : { ...rest, apart: { points, counted, otherwise: all } };
}

/** Marks that are left out are as good as none. */
const among = ({ marked }: ComparisonRules, isOther: (point: string) => boolean): MarkedTimes => ({
  before: (panel, point) => isOther(point) && marked.before(panel, point),
  after: (panel, point) => isOther(point) && marked.after(panel, point),
});

/** A mark that is left out was one all the same. */
const notUnmarked = (
  one: PanelComparison,
  isOther: (point: string) => boolean,
): PanelComparison => ({
  ...one,
  unpaired: { ...one.unpaired, notMarked: one.unpaired.notMarked.filter(isOther) },
  zones: one.zones.map((zone) => notUnmarked(zone, isOther)),
});

function compareWhole(
  first: PanelSurvey,
  second: PanelSurvey,
  scatter: DifferenceScatter,
  rules: ComparisonRules,
): PanelComparison {
  const whole = comparePart(first, second, scatter, rules);
  const slips = slipsOf(first, second);
  if (slips.length > 0) return notCompared(whole, { slips });
  const zones = compareZones(first, second, scatter, rules);
  return whole.change === null ? { ...whole, ...overZones(zones), zones } : { ...whole, zones };
}

/** A panel in two zones has no mean of its own: it lost what its zones lost, by their points. */
function overZones(zones: readonly PanelComparison[]): Partial<PanelComparison> {
  const pointsOf = ({ counts }: PanelComparison): number => counts.before + counts.after;
  const all = zones.reduce((sum, zone) => sum + pointsOf(zone), 0);
  const parts = zones.flatMap((zone) =>
    zone.change === null
      ? []
      : [{ name: `${zone.zone}`, weight: pointsOf(zone) / all, change: zone.change }],
  );
  return parts.length === 0 || parts.length < zones.length
    ? {}
    : { by: 'means', change: meanChange(parts) };
}

function comparePart(
  first: PanelSurvey,
  second: PanelSurvey,
  scatter: DifferenceScatter,
  { marked, gauges, readers }: Pick<ComparisonRules, 'marked' | 'gauges' | 'readers'>,
): PanelComparison {
  const { pairs, unpaired } = pairPoints(first, second, marked);
  const common = {
    panel: first.panel,
    zone: null,
    pairs,
    unpaired,
    counts: { before: first.points.length, after: second.points.length },
    gained: false,
    paint: null,
    slips: [],
    swap: null,
    apart: null,
    zones: [],
  };
  const readAt = (before: readonly NamedPoint[], after: readonly NamedPoint[]) =>
    asReadBy(
      gauges,
      { panel: first.panel.id, before: before.map(nameOf), after: after.map(nameOf) },
      readers,
    );
  if (pairs.length > 0) {
    return { ...common, by: 'pairs', change: changeAt(pairs, scatter, readAt(pairs, pairs)) };
  }
  const [one, other] = [meanOf(first), meanOf(second)];
  return one === null || other === null
    ? { ...common, by: 'nothing', change: null }
    : {
        ...common,
        by: 'means',
        change: changeOfMeans(one, other, readAt(first.points, second.points)),
      };
}

type NamedPoint = { readonly point: string };
const nameOf = ({ point }: NamedPoint): string => point;

function changeAt(
  pairs: readonly PointPair[],
  { prior, least }: DifferenceScatter,
  gauges: GaugesCompared,
): FilmChange {
  const differences = differencesOf(pairs);
  const spread = moderatedSpread(scatterOf(pairs, least), prior);
  const mean = (of: (pair: PointPair) => number): number =>
    pairs.reduce((sum, pair) => sum + of(pair), 0) / pairs.length;
  const means = { before: mean((pair) => pair.before), after: mean((pair) => pair.after) };
  return changeOfPairs(differences, spread, means, gauges);
}

/** Null where an electromagnetic gauge says nothing of the film, and for a face in two zones. */
const meanOf = ({ film, zones }: PanelSurvey): PanelMean | null => (zones.length > 0 ? null : film);

/**
 * Each zone of a panel that was in two before: its marked points by their names, or zone with zone where
 * the panel reads as two again.
 */
function compareZones(
  first: PanelSurvey,
  second: PanelSurvey,
  scatter: DifferenceScatter,
  rules: ComparisonRules,
): readonly PanelComparison[] {
  return first.zones.map((zone) => {
    const names = new Set(zone.points.map(({ point }) => point));
    const again = second.zones.find((one) => one.zone === zone.zone);
    const byName = { ...second, points: second.points.filter(({ point }) => names.has(point)) };
    const { pairs } = pairPoints(zone, byName, rules.marked);
    const counterpart = pairs.length > 0 ? byName : (again ?? { ...byName, film: null, zones: [] });
    return { ...comparePart(zone, counterpart, scatter, rules), zone: zone.zone };
  });
}
