/**
 * `leastcut/plan/1`: per panel the steps, what they take and clear, and the risk; the hours of the
 * job. The record of a plan that came to a result is a file in its own right, which can be read again.
 */
import * as z from 'zod';
import { verdictMeanings } from '../data/state-meanings.ts';
import { aim } from '../setting-values.ts';
import { facts } from './facts-record.ts';
import {
  count,
  factor,
  keyOf,
  percent,
  recordOf,
  remark,
  resultOf,
  setting,
  share,
  word,
  zoned,
} from './record-parts.ts';

const step = z.strictObject({
  machine: z.string(),
  pad: z.string(),
  product: z.string(),
  sets: z.int().min(1),
  passes: z.int().min(1),
  removal_um: z.number().min(0),
  time_min: z.number().min(0),
});

const removed = z.number().min(0);
const chance = share.nullable();

const panel = zoned({
  panel: z.string(),
  verdict: keyOf(verdictMeanings),
  steps: z.array(step),
  removal_um: z.strictObject({ median: removed, mean: removed, low: removed, high: removed }),
  correction: z.strictObject({ aimed_pct: percent, expected_pct: percent }),
  risk_prob: chance,
  risk_if_thin_prob: chance,
  already_prob: chance,
  budget_um: z.number().min(0),
  bound_by: z.string(),
  facts,
  provisional: z.boolean(),
  reasons: z.array(remark),
  cautions: z.array(remark),
});

const hours = z.number().min(0);

export const planSchema = resultOf('plan', {
  settings: z.array(setting),
  template: z.string(),
  aim,
  risk_pct: percent,
  panels: z.array(panel),
  car: z.strictObject({ expected_panels_below_floor: z.number().min(0) }),
  test_spots: z.array(
    z.strictObject({
      panel: word,
      trials: count,
      hardness: z.strictObject(factor),
      depth_scale: z.strictObject(factor),
      provisional: z.boolean(),
    }),
  ),
  time: z.strictObject({ p50_h: hours, p80_h: hours, p95_h: hours }),
  vibration_points: z.number().min(0),
  materials: z.array(
    z.strictObject({ material: z.string(), quantity: z.number().min(0), unit: z.string() }),
  ),
  order: z.array(z.strictObject({ stage: z.string(), text: z.string() })),
  cautions: z.array(remark),
});

export const planRecordSchema = recordOf('plan', planSchema);
