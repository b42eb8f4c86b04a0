/**
 * A plan as `leastcut plan --format json` writes it, read again: what was to be worked, and what that was
 * to take.
 */
import * as z from 'zod';
import { type Diagnostic, error } from '../base/diagnostics.ts';
import { Z_95 } from '../base/stats/normal.ts';
import { sum } from '../base/sum.ts';
import { type Micrometres, micrometres, minutes } from '../base/units.ts';
import type { Verdict } from '../correction/plan/plan.ts';
import type { ExpectedRemoval } from '../film/limits/removal-risk.ts';
import { withPoints } from '../film/place-note.ts';
import type { ZoneName } from '../film/survey.ts';
import { dayFaults } from '../work/day-order.ts';
import { stageRules } from './data/stage-rules.ts';
import { verdictMeanings } from './data/state-meanings.ts';
import { stageOrderErrors } from './job/stage-order-errors.ts';
import { asQuantity } from './json/given.ts';
import type { Placed } from './json/placed.ts';
import { identifier } from './json/setting-values.ts';
import { type SettingsReader, settingsReader } from './json/settings-reader.ts';
import { keyOf } from './records/record-parts.ts';

export type ForetoldStep = {
  /** `machine/pad/product`. */
  readonly combination: string;
  readonly sets: number;
  /** Median of all its sets. */
  readonly removal: Micrometres;
};

export type ForetoldPanel = {
  readonly panel: string;
  /** Null for a panel in one zone, and for one in two as a whole. */
  readonly zone: ZoneName | null;
  readonly verdict: Verdict;
  readonly steps: readonly ForetoldStep[];
  /** Null where nothing was to be taken. */
  readonly removal: ExpectedRemoval | null;
  /** What might go; null in a plan that does not say it. */
  readonly allowed: Micrometres | null;
  /** What was read of it; null in a plan that does not say it. */
  readonly film: PlannedFilm | null;
  /** Spots at deep defects; which zone they lie in nobody says, so each holds them all. */
  readonly places: readonly PlannedPlace[];
  readonly zones: readonly ForetoldPanel[];
  /** Where in the plan it stands. */
  readonly path: readonly (string | number)[];
};

/** A place to be worked deeper than its panel. */
export type PlannedPlace = {
  readonly defect: string;
  /** The name of the point at which it is read. */
  readonly point: string;
  /** Null in a plan that does not say them. */
  readonly sets: number | null;
  /** What the spot was to take there beyond the panel's own steps, and at most, in 95 cases of 100. */
  readonly median: Micrometres;
  readonly high: Micrometres;
  /** What might go there, and what was to go in all; null in a plan that does not say it. */
  readonly budget: Micrometres | null;
  readonly inAll: Micrometres | null;
};

/** `sd` is null of one point. */
export type PlannedFilm = {
  readonly points: number;
  readonly mean: number;
  readonly sd: number | null;
};

export type PlanFile = {
  readonly vehicle: string | null;
  readonly panels: readonly ForetoldPanel[];
  /** Whether it was made by what test spots showed: what they took is gone as well. */
  readonly bySpots: boolean;
  /** What a film record said was gone from its panels before; empty without a record. */
  readonly recorded: readonly RecordedBefore[];
  /** The readings that it was made from. */
  readonly readings: readonly { readonly file: string; readonly sha256: string }[];
  readonly nearside: string | null;
};

export type RecordedBefore = {
  readonly panel: string;
  readonly mean: number;
  readonly sd: number;
  /** Paint that came on at visits on record; null where none did, or the plan does not say. */
  readonly gained: number | null;
  /** The film record; null where test spots took of it too, and the plan tells the two together. */
  readonly file: string | null;
  /** Where in the plan it stands. */
  readonly path: readonly (string | number)[];
};

const um = z.number().min(0);

const planned = {
  panel: identifier,
  verdict: keyOf(verdictMeanings),
  steps: z.array(
    z.object({
      machine: identifier,
      pad: identifier,
      product: identifier,
      sets: z.int().min(1),
      removal_um: um,
    }),
  ),
  removal_um: z.object({ median: um, high: um }),
  budget_um: um.optional(),
  n_points: z.int().min(0).optional(),
  mean_um: z.number().nullable().optional(),
  sd_um: z.number().nullable().optional(),
};

/** One without steps is a defect that is left. */
const localList = z
  .array(
    z.object({
      defect: identifier,
      steps: z.array(z.object({ sets: z.int().min(1).optional() })),
      removal_um: z.object({ median: um, high: um }),
      at_place: z.object({ removal_um: um, budget_um: um }).nullable().optional(),
    }),
  )
  .optional();

/** Stages of the job, as they stand in a plan. */
const stageList = z
  .array(z.object({ stage: identifier, wait_min: z.number().min(0).optional() }))
  .optional();
const dayList = z
  .array(
    z.object({
      day: z.int().min(1),
      stages: z.array(z.object({ stage: identifier, clock_min: z.number().min(0) })),
    }),
  )
  .optional();

/** What a film record held of a panel when the plan was made. */
const recordedFact = z
  .object({
    recorded_um: z.object({
      value: z.object({ value: um, sd: um, gained_um: um.nullable().optional() }).nullable(),
      origin: z.string(),
      where: z.string(),
    }),
  })
  .optional();

/** What is needed of the record: a plan of another minor version may hold more, or less. */
const plannedSchema = z.object({
  schema: z.literal('leastcut/plan/1'),
  vehicle: z.string().nullable(),
  order: stageList,
  stages: stageList,
  scope: z.object({ hours_per_day: z.number().positive().optional() }).optional(),
  days: dayList,
  test_spots: z.array(z.unknown()).optional(),
  inputs: z
    .array(z.object({ file: z.string(), sha256: z.string(), decisions: z.unknown() }))
    .optional(),
  settings: z.array(z.object({ name: z.string(), value: z.unknown() })).optional(),
  panels: z.array(
    z.object({
      ...planned,
      facts: recordedFact,
      local: localList,
      zones: z.array(z.object({ ...planned, zone: z.enum(['thinner', 'thicker']) })),
    }),
  ),
});

type WrittenPlan = z.output<typeof plannedSchema>;
type WrittenPanel = WrittenPlan['panels'][number];

const readShape = settingsReader(plannedSchema, (typed) => typed);

/** Whoever changed the stages of a plan by hand kept to the rules about what must come before what. */
export const readPlanFile: SettingsReader<PlanFile> = (file, text) => {
  const { value: written, diagnostics } = readShape(file, text);
  if (written === undefined) return { diagnostics };
  const { value: plan, placeOf } = written;
  const ordered = (['order', 'stages'] as const).flatMap((list) =>
    stageOrderErrors(
      (plan[list] ?? []).map(({ stage }) => stage),
      (index) => placeOf([list, index, 'stage']),
    ),
  );
  const wrong = [...ordered, ...dayErrors(plan, placeOf)];
  return wrong.length === 0
    ? { value: { value: toPlanFile(plan), placeOf }, diagnostics }
    : { diagnostics: [...diagnostics, ...wrong] };
};

/** The same of its days: no stage before its turn, none before what it waits for is over. */
function dayErrors(
  { days = [], stages = [], scope }: WrittenPlan,
  placeOf: Placed<unknown>['placeOf'],
): readonly Diagnostic[] {
  const pieces = days
    .flatMap(({ day, stages: own }, i) =>
      own.map(({ stage, clock_min }, k) => ({
        ...{ day, stage, time: minutes(clock_min) },
        path: ['days', i, 'stages', k, 'stage'],
      })),
    )
    .sort((a, b) => a.day - b.day);
  const faults = dayFaults(pieces, {
    rules: stageRules,
    waits: new Map(stages.map(({ stage, wait_min = 0 }) => [stage, minutes(wait_min)])),
    hoursPerDay: scope?.hours_per_day ?? HOURS_OF_ANY_DAY,
  });
  return faults.map(({ index, message, hint }) =>
    error('stage-order', message, { at: placeOf(pieces[index]?.path ?? ['days']), hint }),
  );
}

/** Where a plan does not say how long a day is. */
const HOURS_OF_ANY_DAY = 24;

const toPlanFile = (plan: WrittenPlan): PlanFile => ({
  vehicle: plan.vehicle,
  bySpots: (plan.test_spots ?? []).length > 0,
  recorded: recordedIn(plan.panels.flatMap(recordedBefore)),
  // Only of a file of readings is anything decided.
  readings: (plan.inputs ?? []).filter(({ decisions }) => (decisions ?? null) !== null),
  nearside: nearsideOf(plan),
  panels: plan.panels.map((panel, i) => {
    const places = placesOf(panel);
    return {
      ...toForetold(panel, ['panels', i]),
      places,
      zones: panel.zones.map((zone, j) => ({
        ...toForetold(zone, ['panels', i, 'zones', j]),
        places,
        zone: zone.zone,
      })),
    };
  }),
});

const placesOf = ({ panel, local = [] }: WrittenPanel): readonly PlannedPlace[] =>
  withPoints(local.filter(({ steps }) => steps.length > 0).map((spot) => ({ ...spot, panel }))).map(
    ({ defect, point, steps, removal_um: { median, high }, at_place: place }) => ({
      defect,
      point,
      sets: steps.every(({ sets }) => sets !== undefined)
        ? sum(steps.map(({ sets = 0 }) => sets))
        : null,
      median: micrometres(median),
      high: micrometres(high),
      budget: asQuantity(micrometres, place?.budget_um) ?? null,
      inAll: asQuantity(micrometres, place?.removal_um) ?? null,
    }),
  );

function recordedBefore({ panel, facts }: WrittenPanel, i: number): readonly RecordedBefore[] {
  const { value = null, origin, where = '' } = facts?.recorded_um ?? {};
  if (value === null) return [];
  const file = origin === 'job' ? where.replace(/:\d+$/, '') : null;
  const path = ['panels', i, 'facts', 'recorded_um'];
  const { value: mean, sd, gained_um: gained = null } = value;
  return [{ panel, mean, sd, gained, file, path }];
}

/** Without a panel of which a record alone speaks, there was none: what is gone went at test spots. */
const recordedIn = (all: readonly RecordedBefore[]): readonly RecordedBefore[] =>
  all.some(({ file }) => file !== null) ? all : [];

function nearsideOf({ settings = [] }: WrittenPlan): string | null {
  const said = settings.find(({ name }) => name === 'nearside')?.value;
  return typeof said === 'string' ? said : null;
}

const toForetold = (
  {
    panel,
    verdict,
    steps,
    removal_um: { median, high },
    budget_um,
    n_points: points = 0,
    mean_um: mean = null,
    sd_um: sd = null,
  }: Omit<WrittenPanel, 'zones' | 'facts' | 'local'>,
  path: ForetoldPanel['path'],
): ForetoldPanel => ({
  panel,
  zone: null,
  verdict,
  steps: steps.map((step) => ({
    combination: `${step.machine}/${step.pad}/${step.product}`,
    sets: step.sets,
    removal: micrometres(step.removal_um),
  })),
  removal:
    median > 0
      ? // Its high end is the 95 % quantile.
        { median: micrometres(median), logSd: Math.max(0, Math.log(high / median) / Z_95) }
      : null,
  allowed: budget_um === undefined ? null : micrometres(budget_um),
  film: points === 0 || mean === null ? null : { points, mean, sd },
  places: [],
  zones: [],
  path,
});
