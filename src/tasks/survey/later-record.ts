/**
 * Which of two film records of one vehicle counts, where one is typed and the job names another: the one that holds all
 * that the other does. An older one would free film that is gone; of two that each hold what the other lacks neither
 * says all that went. A forecast that is gone, or another, may be a correction or what stood there before it was made.
 */
import { type Diagnostic, error, found, type Outcome, warning } from '../../base/diagnostics.ts';
import { shownFile } from '../../base/file-name.ts';
import { isSameVehicle } from '../../film/same-vehicle.ts';
import type { FilmRecord, KnownVisit } from '../../formats/film-record.ts';
import type { Placed } from '../../formats/json/placed.ts';

type Record = Placed<FilmRecord>;

export function laterRecord(typed: Record, ofJob: Record): Outcome<Record> {
  if (areOfOthers(typed.value, ofJob.value)) return found(typed);
  const [lacksHere, lacksThere] = [lackedBy(typed, ofJob), lackedBy(ofJob, typed)];
  const [lacked] = lacksHere;
  if (lacked === undefined) return found(typed);
  const [here, there] = [nameOf(typed), nameOf(ofJob)];
  if (lacksHere.every(({ foretold }) => foretold.length > 0))
    return { diagnostics: [forecastsApart({ typed, ofJob, lacksHere, lacksThere })] };
  const [other] = lacksThere;
  if (other === undefined)
    return found(ofJob, [
      warning(
        'film-record-older',
        `${here} lacks what ${there}, which the job names, holds ${daysOf(lacksHere)}: ${there} counts`,
        {
          at: { file: typed.placeOf([]).file },
          hint: 'leave out --film-record, or give the record of the last visit',
        },
      ),
    ]);
  return {
    diagnostics: [
      error(
        'film-record-contradicts',
        `${here} holds ${daysOf(lacksThere)} what ${there}, which the job names, does not, and lacks what that holds ${daysOf(lacksHere)}`,
        {
          at: typed.placeOf(['visits', other.place, 'date']),
          hint: 'give one record with all visits: add what is lacking to it, and name it in the job as film_record',
        },
      ),
    ],
  };
}

const areOfOthers = ({ vehicle: one }: FilmRecord, { vehicle: other }: FilmRecord): boolean =>
  one !== undefined && other !== undefined && !isSameVehicle(one, other);

const nameOf = ({ placeOf }: Record): string => shownFile(placeOf([]).file);

type Lacked = {
  readonly place: number;
  readonly date: string | null;
  /** The panels, where nothing is lacking but what was foretold of them. */
  readonly foretold: readonly Panel[];
};

/** Nothing went there after all, or nobody had thought of it yet. */
function forecastsApart({
  typed,
  ofJob,
  lacksHere,
  lacksThere,
}: {
  readonly typed: Record;
  readonly ofJob: Record;
  readonly lacksHere: readonly Lacked[];
  readonly lacksThere: readonly Lacked[];
}): Diagnostic {
  const [here, there] = [nameOf(typed), nameOf(ofJob)];
  const ids = [...new Set(lacksHere.flatMap(({ foretold }) => foretold.map((one) => one.panel)))];
  const days = new Set(lacksHere.map(({ date }) => date));
  const isNamed = typed.value.file.visits.some(
    ({ date, panels }) => days.has(date) && panels.some(({ panel }) => ids.includes(panel)),
  );
  const hasMore = lacksThere.some(({ foretold }) => foretold.length === 0);
  return error(
    'film-record-contradicts',
    `${here} holds ${isNamed ? 'otherwise' : 'nothing of'} ${ids.join(', ')}, of which ${there}, which the job names, holds a forecast ${daysOf(lacksHere)}: nothing tells which of the two is the later word`,
    {
      at: { file: typed.placeOf([]).file },
      hint: `if ${isNamed ? 'what it holds is right' : 'nothing went there'}, name ${here} in the job as film_record; else ${hasMore ? 'first add it there' : 'leave out --film-record'}`,
    },
  );
}

const daysOf = (visits: readonly Lacked[]): string =>
  `of the visit${visits.length === 1 ? '' : 's'} of ${visits.map(({ date }) => date ?? 'no day').join(', ')}`;

/** Visits of another record that are not, or not wholly, in this one. */
const lackedBy = (one: Record, other: Record): readonly Lacked[] =>
  other.value.file.visits.flatMap((visit, place) => {
    const lacks = one.value.file.visits
      .filter((known) => holdsBesides(known, visit))
      .map((known) => visit.panels.filter((panel) => !saysOfPanel(known, visit, panel)));
    if (lacks.some((panels) => panels.length === 0)) return [];
    const foretold = lacks.find((panels) => panels.every(isForetold)) ?? [];
    return [{ place, date: visit.date, foretold }];
  });

const saysOfPanel = (known: KnownVisit, visit: KnownVisit, panel: Panel): boolean => {
  const says = isMended(known, visit) ? saysOfReadings : saysOf;
  return known.panels.some((one) => saysOf(one, panel) || says(one, panel));
};

const holdsBesides = (known: KnownVisit, visit: KnownVisit): boolean =>
  known.date === visit.date &&
  (visit.spots ?? []).every((spot) => (known.spots ?? []).some((one) => isAlike(one, spot))) &&
  (visit.places ?? []).every((place) =>
    (known.places ?? []).some((one) => saysOfPlace(one, place)),
  );

type Panel = KnownVisit['panels'][number];

/** What was measured takes the place of what was foretold; what binds later visits must bind as much. */
const saysOf = (known: Panel, panel: Panel): boolean =>
  known.panel === panel.panel &&
  bindsAs(known, panel) &&
  ((panel.not_read === true && known.not_read !== true) ||
    WENT.every((key) => isAlike(known[key], panel[key])));

const isForetold = ({ not_read }: Panel): boolean => not_read === true;

/** What one holds by a forecast the other measured. */
const isMended = (known: KnownVisit, { panels }: KnownVisit): boolean =>
  panels
    .filter(isForetold)
    .some(({ panel }) => known.panels.some((one) => one.panel === panel && !isForetold(one)));

/** With one more panel the same readings of another tell a little otherwise how sure they are, and what is left. */
const saysOfReadings = (known: Panel, panel: Panel): boolean =>
  known.panel === panel.panel &&
  panel.points !== undefined &&
  bindsAs(known, { ...panel, left_um: undefined }) &&
  isAlike(readOf(known), readOf(panel));

const readOf = ({ taken_um, gained_um, not_read, points, left_read_um, zones = [] }: Panel) => ({
  ...{ taken_um, gained_um, not_read, points, left_read_um },
  zones: zones.map((one) => [one.zone, one.taken_um, one.points]),
});

function bindsAs(known: Panel, panel: Panel): boolean {
  const { left_um: left, over_allowed: over } = panel;
  return (
    (left === undefined || (known.left_um !== undefined && known.left_um <= left)) &&
    (over !== true || known.over_allowed === true) &&
    (over !== 'perhaps' || (known.over_allowed ?? false) !== false)
  );
}

const WENT = ['taken_um', 'taken_sd_um', 'gained_um', 'not_read', 'points', 'zones'] as const;

type Place = NonNullable<KnownVisit['places']>[number];

/** A place that was read since says more than one that was not. */
const saysOfPlace = (known: Place, place: Place): boolean =>
  (['panel', 'defect', 'median_um', 'high_um'] as const).every(
    (key) => known[key] === place[key],
  ) &&
  (place.taken_um === undefined ||
    (known.taken_um === place.taken_um && known.taken_sd_um === place.taken_sd_um));

const isAlike = (one: unknown, other: unknown): boolean =>
  JSON.stringify(one) === JSON.stringify(other);
