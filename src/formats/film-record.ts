/**
 * The film record, `leastcut/film-record/1`: what was taken from each panel at earlier visits, as it
 * was measured then. A difference of two means may come out under 0 and is kept as it is: what a panel
 * has lost in all is the sum over the visits, at least 0, and its variance the sum of theirs. A panel that
 * carries two films lost what the zone lost that lost most. What might go before that work stands beside it, so that
 * a loss beyond it is not forgotten; so does film that came on by as much as paint adds; so does a panel that was worked and not read, by what its plan foretold; so do places that a plan worked deeper than the panel, and what
 * was read there since; so do the test spots of the visit, what they took and whether colour came off.
 */
import * as z from 'zod';
import { roundTo } from '../base/rounding.ts';
import { micrometres } from '../base/units.ts';
import type { Overrun, PlaceWorked, RecordedRemoval } from '../film/film-model.ts';
import { withPoints } from '../film/place-note.ts';
import { asQuantity, given } from './json/given.ts';
import {
  between,
  combination,
  date,
  identifier,
  note,
  text,
  wholeBetween,
} from './json/setting-values.ts';
import { settingsReader } from './json/settings-reader.ts';

const readingUm = z.number().min(0).max(2000);

const pointSchema = z.strictObject({
  point: text,
  before_um: readingUm.optional(),
  after_um: readingUm.optional(),
});

const LEAST_TAKEN = -20;
const MOST_TAKEN = 100;
/** Of a figure to one decimal. */
const HALF_A_DIGIT = 0.05;

const takenShape = {
  taken_um: z.number().min(LEAST_TAKEN).max(MOST_TAKEN),
  taken_sd_um: z.number().min(0).max(20),
  allowed_um: z.number().min(0).max(100).nullable().optional(),
  over_allowed: z
    .union([z.boolean(), z.literal('perhaps')])
    .nullable()
    .optional(),
  points: z.array(pointSchema).optional(),
};

type Taken = z.output<z.ZodObject<typeof takenShape>>;

/**
 * What its points lost on average lies among what each of them lost: a figure in another unit or with another sign does
 * not. Two of its own SDs let rounding by hand pass; film that came on is no removal, and 0 says that.
 */
function takenAtItsPoints(
  { taken_um, taken_sd_um, points = [], gained_um = 0 }: Taken & { gained_um?: number | undefined },
  context: z.RefinementCtx,
): void {
  const lost = points.flatMap(({ before_um, after_um }) =>
    before_um === undefined || after_um === undefined
      ? []
      : [Math.min(MOST_TAKEN, Math.max(LEAST_TAKEN, before_um - after_um))],
  );
  if (lost.length === 0 || gained_um > 0) return;
  const [least, most] = [Math.min(...lost), Math.max(...lost)];
  const slack = 2 * taken_sd_um + HALF_A_DIGIT;
  const fits = (um: number): boolean => um >= least - slack && um <= most + slack;
  const isGain = most < 0 && taken_um === 0;
  if (isGain || fits(taken_um)) return;
  const said = (value: number): string => `${roundTo(value, 3)}`;
  const all = least === most ? said(least) : `${said(least)} to ${said(most)}`;
  context.addIssue({
    code: 'custom',
    path: ['taken_um'],
    message: `is ${taken_um}, and its own points lost ${all} µm (before_um less after_um)`,
    params: { hint: meantFor(taken_um, fits) },
  });
}

/** What was perhaps meant by a figure that its points contradict. */
function meantFor(taken: number, fits: (um: number) => boolean): string {
  const slips = [
    { um: -taken, text: 'film that came off counts above 0' },
    { um: taken * 1000, text: 'that looks like mm' },
    { um: taken * 25.4, text: 'that looks like mil' },
  ];
  const meant = slips.find(({ um }) => fits(um));
  return meant === undefined
    ? 'correct the figure or the points, in µm; leave the points out where they are of other work'
    : `${meant.text}: in µm it is ${roundTo(meant.um, 3)}`;
}

const leftShape = { left_um: z.number().min(0).max(100).optional() };

const markSchema = z.strictObject({ mark: text, before_um: readingUm, after_um: readingUm });

/** A test spot: its trial, as its file told it, and what that took. */
const spotSchema = z.strictObject({
  spot: text,
  panel: identifier,
  combination,
  sets: wholeBetween(1, 50),
  marks: z.array(markSchema).optional(),
  cleared_pct: between(0, 100).nullable().optional(),
  haze_grade: between(0, 4).nullable().optional(),
  colour_on_pad: z.boolean().nullable().optional(),
  place: text.optional(),
  taken_um: between(0, 100),
  taken_sd_um: between(0, 20),
});

/** A spot at a deep defect, as its plan had it, and as it was read since: beyond what the panel lost. */
const placeSchema = z.strictObject({
  panel: identifier,
  defect: identifier,
  median_um: between(0, 200),
  high_um: between(0, 2000),
  taken_um: between(-200, 200).optional(),
  taken_sd_um: between(0, 200).optional(),
});

const visitSchema = z.strictObject({
  date,
  panels: z.array(
    z
      .strictObject({
        panel: identifier,
        ...takenShape,
        not_read: z.boolean().optional(),
        gained_um: z.number().min(0).max(2000).optional(),
        ...leftShape,
        left_by: z.literal('near-line').optional(),
        left_points: wholeBetween(1, 1000).optional(),
        left_mean_um: readingUm.optional(),
        left_read_um: z.array(readingUm).optional(),
        zones: z
          .array(
            z
              .strictObject({ zone: z.enum(['thinner', 'thicker']), ...takenShape, ...leftShape })
              .superRefine(takenAtItsPoints),
          )
          .optional(),
      })
      .superRefine(takenAtItsPoints),
  ),
  places: z.array(placeSchema).optional(),
  spots: z.array(spotSchema).optional(),
  note: note.optional(),
});

export const filmRecordSchema = z.strictObject({
  $schema: z.string().optional(),
  schema: z.literal('leastcut/film-record/1'),
  vehicle: identifier.optional(),
  visits: z.array(visitSchema),
  note: note.optional(),
});

/** As it is written. */
export type FilmRecordFile = z.output<typeof filmRecordSchema>;
export type FilmRecordVisit = z.output<typeof visitSchema>;
export type WrittenPlace = z.output<typeof placeSchema>;
export type WrittenSpot = z.output<typeof spotSchema>;

/** A visit as it is counted: no page tells the day of one that is compared just now, or that a plan alone tells of. */
export type KnownVisit = Omit<FilmRecordVisit, 'date'> & { readonly date: string | null };
type KnownVisits = Omit<FilmRecordFile, 'visits'> & { readonly visits: readonly KnownVisit[] };

export type RecordedPanel = {
  /** As the record names it. */
  readonly panel: string;
  readonly taken: RecordedRemoval;
  /** Where in the record: `['visits', 0, 'panels', 2]`. */
  readonly path: readonly (string | number)[];
};

export type RecordedSpot = {
  readonly written: WrittenSpot;
  /** The visits are counted, as two may be of one day. */
  readonly visit: number;
  readonly date: string;
  readonly path: readonly (string | number)[];
};

export type FilmRecord = {
  readonly vehicle?: string;
  /** Every panel of every visit, then its places that were worked deeper, in the order of the file. */
  readonly panels: readonly RecordedPanel[];
  readonly spots: readonly RecordedSpot[];
  /** What a later visit is added to. */
  readonly file: KnownVisits;
};

export const filmRecordOf = (file: KnownVisits): FilmRecord => ({
  ...given({ vehicle: file.vehicle }),
  panels: file.visits.flatMap((visit, i) => [
    ...visit.panels.map((panel, j) => ({
      panel: panel.panel,
      taken: {
        ...mostTaken(panel),
        ...overrunOf(visit, panel),
        ...gainOf(visit.date, panel),
        ...unreadOf(visit.date, panel),
        ...leftOf({ date: visit.date, visit: i }, panel),
      },
      path: ['visits', i, 'panels', j],
    })),
    ...withPoints(visit.places ?? []).map((place, j) => ({
      panel: place.panel,
      taken: { ...NOTHING_MEASURED, places: [placeOf(visit.date, place)] },
      path: ['visits', i, 'places', j],
    })),
  ]),
  spots: file.visits.flatMap(({ date: day, spots = [] }, visit) =>
    day === null
      ? []
      : spots.map((written, j) => ({
          written,
          visit,
          date: day,
          path: ['visits', visit, 'spots', j],
        })),
  ),
  file,
});

export const readFilmRecord = settingsReader(filmRecordSchema, filmRecordOf);

const NOTHING_MEASURED = { mean: micrometres(0), sd: micrometres(0) };

type NamedPlace = WrittenPlace & { readonly point: string };

const placeOf = (
  date: string | null,
  { defect, point, median_um, high_um, taken_um, taken_sd_um = 0 }: NamedPlace,
): PlaceWorked => ({
  date,
  defect,
  point,
  median: micrometres(median_um),
  high: micrometres(high_um),
  ...(taken_um === undefined
    ? {}
    : {
        measured: { value: micrometres(taken_um), standardError: micrometres(taken_sd_um) },
      }),
});

function mostTaken({ zones = [], ...panel }: FilmRecordVisit['panels'][number]): RecordedRemoval {
  const { taken_um, taken_sd_um } = zones.reduce<{ taken_um: number; taken_sd_um: number }>(
    (most, zone) => (zone.taken_um > most.taken_um ? zone : most),
    panel,
  );
  return { mean: micrometres(taken_um), sd: micrometres(taken_sd_um) };
}

/** By what was painted on; of readings that are compared just now no day is told. */
const gainOf = (
  date: string | null,
  { gained_um }: FilmRecordVisit['panels'][number],
): Pick<RecordedRemoval, 'gains'> =>
  gained_um === undefined || gained_um === 0
    ? {}
    : { gains: [{ date, by: micrometres(gained_um) }] };

/** Worked, and held to have lost what its plan foretold. */
const unreadOf = (
  date: string | null,
  panel: FilmRecordVisit['panels'][number],
): Pick<RecordedRemoval, 'unread'> =>
  date === null || panel.not_read !== true ? {} : { unread: [{ date, ...mostTaken(panel) }] };

/** Of readings that nobody knows again it says nothing. */
const leftOf = (
  at: { readonly date: string | null; readonly visit: number },
  {
    left_um,
    left_by,
    left_points,
    left_mean_um,
    left_read_um = [],
    zones = [],
  }: FilmRecordVisit['panels'][number],
): Pick<RecordedRemoval, 'left'> =>
  left_um === undefined || left_points === undefined || left_mean_um === undefined
    ? {}
    : {
        left: [
          {
            ...at,
            most: micrometres(left_um),
            zones: Object.fromEntries(
              zones.flatMap(({ zone, left_um: left }) =>
                left === undefined ? [] : [[zone, micrometres(left)]],
              ),
            ),
            points: left_points,
            isNearLine: left_by === 'near-line',
            mean: micrometres(left_mean_um),
            read: left_read_um.map(micrometres),
          },
        ],
      };

const asTaken = ({ taken_um, taken_sd_um }: Pick<WrittenPlace, 'taken_um' | 'taken_sd_um'>) => ({
  mean: micrometres(taken_um ?? 0),
  sd: micrometres(taken_sd_um ?? 0),
});

/** Where the panel lost no more than might go, a place of it did. */
const deepestOf = (over: Taken, places: readonly WrittenPlace[]) =>
  places.reduce((most, { taken_um = 0, taken_sd_um }) => {
    const there = asTaken({ taken_um: over.taken_um + taken_um, taken_sd_um });
    return there.mean > most.mean ? there : most;
  }, asTaken(over));

/** Of a panel in zones, what is told of the first that surely lost more than might go from it, else perhaps. */
function overrunOf(
  { date, places = [] }: Pick<KnownVisit, 'date' | 'places'>,
  { zones = [], ...panel }: FilmRecordVisit['panels'][number],
): { readonly overruns?: readonly Overrun[] } {
  const parts = [panel, ...zones];
  const over =
    parts.find(({ over_allowed }) => over_allowed === true) ??
    parts.find(({ over_allowed }) => over_allowed === 'perhaps');
  if (over === undefined || date === null) return {};
  const allowed = asQuantity(micrometres, over.allowed_um ?? undefined) ?? null;
  const here = places.filter((place) => place.panel === panel.panel);
  const { mean, sd } = over.taken_um > (allowed ?? 0) ? asTaken(over) : deepestOf(over, here);
  return {
    overruns: [
      {
        date,
        mean,
        sd,
        allowed,
        surely: over.over_allowed === true,
      },
    ],
  };
}
