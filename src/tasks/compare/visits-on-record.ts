/**
 * Which visits of a film record the readings that are compared speak of: a record keeps what each marked point read
 * before and after, and the same figures are the same readings.
 *
 * - the first readings are those before a visit, and the last those after it: it is this visit;
 * - the first are, and the last are of none but panels that it foretold: they complete it;
 * - only one of the two is: the visit lies within what came off here, or reaches beyond it;
 * - both of the readings lie between what it read, in film: they are of a part of it, or a gauge moved since;
 * - its day lies between those of the readings, and no figure tells: it may.
 */
import { roundTo } from '../../base/rounding.ts';
import { differenceInterval, pairedDifference } from '../../base/stats/mean-difference.ts';
import type { FilmModel } from '../../film/film-model.ts';
import type { PanelSurvey, Survey } from '../../film/survey.ts';
import type { KnownVisit } from '../../formats/film-record.ts';
import type { DatedVisit } from './compare-order.ts';
import { isMeasured, takenText, type VisitPanels } from './compare-visit-record.ts';

export type VisitsOnRecord = {
  /** The place in the record of this very visit; null where it is not there yet. */
  readonly again: number | null;
  /** Whether it was read anew since: its figures are not those on record. */
  readonly anew: boolean;
  /** Whether all that was read again are panels of which it holds a forecast alone. */
  readonly completes: boolean;
  /** Places of visits whose removal is a part of what came off here. */
  readonly within: readonly number[];
  /** Places of visits of whose removal what came off here is a part. */
  readonly around: readonly number[];
  /** Places of visits that may be so: the readings lie between theirs in film, and no day tells. */
  readonly perhapsAround: readonly number[];
  /** Places of visits that may be within. */
  readonly perhaps: readonly number[];
  /** Of visits after which the last readings were taken, where nothing says that the first were taken before. */
  readonly unclear: readonly number[];
};

type ComparedReadings = DatedVisit & { readonly survey: Pick<Survey, 'panels'> };

export function visitsOnRecord(
  visits: readonly KnownVisit[],
  [first, last]: readonly [ComparedReadings, ComparedReadings],
  panels: VisitPanels,
  rules: FilmModel['compare'],
): VisitsOnRecord {
  const found = comparedWith(visits, [first, last], panels, rules);
  const started = found.find(({ startsHere }) => startsHere)?.place ?? Number.POSITIVE_INFINITY;
  const same =
    found.find(({ isThis }) => isThis) ??
    found.find(({ startsHere, endsHere }) => startsHere && endsHere) ??
    found.find(
      ({ startsHere, visit }) => startsHere && !isBefore(last, visit) && areForetold(panels, visit),
    );
  const others = found.filter((one) => one !== same);
  const isAround = ({ startsHere, endsHere, place, visit, isWider, isBetween }: Found): boolean =>
    (startsHere && (isBefore(last, visit) || (isWider && !isAfter(last, visit)))) ||
    (endsHere && isWider && started >= place && isBefore(first, visit)) ||
    (isBetween && isBefore(last, visit));
  const around = others.filter(isAround);
  const inside = others.filter((one) => !around.includes(one));
  const within = inside.filter(
    ({ startsHere, endsHere, place, visit }) =>
      startsHere || (endsHere && (started < place || isBefore(first, visit))),
  );
  const rest = inside.filter((one) => !within.includes(one));
  const perhapsAround = rest.filter(({ isBetween, visit }) => isBetween && !isAfter(first, visit));
  const perhaps = rest.filter(
    (one) =>
      !one.endsHere &&
      !one.isEarlier &&
      !one.isLater &&
      !perhapsAround.includes(one) &&
      isBefore(first, one.visit) &&
      isAfter(last, one.visit),
  );
  return {
    again: same?.place ?? null,
    anew: same?.isThis === false,
    completes: same !== undefined && areForetold(panels, same.visit),
    within: placesOf(within),
    around: placesOf(around),
    perhapsAround: placesOf(perhapsAround),
    perhaps: placesOf(perhaps),
    unclear: placesOf(rest.filter(({ endsHere }) => endsHere)),
  };
}

/** Of none of them the visit holds a measurement, and of each a forecast. */
const areForetold = (panels: VisitPanels, { panels: known }: KnownVisit): boolean =>
  panels.length > 0 &&
  panels.every(({ panel }) => known.some((one) => one.panel === panel && !isMeasured(one)));

/** A visit on record beside the readings that are compared. */
type Found = {
  readonly place: number;
  readonly visit: KnownVisit;
  /** What came off is what it took, figure for figure. */
  readonly isThis: boolean;
  /** The first readings are those before it, the last those after it. */
  readonly startsHere: boolean;
  readonly endsHere: boolean;
  /** The first readings are those after it, the last those before it. */
  readonly isEarlier: boolean;
  readonly isLater: boolean;
  /** It began with more film, or ended with less. */
  readonly isWider: boolean;
  /** It did both, by other readings than these. */
  readonly isBetween: boolean;
};

const placesOf = (found: readonly Found[]): readonly number[] => found.map(({ place }) => place);

function comparedWith(
  visits: readonly KnownVisit[],
  [first, last]: readonly [ComparedReadings, ComparedReadings],
  panels: VisitPanels,
  rules: FilmModel['compare'],
): readonly Found[] {
  const text = takenText(panels);
  const [begins, ends] = [valuesOf(first.survey.panels), valuesOf(last.survey.panels)];
  const [isSame, isLess] = [sameBy(rules), lessBy(rules)];
  return visits.map((visit, place) => {
    const [from, to] = [pointsOf(visit, 'before_um'), pointsOf(visit, 'after_um')];
    const [beganHigher, endedLower] = [isLess(begins, from), isLess(to, ends)];
    const known = {
      startsHere: isSame(begins, from),
      endsHere: isSame(ends, to),
      isEarlier: isSame(begins, to),
      isLater: isSame(ends, from),
    };
    return {
      place,
      visit,
      isThis: visit.panels.some(isMeasured) && takenText(visit.panels) === text,
      ...known,
      isWider: beganHigher || endedLower,
      isBetween: beganHigher && endedLower && !Object.values(known).includes(true),
    };
  });
}

const isBefore = ({ days }: DatedVisit, { date }: KnownVisit): boolean =>
  days !== null && date !== null && days.to.slice(0, date.length) < date;

const isAfter = ({ days }: DatedVisit, { date }: KnownVisit): boolean =>
  days !== null && date !== null && date < days.from.slice(0, date.length);

type Values = ReadonlyMap<string, number>;

const keyOf = (panel: string, point: string): string => JSON.stringify([panel, point]);

const valuesOf = (panels: readonly PanelSurvey[]): Values =>
  new Map(
    panels.flatMap(({ panel, points }) =>
      points.map(({ point, thickness }) => [keyOf(panel.id, point), kept(thickness)] as const),
    ),
  );

const pointsOf = ({ panels }: KnownVisit, side: 'before_um' | 'after_um'): Values =>
  new Map(
    panels.flatMap(({ panel, zones = [], ...whole }) =>
      [whole, ...zones].flatMap(({ points = [] }) =>
        points.flatMap(({ point, [side]: value }) =>
          value === undefined ? [] : [[keyOf(panel, point), kept(value)] as const],
        ),
      ),
    ),
  );

const DIGITS = 6;
const kept = (value: number): number => roundTo(value, DIGITS);

/** Of readings at the same points, surely less film. */
const lessBy =
  ({ leastAlike }: FilmModel['compare']) =>
  (one: Values, other: Values): boolean => {
    const shared = [...one].flatMap(([key, value]) => {
      const film = other.get(key);
      return film === undefined ? [] : [{ value, film }];
    });
    if (shared.length < leastAlike) return false;
    const difference = pairedDifference(
      shared.map(({ value }) => value),
      shared.map(({ film }) => film),
    );
    return differenceInterval(difference, CONFIDENCE)[1] < 0;
  };

const CONFIDENCE = 0.95;

/** A slip that was corrected since, or a panel read anew, makes no other survey of it. */
const sameBy =
  ({ leastAlike, shareAlike }: FilmModel['compare']) =>
  (one: Values, other: Values): boolean => {
    const shared = [...one].filter(([key]) => other.has(key));
    const alike = shared.filter(([key, value]) => other.get(key) === value);
    return alike.length >= leastAlike && alike.length >= shareAlike * shared.length;
  };
