/**
 * The job file, `leastcut/job/1`: what is known of one vehicle besides its readings. Every key but
 * `schema` may be left out; what is left out comes from the shop or the built-in defaults.
 */
import * as z from 'zod';
import type { Outcome } from '../base/diagnostics.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import type { Substrate } from '../film/template.ts';
import { parseJson } from './json-text.ts';
import {
  type Aim,
  aim,
  asQuantity,
  type Finish,
  finish,
  given,
  identifier,
  type Policy,
  policy,
  riskPct,
  text,
} from './setting-values.ts';
import { validate } from './validate.ts';

const substrates = ['steel', 'aluminium', 'plastic', 'composite'] as const satisfies Substrate[];
const takenUm = z.number().min(0).max(100);

const vehicleSchema = z.strictObject({
  id: identifier.optional(),
  make: text.optional(),
  model: text.optional(),
  year: z.int().min(1880).max(2200).optional(),
  colour: text.optional(),
  owner: text.optional(),
});

const panelSchema = z.strictObject({
  finish: finish.optional(),
  taken_um: takenUm.optional(),
  substrate: z.enum(substrates).optional(),
  covered: z.boolean().optional(),
  clear_coat_failure: z.boolean().optional(),
});

export const jobSchema = z.strictObject({
  schema: z.literal('leastcut/job/1'),
  vehicle: vehicleSchema.optional(),
  template: identifier.optional(),
  aim: aim.optional(),
  risk_pct: riskPct.optional(),
  policy: policy.optional(),
  finish: finish.optional(),
  colour_depth: z.enum(['light', 'dark']).optional(),
  hardness: z.enum(['soft', 'medium', 'hard', 'unknown']).optional(),
  galvanised: z.boolean().optional(),
  painted_days_ago: z.int().min(0).optional(),
  taken_um: takenUm.optional(),
  floor_um: z.number().min(10).max(300).optional(),
  panels: z.record(text, panelSchema).optional(),
  note: z.string().optional(),
});

export type JobVehicle = {
  readonly id?: string;
  readonly make?: string;
  readonly model?: string;
  readonly year?: number;
  readonly colour?: string;
  readonly owner?: string;
};

export type JobPanel = {
  readonly finish?: Finish;
  /** Film removed by earlier work, as stated. */
  readonly taken?: Micrometres;
  readonly substrate?: Substrate;
  /** Under protective film: neither measured nor worked. */
  readonly covered?: boolean;
  readonly clearCoatFailure?: boolean;
};

export type Job = {
  readonly vehicle?: JobVehicle;
  readonly template?: string;
  readonly aim?: Aim;
  readonly riskPct?: number;
  readonly policy?: Policy;
  readonly finish?: Finish;
  readonly colourDepth?: 'light' | 'dark';
  readonly hardness?: 'soft' | 'medium' | 'hard' | 'unknown';
  readonly galvanised?: boolean;
  readonly paintedDaysAgo?: number;
  /** Film removed by earlier work over the whole vehicle, as stated. */
  readonly taken?: Micrometres;
  readonly floor?: Micrometres;
  /** By panel name as the user writes it; a map, since a name may be any word. */
  readonly panels: ReadonlyMap<string, JobPanel>;
  readonly note?: string;
};

export function readJob(file: string, text: string): Outcome<Job> {
  const { value: document, diagnostics } = parseJson(file, text);
  if (document === undefined) return { diagnostics };
  const checked = validate(jobSchema, document);
  if (checked.value === undefined) return { diagnostics: checked.diagnostics };
  return { value: toJob(checked.value), diagnostics: checked.diagnostics };
}

function toJob(typed: z.output<typeof jobSchema>): Job {
  const panels = Object.entries(typed.panels ?? {}).map(
    ([name, panel]) => [name, toPanel(panel)] as const,
  );
  return {
    ...given({
      vehicle: typed.vehicle === undefined ? undefined : given(typed.vehicle),
      template: typed.template,
      aim: typed.aim,
      riskPct: typed.risk_pct,
      policy: typed.policy,
      finish: typed.finish,
      colourDepth: typed.colour_depth,
      hardness: typed.hardness,
      galvanised: typed.galvanised,
      paintedDaysAgo: typed.painted_days_ago,
      taken: asQuantity(micrometres, typed.taken_um),
      floor: asQuantity(micrometres, typed.floor_um),
      note: typed.note,
    }),
    panels: new Map(panels),
  };
}

const toPanel = (typed: z.output<typeof panelSchema>): JobPanel =>
  given({
    finish: typed.finish,
    taken: asQuantity(micrometres, typed.taken_um),
    substrate: typed.substrate,
    covered: typed.covered,
    clearCoatFailure: typed.clear_coat_failure,
  });
