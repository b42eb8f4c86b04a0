/**
 * `leastcut/plan/1`: per panel the steps, what they take and clear, and the risk; the hours of the
 * job. The record of a plan that came to a result is a file in its own right, which can be read again.
 */
import * as z from 'zod';
import { verdictMeanings } from '../data/state-meanings.ts';
import { aim } from '../json/setting-values.ts';
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
import { jobHours, workShape } from './work-record.ts';

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

const removal = z.strictObject({ median: removed, mean: removed, low: removed, high: removed });

/** A spot at one deep defect; none of its own in a zone, where it stands with the panel. */
const local = z.strictObject({
  defect: z.string(),
  grade: z.number().min(0).max(5),
  steps: z.array(step),
  removal_um: removal,
  cleared_pct: percent,
  risk_prob: chance,
  /** A plan of an earlier version has none. */
  at_place: z.strictObject({ removal_um: removed, budget_um: removed }).nullable().optional(),
  reasons: z.array(remark),
});

const why = z
  .strictObject({
    depth_um: z.number().min(0),
    looked_at: count,
    limits: z.array(remark),
    rejected: z.array(
      remark.extend({
        kind: z.enum(['milder', 'stronger', 'quicker']),
        steps: z.array(step.pick({ machine: true, pad: true, product: true, sets: true })),
        removal_um: removed,
        time_min: z.number().min(0),
        expected_pct: percent.nullable(),
      }),
    ),
  })
  .nullable();

const panel = zoned({
  panel: z.string(),
  verdict: keyOf(verdictMeanings),
  steps: z.array(step),
  removal_um: removal,
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
  local: z.array(local),
  why,
});

export const planSchema = resultOf('plan', {
  settings: z.array(setting),
  template: z.string(),
  aim,
  risk_pct: percent,
  panels: z.array(panel),
  car: z.strictObject({
    expected_panels_below_floor: z.number().min(0),
    /** A plan of an earlier version has none. */
    panels_below_floor_already: z.number().min(0).optional(),
  }),
  test_spots: z.array(
    z.strictObject({
      panel: word,
      trials: count,
      hardness: z.strictObject(factor),
      depth_scale: z.strictObject(factor),
      provisional: z.boolean(),
    }),
  ),
  time: jobHours,
  vibration_points: z.number().min(0),
  materials: z.array(
    z.strictObject({ material: z.string(), quantity: z.number().min(0), unit: z.string() }),
  ),
  order: z.array(z.strictObject({ stage: z.string(), text: z.string() })),
  ...workShape,
  cautions: z.array(remark),
});

export const planRecordSchema = recordOf('plan', planSchema);
