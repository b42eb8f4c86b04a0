/**
 * The film record, `leastcut/film-record/1`: what was taken from each panel at earlier visits, as it
 * was measured then. A difference of two means may come out under 0 and is kept as it is: what a panel
 * has lost in all is the sum over the visits, at least 0, and its variance the sum of theirs. A panel that
 * carries two films lost what the zone lost that lost most. What might go before that work stands beside it, so that
 * a loss beyond it is not forgotten.
 */
import * as z from 'zod';
import { micrometres } from '../base/units.ts';
import type { Overrun, RecordedRemoval } from '../film/film-model.ts';
import { asQuantity, date, given, identifier, note, text } from './json/setting-values.ts';
import { settingsReader } from './json/settings-reader.ts';

const readingUm = z.number().min(0).max(2000);

const pointSchema = z.strictObject({
  point: text,
  before_um: readingUm.optional(),
  after_um: readingUm.optional(),
});

const takenShape = {
  taken_um: z.number().min(-20).max(100),
  taken_sd_um: z.number().min(0).max(20),
  allowed_um: z.number().min(0).max(100).nullable().optional(),
  over_allowed: z.boolean().nullable().optional(),
  points: z.array(pointSchema).optional(),
};

const visitSchema = z.strictObject({
  date,
  panels: z.array(
    z.strictObject({
      panel: identifier,
      ...takenShape,
      zones: z
        .array(z.strictObject({ zone: z.enum(['thinner', 'thicker']), ...takenShape }))
        .optional(),
    }),
  ),
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

export type RecordedPanel = {
  /** As the record names it. */
  readonly panel: string;
  readonly taken: RecordedRemoval;
  /** Where in the record: `['visits', 0, 'panels', 2]`. */
  readonly path: readonly (string | number)[];
};

export type FilmRecord = {
  readonly vehicle?: string;
  /** Every panel of every visit, in the order of the file. */
  readonly panels: readonly RecordedPanel[];
  /** What a later visit is added to. */
  readonly file: FilmRecordFile;
};

export const filmRecordOf = (file: FilmRecordFile): FilmRecord => ({
  ...given({ vehicle: file.vehicle }),
  panels: file.visits.flatMap((visit, i) =>
    visit.panels.map((panel, j) => ({
      panel: panel.panel,
      taken: { ...mostTaken(panel), ...overrunOf(visit.date, panel) },
      path: ['visits', i, 'panels', j],
    })),
  ),
  file,
});

export const readFilmRecord = settingsReader(filmRecordSchema, filmRecordOf);

function mostTaken({ zones = [], ...panel }: FilmRecordVisit['panels'][number]): RecordedRemoval {
  const { taken_um, taken_sd_um } = zones.reduce<{ taken_um: number; taken_sd_um: number }>(
    (most, zone) => (zone.taken_um > most.taken_um ? zone : most),
    panel,
  );
  return { mean: micrometres(taken_um), sd: micrometres(taken_sd_um) };
}

/** Of a panel in zones, what is told of the first that lost more than might go from it. */
function overrunOf(
  date: string,
  { zones = [], ...panel }: FilmRecordVisit['panels'][number],
): { readonly overruns?: readonly Overrun[] } {
  const over = [panel, ...zones].find(({ over_allowed }) => over_allowed === true);
  if (over === undefined) return {};
  const allowed = asQuantity(micrometres, over.allowed_um ?? undefined) ?? null;
  const { taken_um, taken_sd_um } = over;
  return {
    overruns: [{ date, mean: micrometres(taken_um), sd: micrometres(taken_sd_um), allowed }],
  };
}
