/**
 * What came off as a film record keeps it: with that record a survey of the later readings says what may still go,
 * whoever asks for it later.
 */
import { roundTo } from '../../base/rounding.ts';
import { standardUncertainty } from '../../base/uncertainty.ts';
import type { FilmChange } from '../../film/compare/compare-change.ts';
import type { PointPair } from '../../film/compare/compare-points.ts';
import { paintGained } from '../../film/compare/paint-gain.ts';
import type { PanelComparison } from '../../film/compare/panel-comparison.ts';
import type { Allowance } from '../../film/limits/allowance.ts';
import type { Limit } from '../../film/limits/limit.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import { type FilmRecord, type FilmRecordVisit, filmRecordOf } from '../../formats/film-record.ts';
import type { Placed } from '../../formats/json/placed.ts';
import { type Allowed, isOver, isPerhapsOver } from './compare-overrun.ts';
import type { PartLeft, Rise } from './part-left.ts';

export type VisitPanels = FilmRecordVisit['panels'];

/** By the id of each panel that read more film at a visit than at the one before it. */
export type Rises = ReadonlyMap<string, Rise>;

/** The panels of which a record can say something: what was taken, or that paint came on. */
export const visitPanels = (
  compared: readonly PanelComparison[],
  rises: Rises = new Map(),
): VisitPanels =>
  compared.flatMap((comparison) => {
    const rise = rises.get(comparison.panel.id) ?? null;
    const gained = paintGained({ comparison, rise });
    return gained === null ? panelEntry(comparison, () => ({})) : [gainedEntry(comparison, gained)];
  });

/** Nothing was taken, as far as anybody knows; what was taken before stays. */
const gainedEntry = ({ panel, pairs }: PanelComparison, gained: number): VisitPanels[number] => ({
  panel: panel.id,
  taken_um: 0,
  taken_sd_um: 0,
  gained_um: kept(Math.min(MOST_GAINED, gained)),
  ...pointsOf(pairs),
});

/** The same with what might go before, so that the next visit knows where more went; nothing of a panel in doubt. */
export function visitOf(panels: readonly PartsLeft[], asked: readonly PanelSurvey[]): VisitPanels {
  const parts = new Map<PanelComparison, PartLeft>(
    panels.flatMap((panel) => [panel, ...panel.zones].map((part) => [part.comparison, part])),
  );
  return panels.flatMap((panel) => {
    const gained = paintGained(panel);
    if (gained !== null) return [gainedEntry(panel.comparison, gained)];
    return panel.rise === null
      ? panelEntry(panel.comparison, (part) => mightGo(parts.get(part))).map((entry) => ({
          ...entry,
          ...leftNow(panel, entry, asked),
        }))
      : [];
  });
}

type PartsLeft = PartLeft & { readonly zones: readonly PartLeft[] };

/** No survey of the later readings, or of some of them, is to allow more than that, whoever asks it next. */
function leftNow(
  { comparison, left, places, zones: parts }: PartsLeft,
  { zones = [] }: VisitPanels[number],
  asked: readonly PanelSurvey[],
): Partial<VisitPanels[number]> {
  const survey = asked.find(({ panel }) => panel.id === comparison.panel.id);
  if (left === null || !survey?.statistics) return {};
  const inZones = new Map(
    parts.flatMap((part) => {
      const own = survey.zones.find(({ zone }) => zone === part.comparison.zone) ?? survey;
      const most = part.left === null ? null : mostLeft(part.left, part.places, own);
      return most === null ? [] : [[part.comparison.zone, most] as const];
    }),
  );
  const most = mostLeft(left, places, survey) ?? Math.max(...inZones.values());
  if (!Number.isFinite(most)) return {};
  const ofZones = zones.map((zone) => {
    const mostThere = inZones.get(zone.zone);
    return mostThere === undefined ? zone : { ...zone, left_um: keptUp(mostThere) };
  });
  return {
    left_um: keptUp(most),
    ...([left, ...parts.map((part) => part.left)].some(isNearLine)
      ? { left_by: 'near-line' as const }
      : {}),
    left_points: survey.points.length,
    left_mean_um: kept(survey.statistics.mean),
    left_read_um: survey.points.flatMap(({ repeats }) => repeats.map(kept)),
    ...(zones.length === 0 ? {} : { zones: ofZones }),
  };
}

/**
 * By all limits where a survey of the later readings allows more; else by those that rest on what was read: what is said
 * of the paint, or shown by a spot that is made later, may lift the others. Null where none does.
 *
 * What a spot was to take at its place is on record by itself, and keeps other spots off the panel till it is read. Once
 * read it counts in what may go from the panel: so does what is left there.
 */
function mostLeft(
  { limits }: Allowance,
  places: PartLeft['places'],
  asked: Pick<PanelSurvey, 'budget'>,
): number | null {
  // Those of its plan come last; one before them is of places and test spots that are on record already.
  const atPlaces = places.length === 0 ? [] : limits.filter(isOfPlace).slice(-places.length);
  const unread = new Set(atPlaces.filter((_, i) => places[i]?.read === null));
  const known = limits.filter((limit) => !unread.has(limit));
  const most = leastOf(known);
  if (most < asked.budget) return most;
  const byReadings = known.filter(({ code }) => OF_READINGS.has(code));
  return byReadings.length === 0 ? null : leastOf(byReadings);
}

const isNearLine = (left: Allowance | null): boolean => left?.boundBy.code === 'near-line';

const isOfPlace = ({ code }: Limit): boolean => code === 'place';

const OF_READINGS: ReadonlySet<Limit['code']> = new Set<Limit['code']>([
  ...(['clear', 'near-line', 'life', 'total', 'place', 'as-compared'] as const),
]);

const leastOf = (limits: readonly Limit[]): number => Math.min(...limits.map(({ value }) => value));

type MightGo = Partial<Pick<VisitPanels[number], 'allowed_um' | 'over_allowed'>>;

/** Nobody knows of a panel whose zones are told apart. */
const mightGo = (part: Partial<PartLeft> = {}): MightGo =>
  part.allowed === undefined || part.allowed === null
    ? { allowed_um: null, over_allowed: null }
    : { allowed_um: kept(part.allowed.most), over_allowed: overAllowed(part, part.allowed) };

/** Not known where the figure lies over what might go, and the readings tell too little for a doubt even. */
function overAllowed(
  { overruns = [], comparison }: Partial<PartLeft>,
  { most }: Allowed,
): MightGo['over_allowed'] {
  if (isOver(overruns)) return true;
  if (isPerhapsOver(overruns)) return 'perhaps';
  return (comparison?.change?.removed.value ?? 0) > most ? null : false;
}

/** What a record takes: a difference that is less sure than this says nothing of a panel. */
const MOST_SD = 20;

/** As it was measured; film that came on is no removal, and little of it no paint either: it is left out. */
function panelEntry(
  comparison: PanelComparison,
  mightGoFrom: (part: PanelComparison) => MightGo,
): VisitPanels {
  const { panel, change, gained, pairs, zones } = comparison;
  if (change === null || gained || standardUncertainty(change.removed) > MOST_SD) return [];
  const parts = zones.flatMap((zone) =>
    zone.zone === null || zone.change === null
      ? []
      : [{ zone: zone.zone, ...taken(zone.change, zone.pairs, mightGoFrom(zone)) }],
  );
  return [
    {
      panel: panel.id,
      ...taken(change, pairs, mightGoFrom(comparison)),
      ...(parts.length === 0 ? {} : { zones: parts }),
    },
  ];
}

const taken = ({ removed }: FilmChange, pairs: readonly PointPair[], might: MightGo) => ({
  taken_um: kept(Math.min(MOST_TAKEN, Math.max(LEAST_TAKEN, removed.value))),
  taken_sd_um: kept(standardUncertainty(removed)),
  ...might,
  ...pointsOf(pairs),
});

const pointsOf = (pairs: readonly PointPair[]) =>
  pairs.length === 0
    ? {}
    : {
        points: pairs.map(({ point, before, after }) => ({
          point,
          before_um: kept(before),
          after_um: kept(after),
        })),
      };

const LEAST_TAKEN = -20;
/** All that a record can hold; no panel has so much to give. */
const MOST_TAKEN = 100;
const MOST_GAINED = 2000;
const DIGITS = 6;
export const kept = (value: number): number => roundTo(value, DIGITS);
/** Never less, so that a survey that allows just that is bound by what it says itself. */
const keptUp = (value: number): number => kept(Math.ceil(value * 10 ** DIGITS) / 10 ** DIGITS);

/** Of the others a plan foretold what went. */
export const isMeasured = ({ not_read }: VisitPanels[number]): boolean => not_read !== true;

/** By which one visit is known from another: what might go is no part of what was measured. */
export const takenText = (panels: VisitPanels): string =>
  JSON.stringify(panels.filter(isMeasured), (key, value) =>
    OF_WHAT_MIGHT_GO.has(key) ? undefined : value,
  );

const OF_WHAT_MIGHT_GO: ReadonlySet<string> = new Set([
  ...['allowed_um', 'over_allowed'],
  ...['left_um', 'left_by', 'left_points', 'left_mean_um', 'left_read_um'],
]);

export type Records = {
  /** What earlier visits took, without this one. */
  readonly earlier: Placed<FilmRecord> | undefined;
  readonly withThis: Placed<FilmRecord>;
};

/**
 * Visits that what came off holds are not counted beside it, on the panels that were compared: this very one, and those
 * within it, by their places in the record. Their test spots stay with the earlier visits: they were made before the work.
 */
export function recordsAround(
  named: Placed<FilmRecord> | undefined,
  panels: VisitPanels,
  held: ReadonlySet<number>,
): Records {
  const file: FilmRecord['file'] = named?.value.file ?? {
    schema: 'leastcut/film-record/1',
    visits: [],
  };
  const compared = new Set(panels.map(({ panel }) => panel));
  const visits = file.visits.map((visit, place) =>
    held.has(place)
      ? {
          ...visit,
          panels: visit.panels.filter((one) => !compared.has(one.panel) && isMeasured(one)),
        }
      : visit,
  );
  const placeOf: Placed<FilmRecord>['placeOf'] = named?.placeOf ?? (() => ({ file: THESE }));
  const of = (all: FilmRecord['file']['visits']): Placed<FilmRecord> => ({
    value: filmRecordOf({ ...file, visits: all }),
    placeOf,
  });
  return {
    earlier: named === undefined ? undefined : of(visits),
    withThis: of([...visits, { date: null, panels }]),
  };
}

/** Before the work of a visit its places were as the panel; and where its plan is named, that tells of them. */
export const withoutPlacesAt = (
  named: Placed<FilmRecord> | undefined,
  held: ReadonlySet<number>,
  isOf: (panel: string) => boolean,
): Placed<FilmRecord> | undefined => {
  if (named === undefined || held.size === 0) return named;
  const { file } = named.value;
  const visits = file.visits.map((visit, place) =>
    held.has(place) && visit.places !== undefined
      ? { ...visit, places: visit.places.filter(({ panel }) => !isOf(panel)) }
      : visit,
  );
  return { ...named, value: filmRecordOf({ ...file, visits }) };
};

const THESE = 'readings before and after';
