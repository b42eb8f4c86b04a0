/**
 * The job file, `leastcut/job/1`: what is known of one vehicle besides its readings. Every key but
 * `schema` may be left out; what is left out comes from the shop or the built-in defaults. What is
 * said of a panel stands above what is said of the car.
 *
 * `taken_um` is what earlier work took, film that is on record apart: 0 where it is known that nothing
 * was, "unknown" where nobody knows; with an SD where what is stated may be off. `clear_um` of a panel is what is on it now; of the car, the clear
 * as it was painted, from which earlier work is then taken. `under_um` is all that lies under the clear.
 */
import * as z from 'zod';
import { type Metres, type Micrometres, metres, micrometres } from '../../base/units.ts';
import type { Substrate } from '../../film/template/template.ts';
import { advised } from '../json/advised.ts';
import {
  type Aim,
  aim,
  asQuantity,
  between,
  type Finish,
  finish,
  given,
  optionalNote,
  optionalText,
  type Policy,
  policy,
  riskPct,
  shownName,
  text,
  wholeBetween,
} from '../json/setting-values.ts';
import { settingsReader } from '../json/settings-reader.ts';
import { daysAdvice, layerAdvice, takenAdvice } from '../trade-words.ts';
import { type JobWork, optionalYesOrNo, toWork, withOrderChecked, workShape } from './job-scope.ts';

const substrates = ['steel', 'aluminium', 'plastic', 'composite'] as const satisfies Substrate[];

const MOST_TAKEN = 100;
const takenUm = advised(
  z
    .union([
      between(0, MOST_TAKEN),
      z.literal('unknown'),
      z.strictObject({
        value: between(0, MOST_TAKEN),
        sd: between(0, 20),
      }),
    ])
    .describe(`a number from 0 to ${MOST_TAKEN}, "unknown", or { "value": 3, "sd": 1 }`),
  takenAdvice,
);
const paintedDaysAgo = advised(wholeBetween(0, 100_000), daysAdvice);
const sdUm = between(0.1, 50);

/** A layer's thickness as a number, or with what it may be off by. */
const layerUm = (most: number, example: string) =>
  advised(
    z
      .union([between(0, most), z.strictObject({ value: between(0, most), sd: sdUm })])
      .describe(`a number from 0 to ${most}, or ${example}`),
    layerAdvice,
  );

const clearUm = layerUm(200, '{ "value": 45, "sd": 3 }');
const underUm = layerUm(400, '{ "value": 72, "sd": 4 }');

const optionalName = shownName.optional();

const vehicleSchema = z.strictObject({
  id: optionalName,
  make: optionalName,
  model: optionalName,
  year: wholeBetween(1880, 2200).optional(),
  colour: optionalName,
  owner: optionalName,
  length_m: between(1, 20).optional(),
  width_m: between(0.5, 4).optional(),
  height_m: between(0.5, 5).optional(),
  note: optionalNote,
});

/** What may be said of the car and of a panel alike. */
const paintShape = {
  finish: finish.optional(),
  taken_um: takenUm.optional(),
  galvanised: optionalYesOrNo,
  covered: optionalYesOrNo,
  painted_days_ago: paintedDaysAgo.optional(),
  clear_um: clearUm.optional(),
  under_um: underUm.optional(),
};

const panelSchema = z.strictObject({
  ...paintShape,
  substrate: z.enum(substrates).optional(),
  clear_coat_failure: optionalYesOrNo,
  note: optionalNote,
});

export const jobSchema = z.strictObject({
  $schema: z.string().optional(),
  schema: z.literal('leastcut/job/1'),
  vehicle: vehicleSchema.optional(),
  template: optionalText,
  gauge: optionalText,
  aim: aim.optional(),
  risk_pct: riskPct.optional(),
  policy: policy.optional(),
  colour_depth: z.enum(['light', 'dark']).optional(),
  hardness: z.enum(['soft', 'medium', 'hard', 'unknown']).optional(),
  floor_um: between(10, 300).optional(),
  ...workShape,
  ...paintShape,
  film_record: optionalText,
  panels: z.record(text, panelSchema).optional(),
  note: optionalNote,
});

export type JobVehicle = {
  readonly id?: string;
  readonly make?: string;
  readonly model?: string;
  readonly year?: number;
  readonly colour?: string;
  readonly owner?: string;
  readonly length?: Metres;
  readonly width?: Metres;
  readonly height?: Metres;
};

/** A layer as the job states it; without an `sd` the built-in one is meant. */
export type JobLayer = { readonly mean: Micrometres; readonly sd?: Micrometres };

export type JobPaint = {
  readonly finish?: Finish;
  /** Film removed by earlier work, as stated. */
  readonly taken?: Micrometres | 'unknown';
  /** What that may be off by, where it is stated. */
  readonly takenSd?: Micrometres;
  readonly galvanised?: boolean;
  /** Under film, wrap or coating: not worked. */
  readonly covered?: boolean;
  readonly paintedDaysAgo?: number;
  readonly clear?: JobLayer;
  readonly under?: JobLayer;
};

export type JobPanel = JobPaint & {
  readonly substrate?: Substrate;
  readonly clearCoatFailure?: boolean;
};

export type Job = JobPaint &
  JobWork & {
    readonly vehicle?: JobVehicle;
    /** The id of a template, or a path to a template file, relative to the job file. */
    readonly template?: string;
    /** Path of the gauge file, relative to the job file. */
    readonly gauge?: string;
    readonly aim?: Aim;
    readonly riskPct?: number;
    readonly policy?: Policy;
    readonly colourDepth?: 'light' | 'dark';
    readonly hardness?: 'soft' | 'medium' | 'hard' | 'unknown';
    readonly floor?: Micrometres;
    /** Path of the record of earlier visits, relative to the job file. */
    readonly filmRecord?: string;
    /** By panel name as the user writes it; a map, since a name may be any word. */
    readonly panels: ReadonlyMap<string, JobPanel>;
  };

const readShape = settingsReader(jobSchema, toJob);

export const readJob: typeof readShape = (file, text) => withOrderChecked(readShape(file, text));

function toJob(typed: z.output<typeof jobSchema>): Job {
  const panels = Object.entries(typed.panels ?? {}).map(
    ([name, panel]) => [name, toPanel(panel)] as const,
  );
  return {
    ...given({
      vehicle: typed.vehicle === undefined ? undefined : toVehicle(typed.vehicle),
      template: typed.template,
      gauge: typed.gauge,
      aim: typed.aim,
      riskPct: typed.risk_pct,
      policy: typed.policy,
      colourDepth: typed.colour_depth,
      hardness: typed.hardness,
      floor: asQuantity(micrometres, typed.floor_um),
      filmRecord: typed.film_record,
    }),
    ...toPaint(typed),
    ...toWork(typed),
    panels: new Map(panels),
  };
}

const toVehicle = ({
  length_m,
  width_m,
  height_m,
  note: _,
  ...same
}: z.output<typeof vehicleSchema>): JobVehicle =>
  given({
    ...same,
    length: asQuantity(metres, length_m),
    width: asQuantity(metres, width_m),
    height: asQuantity(metres, height_m),
  });

const toPanel = (typed: z.output<typeof panelSchema>): JobPanel => ({
  ...toPaint(typed),
  ...given({ substrate: typed.substrate, clearCoatFailure: typed.clear_coat_failure }),
});

type TypedPaint = {
  readonly [Key in keyof typeof paintShape]?: z.output<(typeof paintShape)[Key]>;
};

const toPaint = (typed: TypedPaint): JobPaint =>
  given({
    finish: typed.finish,
    ...toTaken(typed.taken_um),
    galvanised: typed.galvanised,
    covered: typed.covered,
    paintedDaysAgo: typed.painted_days_ago,
    clear: toLayer(typed.clear_um),
    under: toLayer(typed.under_um),
  });

function toTaken(typed: z.output<typeof takenUm> | undefined): Pick<JobPaint, 'taken' | 'takenSd'> {
  if (typed === undefined) return {};
  if (typeof typed === 'object') {
    return { taken: micrometres(typed.value), takenSd: micrometres(typed.sd) };
  }
  return { taken: typed === 'unknown' ? typed : micrometres(typed) };
}

function toLayer(typed: z.output<typeof clearUm> | undefined): JobLayer | undefined {
  if (typed === undefined) return undefined;
  return typeof typed === 'number'
    ? { mean: micrometres(typed) }
    : { mean: micrometres(typed.value), sd: micrometres(typed.sd) };
}
