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
  type KeptAs,
  keyOf,
  later,
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
const local = (as: KeptAs) =>
  z.strictObject({
    defect: z.string(),
    grade: z.number().min(0).max(5),
    steps: z.array(step),
    removal_um: removal,
    cleared_pct: percent,
    risk_prob: chance,
    at_place: later(z.strictObject({ removal_um: removed, budget_um: removed }).nullable(), as),
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

const panel = (as: KeptAs) =>
  zoned({
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
    n_points: later(count, as),
    mean_um: later(z.number().nullable(), as),
    sd_um: later(z.number().nullable(), as),
    facts: facts(as),
    provisional: z.boolean(),
    reasons: z.array(remark),
    cautions: z.array(remark),
    local: z.array(local(as)),
    why,
  });

const planAs = (as: KeptAs) =>
  resultOf('plan', {
    settings: z.array(setting),
    template: z.string(),
    aim,
    risk_pct: percent,
    notes: later(z.array(remark), as),
    panels: z.array(panel(as)),
    car: z.strictObject({
      expected_panels_below_floor: z.number().min(0),
      panels_below_floor_already: later(z.number().min(0), as),
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
      z.strictObject({
        id: later(z.string(), as),
        material: z.string(),
        quantity: z.number().min(0),
        unit: z.string(),
      }),
    ),
    order: z.array(z.strictObject({ stage: z.string(), text: z.string() })),
    ...workShape(as),
    cautions: z.array(remark),
  });

/** A plan that is read back: it may be of an earlier version. */
export const planSchema = planAs('file');

export const planRecordSchema = recordOf('plan', planAs('record'));

/** As it is published: for a record that was just written, and for one that is kept as a file. */
export const keptPlanSchema = recordOf('plan', planSchema);
