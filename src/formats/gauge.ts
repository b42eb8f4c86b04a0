/**
 * The gauge file, `leastcut/gauge/1`: what the maker permits a gauge to be off by, and how it did
 * against shims of known thickness. The permitted error at a thickness t is `fixed_um` +
 * `proportional_pct`/100 · t. A shop can write the first by hand from the instrument's data sheet.
 */
import * as z from 'zod';
import { type Micrometres, micrometres } from '../base/units.ts';
import { ADJUSTABLE, type GaugeAdjustment } from '../film/gauge/gauge-adjustment.ts';
import type { GaugeVerdict } from '../film/gauge/gauge-check.ts';
import { advised } from './json/advised.ts';
import { asQuantity, given } from './json/given.ts';
import { date, note, text } from './json/setting-values.ts';
import { settingsReader } from './json/settings-reader.ts';
import { micrometreAdvice } from './trade-words.ts';

/** Within the guard bands of JCGM 106, or between them. */
const verdict = z.enum(['pass', 'fail', 'undecided']);

const thicknessUm = (least: number, most: number) =>
  advised(z.number().min(least).max(most), micrometreAdvice);

const checkSchema = z.strictObject({
  check: z.enum(['before', 'after']).optional(),
  shim_um: thicknessUm(0, 3000),
  shim_uncertainty_um: thicknessUm(0, 50),
  mean_um: thicknessUm(-50, 3500),
  n: z.int().min(1).max(1_000_000),
  error_um: thicknessUm(-3500, 3500),
  expanded_um: thicknessUm(0, 1_000_000),
  verdict,
});

const driftSchema = z.strictObject({
  shim_um: thicknessUm(0, 3000),
  change_um: thicknessUm(-3500, 3500),
  expanded_um: thicknessUm(0, 1_000_000),
  proved: z.boolean(),
});

export const gaugeSchema = z.strictObject({
  $schema: z.string().optional(),
  schema: z.literal('leastcut/gauge/1'),
  instrument: text.optional(),
  serial: text.optional(),
  date: date.optional(),
  permitted_error: z.strictObject({
    fixed_um: thicknessUm(0, 50),
    proportional_pct: z.number().min(0).max(50),
  }),
  resolution_um: thicknessUm(0.01, 10).optional(),
  repeatability_um: thicknessUm(0, 3500).optional(),
  repeatability_dof: z.int().min(1).max(1_000_000).optional(),
  verdict: verdict.nullable().optional(),
  checks: z.array(checkSchema).optional(),
  drift: z.array(driftSchema).optional(),
  adjustment: z
    .strictObject({
      offset_um: thicknessUm(-ADJUSTABLE.offset, ADJUSTABLE.offset),
      slope: z.number().min(ADJUSTABLE.leastSlope).max(ADJUSTABLE.mostSlope),
    })
    .nullable()
    .optional(),
  note: note.optional(),
});

export type GaugeFileCheck = {
  readonly check?: 'before' | 'after';
  readonly shim: Micrometres;
  readonly shimUncertainty: Micrometres;
  readonly mean: Micrometres;
  /** How many readings the mean is of. */
  readonly n: number;
  readonly error: Micrometres;
  /** Half-width that holds the error with 95 % confidence. */
  readonly expanded: Micrometres;
  readonly verdict: GaugeVerdict;
};

/** How far a gauge moved on a shim between the check before the work and the one after it. */
export type GaugeFileDrift = {
  readonly shim: Micrometres;
  readonly change: Micrometres;
  readonly expanded: Micrometres;
  readonly proved: boolean;
};

export type Gauge = {
  readonly instrument?: string;
  readonly serial?: string;
  readonly date?: string;
  /** `proportional` is a share of the thickness. */
  readonly permitted: { readonly fixed: Micrometres; readonly proportional: number };
  readonly resolution?: Micrometres;
  /** `dof` is absent where only the SD is stated. */
  readonly repeatability?: { readonly sd: Micrometres; readonly dof?: number };
  /** Null before any check. */
  readonly verdict: GaugeVerdict | null;
  readonly checks: readonly GaugeFileCheck[];
  /** Empty where there was one check only. */
  readonly drift: readonly GaugeFileDrift[];
  /** What makes a reading true, where it was asked for. */
  readonly adjustment: GaugeAdjustment | null;
};

/** What a gauge file is written from. */
export type GaugeFile = z.output<typeof gaugeSchema>;

export const readGauge = settingsReader(gaugeSchema, (typed): Gauge => {
  const { permitted_error, adjustment = null } = typed;
  return {
    ...given({
      instrument: typed.instrument,
      serial: typed.serial,
      date: typed.date,
      resolution: asQuantity(micrometres, typed.resolution_um),
      repeatability: repeatabilityOf(typed),
    }),
    permitted: {
      fixed: micrometres(permitted_error.fixed_um),
      proportional: permitted_error.proportional_pct / 100,
    },
    verdict: typed.verdict ?? null,
    checks: (typed.checks ?? []).map(toCheck),
    drift: (typed.drift ?? []).map(toDrift),
    adjustment:
      adjustment === null
        ? null
        : { offset: micrometres(adjustment.offset_um), slope: adjustment.slope },
  };
});

function repeatabilityOf({
  repeatability_um,
  repeatability_dof,
}: GaugeFile): Gauge['repeatability'] {
  if (repeatability_um === undefined) return undefined;
  return { sd: micrometres(repeatability_um), ...given({ dof: repeatability_dof }) };
}

const toDrift = (typed: z.output<typeof driftSchema>): GaugeFileDrift => ({
  shim: micrometres(typed.shim_um),
  change: micrometres(typed.change_um),
  expanded: micrometres(typed.expanded_um),
  proved: typed.proved,
});

const toCheck = (typed: z.output<typeof checkSchema>): GaugeFileCheck => ({
  ...given({ check: typed.check }),
  shim: micrometres(typed.shim_um),
  shimUncertainty: micrometres(typed.shim_uncertainty_um),
  mean: micrometres(typed.mean_um),
  n: typed.n,
  error: micrometres(typed.error_um),
  expanded: micrometres(typed.expanded_um),
  verdict: typed.verdict,
});
