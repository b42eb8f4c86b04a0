/** `leastcut/gauge/1` as the command writes it: a check of a gauge on shims. */
import * as z from 'zod';
import { gaugeVerdictMeanings } from '../data/state-meanings.ts';
import { count, figure, keyOf, recordOf, resultOf, share, word } from './record-parts.ts';

const verdict = keyOf(gaugeVerdictMeanings);
const length = z.number().min(0);

const shim = z.strictObject({
  check: z.enum(['before', 'after']).nullable(),
  shim_um: length,
  shim_uncertainty_um: length,
  n: z.int().min(1),
  mean_um: z.number(),
  error_um: z.number(),
  expanded_um: length,
  permitted_um: length,
  conformance_prob: share,
  verdict,
  residual_um: figure,
});

const drift = z.strictObject({
  shim_um: length,
  change_um: z.number(),
  expanded_um: length,
  proved: z.boolean(),
});

export const gaugeRecordSchema = recordOf(
  'gauge',
  resultOf('gauge', {
    instrument: word,
    serial: word,
    verdict,
    permitted_error: z.strictObject({ fixed_um: length, proportional_pct: length }),
    resolution_um: length.nullable(),
    repeatability_um: length.nullable(),
    repeatability_dof: count.nullable(),
    shims: z.array(shim).min(1),
    drift: z.array(drift),
    adjustment: z
      .strictObject({
        offset_um: z.number(),
        slope: z.number().gt(0),
        n_shims: z.int().min(1),
        verdict,
      })
      .nullable(),
  }),
);
