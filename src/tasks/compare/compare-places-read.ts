/**
 * What was read at the places that a plan worked deeper than their panel, at points called by them: such a point is none
 * of those that tell what the panel lost.
 *
 * - marked and read before and after the work: it lost d, and the panel Δ; the spot took d − Δ, u² = u_d² + u_Δ², with
 *   u_d² what the gauge alone makes of one difference;
 * - read after the work alone: what it lacks to the panel's other points by then (`missingAtPlace`).
 */
import { at } from '../../base/at.ts';
import { groupBy } from '../../base/group-by.ts';
import { standardUncertainty } from '../../base/uncertainty.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import { goneAtPlace } from '../../correction/removal/gone-at-place.ts';
import type { MeasuredRemoval } from '../../correction/removal/measured-removal.ts';
import { gaugeVariance, pairPoints } from '../../film/compare/compare-points.ts';
import type { PanelComparison } from '../../film/compare/panel-comparison.ts';
import type { FilmModel, RecordedRemoval } from '../../film/film-model.ts';
import { displayStep, type PanelPoint } from '../../film/panel-points.ts';
import { isPointOf, placePoint } from '../../film/place-note.ts';
import { missingAtPlace } from '../../film/place-reading.ts';
import type { PanelSurvey, Survey } from '../../film/survey.ts';
import type { Panel } from '../../film/template/template.ts';
import type { PlannedPlace } from '../../formats/plan-file.ts';
import type { Planned } from './compare-plan.ts';
import type { Visit } from './compare-visits.ts';

export type PlaceRead = PlannedPlace & {
  /** What the spot took beyond the panel, as it was measured and as it is held; null where nobody read it. */
  readonly read: {
    readonly measured: MeasuredRemoval;
    readonly taken: Pick<RecordedRemoval, 'mean' | 'sd'>;
    /** Marked and read before and after the work; else told by what it lacks to the panel's other points. */
    readonly isPaired: boolean;
  } | null;
};

type Times = { readonly first: Visit; readonly last: Visit };

/** By the ids of the panels. */
export const readPlaces = (
  planned: Planned,
  compared: readonly PanelComparison[],
  times: Times,
  model: FilmModel,
): ReadonlyMap<string, readonly PlaceRead[]> =>
  new Map(
    [...planned].map(([id, { places }]) => {
      const comparison = compared.find(({ panel }) => panel.id === id);
      const around = { id, places, comparison };
      return [id, places.map((place) => placeRead(place, around, times, model))] as const;
    }),
  );

type Around = {
  readonly id: string;
  readonly places: readonly PointName[];
  readonly comparison: PanelComparison | undefined;
};

function placeRead(
  place: PlannedPlace,
  { id, places, comparison }: Around,
  { first, last }: Times,
  model: FilmModel,
): PlaceRead {
  const [before, after] = [first, last].map(({ surveyed }) => panelIn(surveyed.survey, id));
  const own = after?.points.find(({ point }) => isPointOf(point, place.point));
  if (own === undefined || after === undefined) return { ...place, read: null };
  const others = after.points.filter((one) => !isAtPlace(one, places));
  const lost = lostThere(own, before, { after, comparison, first, last }, model);
  const measured = lost ?? missingAtPlace(own, others, model);
  const isPaired = lost !== null;
  return {
    ...place,
    read: measured === null ? null : { measured, taken: goneAtPlace(place, measured), isPaired },
  };
}

function lostThere(
  own: PanelPoint,
  before: PanelSurvey | undefined,
  {
    after,
    comparison,
    first,
    last,
  }: Times & { readonly after: PanelSurvey; readonly comparison: PanelComparison | undefined },
  { measurement }: FilmModel,
): MeasuredRemoval | null {
  const { change = null } = comparison ?? {};
  if (before === undefined || change === null) return null;
  const marked = { before: first.marked, after: last.marked };
  const { pairs } = pairPoints(before, { ...after, points: [own] }, marked);
  const [pair] = pairs;
  if (pair === undefined) return null;
  const step = displayStep([...before.points, ...after.points].map(({ thickness }) => thickness));
  const gauge = Math.sqrt(gaugeVariance([pair], measurement.repeatability, step));
  return {
    value: micrometres(pair.before - pair.after - change.removed.value),
    standardError: micrometres(Math.hypot(gauge, standardUncertainty(change.removed))),
  };
}

const panelIn = ({ panels }: Survey, id: string): PanelSurvey | undefined =>
  panels.find(({ panel }) => panel.id === id);

const isAtPlace = (
  { point }: Pick<PanelPoint, 'point'>,
  places: readonly Pick<PlannedPlace, 'point'>[],
): boolean => places.some((place) => isPointOf(point, place.point));

type PointName = Pick<PanelPoint, 'point'>;

/** By the id of a panel, its points that tell nothing of what it lost. */
export type PlacePoints = ReadonlyMap<string, readonly PointName[]>;

type NamedPoint = PointName & { readonly defect: string };

export type NamedPlaces = { readonly panel: Panel; readonly points: readonly NamedPoint[] };

/**
 * Points called by a defect and counted, as `deep scratches 1`, of which no plan at hand tells: on panels that every survey
 * read at points with other names as well they are taken for places of spots all the same.
 */
export function placesNamed(
  surveys: readonly Survey[],
  planned: Planned,
  defects: readonly { readonly id: string }[],
): readonly NamedPlaces[] {
  const panels = surveys.flatMap((survey) => survey.panels);
  return [...groupBy(panels, ({ panel }) => panel.id)].flatMap(([id, read]) => {
    const { places = [] } = planned.get(id) ?? {};
    const isOther = (one: PointName): boolean => !isNamed(one, defects) && !isAtPlace(one, places);
    if (!read.every(({ points }) => points.some(isOther))) return [];
    const names = read.flatMap(({ points }) =>
      points.flatMap(({ point }) => {
        const defect = defectNamed({ point }, defects);
        return defect === undefined || isAtPlace({ point }, places) ? [] : [{ point, defect }];
      }),
    );
    const unlike = names.filter(
      ({ point }, i) => !names.slice(0, i).some((one) => isPointOf(point, one.point)),
    );
    return unlike.length === 0 ? [] : [{ panel: at(read, 0).panel, points: unlike }];
  });
}

const isNamed = (one: PointName, defects: readonly { readonly id: string }[]): boolean =>
  defectNamed(one, defects) !== undefined;

function defectNamed(
  { point }: PointName,
  defects: readonly { readonly id: string }[],
): string | undefined {
  const [, nth] = /\D(\d+)\s*$/u.exec(point) ?? [];
  return nth === undefined
    ? undefined
    : defects.find(({ id }) => isPointOf(point, placePoint(id, Number(nth) - 1)))?.id;
}

/**
 * With the marked places that no plan tells of: what went there beyond the panel is gone, as of a spot that was planned;
 * `mightGo` says what might, of a panel, before the work.
 */
export function withNamedPlaces(
  planned: ReadonlyMap<string, readonly PlaceRead[]>,
  named: readonly NamedPlaces[],
  mightGo: (panel: string) => Micrometres | null,
  { compared, times, model }: NamedCase,
): ReadonlyMap<string, readonly PlaceRead[]> {
  const all = new Map(planned);
  for (const { panel, points } of named) {
    const { id } = panel;
    const known = all.get(id) ?? [];
    const comparison = compared.find((one) => one.panel.id === id);
    const budget = mightGo(id);
    const read = points
      .map((one) => ({ ...UNPLANNED, ...one, budget }))
      .map((one) => placeRead(one, { id, places: [...known, ...points], comparison }, times, model))
      .filter((one) => one.read?.isPaired === true);
    if (read.length > 0) all.set(id, [...known, ...read]);
  }
  return all;
}

type NamedCase = {
  readonly compared: readonly PanelComparison[];
  readonly times: Times;
  readonly model: FilmModel;
};

/** Nothing was foretold. */
const UNPLANNED = { sets: null, median: micrometres(0), high: micrometres(0), inAll: null };

export const pointsOfPlaces = (planned: Planned, named: readonly NamedPlaces[]): PlacePoints => {
  const all = new Map<string, readonly PointName[]>(
    [...planned].map(([id, { places }]) => [id, places]),
  );
  for (const { panel, points } of named)
    all.set(panel.id, [...(all.get(panel.id) ?? []), ...points]);
  return all;
};

/** The survey without the points of places that were worked deeper: they tell nothing of their panels. */
export function withoutPlaces(survey: Survey, ofPlaces: PlacePoints): Survey {
  if ([...ofPlaces.values()].every((places) => places.length === 0)) return survey;
  return {
    ...survey,
    panels: survey.panels.map((panel) => {
      const places = ofPlaces.get(panel.panel.id) ?? [];
      return places.length === 0
        ? panel
        : {
            ...withoutPoints(panel, places),
            zones: panel.zones.map((zone) => withoutPoints(zone, places)),
          };
    }),
  };
}

const withoutPoints = <Part extends Pick<PanelSurvey, 'points'>>(
  part: Part,
  places: readonly PointName[],
): Part => ({ ...part, points: part.points.filter((one) => !isAtPlace(one, places)) });
