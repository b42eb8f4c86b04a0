/** A job file as values of the program. It knows the schema by its types alone: most files are read without. */
import type * as z from 'zod';
import { type Metres, type Micrometres, metres, micrometres } from '../../base/units.ts';
import type { Substrate } from '../../film/template/template.ts';
import { asQuantity, given } from '../json/given.ts';
import type { Aim, Finish, Policy } from '../json/setting-values.ts';
import type {
  clearUm,
  jobSchema,
  paintShape,
  panelSchema,
  takenUm,
  vehicleSchema,
} from './job-schema.ts';
import { type JobWork, toWork } from './job-scope.ts';

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

export function toJob(typed: z.output<typeof jobSchema>): Job {
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
