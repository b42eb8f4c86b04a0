/**
 * The gauge file, `leastcut/gauge/1`: what the maker permits a gauge to be off by, and how it did
 * against shims of known thickness. The permitted error at a thickness t is `fixed_um` +
 * `proportional_pct`/100 · t. A shop can write the first by hand from the instrument's data sheet.
 */
import * as z from 'zod';
import { type Micrometres, micrometres } from '../base/units.ts';
import { advised } from './advised.ts';
import { asQuantity, date, given, note, text } from './setting-values.ts';
import { settingsReader } from './settings-reader.ts';
import { micrometreAdvice } from './trade-words.ts';

/** Within the guard bands of JCGM 106, or between them. */
const verdict = z.enum(['pass', 'fail', 'undecided']);

const thicknessUm = (least: number, most: number) =>
  advised(z.number().min(least).max(most), micrometreAdvice);

const checkSchema = z.strictObject({
  shim_um: thicknessUm(0, 3000),
  shim_uncertainty_um: thicknessUm(0, 50),
  mean_um: thicknessUm(-50, 3500),
  n: z.int().min(1).max(1000),
  error_um: thicknessUm(-500, 500),
  expanded_um: thicknessUm(0, 500),
  verdict,
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
  repeatability_um: thicknessUm(0.01, 20).optional(),
  verdict: verdict.nullable().optional(),
  checks: z.array(checkSchema).optional(),
  adjustment: z
    .strictObject({ offset_um: thicknessUm(-50, 50), slope: z.number().min(0.5).max(2) })
    .nullable()
    .optional(),
  note: note.optional(),
});

type GaugeVerdict = z.output<typeof verdict>;

export type ShimCheck = {
  readonly shim: Micrometres;
  readonly shimUncertainty: Micrometres;
  readonly mean: Micrometres;
  /** How many readings the mean is of. */
  readonly n: number;
  readonly error: Micrometres;
  /** Expanded uncertainty of the error, k = 2. */
  readonly expanded: Micrometres;
  readonly verdict: GaugeVerdict;
};

export type Gauge = {
  readonly instrument?: string;
  readonly serial?: string;
  readonly date?: string;
  /** `proportional` is a share of the thickness. */
  readonly permitted: { readonly fixed: Micrometres; readonly proportional: number };
  readonly resolution?: Micrometres;
  readonly repeatability?: Micrometres;
  /** Null before any check. */
  readonly verdict: GaugeVerdict | null;
  readonly checks: readonly ShimCheck[];
  /** What makes a reading true, where it was asked for: offset + slope · reading. */
  readonly adjustment: { readonly offset: Micrometres; readonly slope: number } | null;
};

export const readGauge = settingsReader(gaugeSchema, (typed): Gauge => {
  const { permitted_error, adjustment = null } = typed;
  return {
    ...given({
      instrument: typed.instrument,
      serial: typed.serial,
      date: typed.date,
      resolution: asQuantity(micrometres, typed.resolution_um),
      repeatability: asQuantity(micrometres, typed.repeatability_um),
    }),
    permitted: {
      fixed: micrometres(permitted_error.fixed_um),
      proportional: permitted_error.proportional_pct / 100,
    },
    verdict: typed.verdict ?? null,
    checks: (typed.checks ?? []).map(toCheck),
    adjustment:
      adjustment === null
        ? null
        : { offset: micrometres(adjustment.offset_um), slope: adjustment.slope },
  };
});

const toCheck = (typed: z.output<typeof checkSchema>): ShimCheck => ({
  shim: micrometres(typed.shim_um),
  shimUncertainty: micrometres(typed.shim_uncertainty_um),
  mean: micrometres(typed.mean_um),
  n: typed.n,
  error: micrometres(typed.error_um),
  expanded: micrometres(typed.expanded_um),
  verdict: typed.verdict,
});
