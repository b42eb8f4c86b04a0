/** `leastcut/compare/1`: what came off each panel, what is left on it, and whether to go on. */
import * as z from 'zod';
import {
  againstPlanMeanings,
  comparedByMeanings,
  goOnMeanings,
  rateMeanings,
} from '../data/state-meanings.ts';
import {
  count,
  factor,
  figure,
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

const change = z.strictObject({ mean: z.number(), low: z.number(), high: z.number() }).nullable();
const removal = z.number().min(0);
const foretold = z.strictObject({ median: removal, low: removal, high: removal });
const names = z.array(z.string());
const comparedBy = keyOf(comparedByMeanings);

const panel = zoned({
  panel: z.string(),
  compared_by: comparedBy,
  n_pairs: count,
  n_before: count,
  n_after: count,
  removed_um: change,
  removed_sd_um: figure,
  removed_dof: figure,
  uncertainty: z.array(z.strictObject({ source: z.string(), sd_um: z.number(), share })),
  resolved: z.boolean(),
  gained: z.boolean(),
  seen_half_um: figure,
  seen_surely_um: figure,
  planned_um: foretold.nullable(),
  worked_um: foretold.nullable(),
  steps: z.array(z.strictObject({ combination: z.string(), sets: count, sets_worked: count })),
  planned_sets: count.nullable(),
  worked_sets: count.nullable(),
  against_plan: keyOf(againstPlanMeanings).nullable(),
  allowed_um: figure,
  allowed_by: z.enum(['plan', 'survey']).nullable(),
  overrun: z.array(remark),
  held_um: z.strictObject({ mean: removal, sd: removal }).nullable(),
  clear_um: z.strictObject({ mean: z.number(), sd: removal }).nullable(),
  budget_left_um: figure,
  bound_by: word,
  limits: z.array(remark),
  one_more_set: z
    .strictObject({
      combination: z.string(),
      from: z.enum(['plan', 'mildest']),
      removal_um: removal,
      risk_prob: share.nullable(),
    })
    .nullable(),
  verdict: keyOf(goOnMeanings),
  reasons: z.array(remark),
  points_apart: z.array(
    z.strictObject({
      point: z.string(),
      before_um: removal,
      after_um: removal,
      others_um: z.number(),
      lost: z.enum(['more', 'less']),
      odd: z.enum(['before', 'after']),
      swapped_um: figure,
      counted: z.boolean(),
    }),
  ),
  unpaired: z.strictObject({
    not_read_again: names,
    not_read_before: names,
    not_marked: names,
    off_the_face: names,
  }),
});

const place = z.strictObject({
  panel: z.string(),
  defect: z.string(),
  point: z.string(),
  worked_sets: count.nullable(),
  planned_um: z.strictObject({ median: removal, high: removal }),
  measured_um: z.strictObject({ value: z.number(), sd: removal }).nullable(),
  held_um: z.strictObject({ mean: removal, sd: removal }).nullable(),
  budget_um: figure,
  budget_left_um: figure,
});

const car = z.strictObject({ n_panels: count, removed_um: change });

export const compareRecordSchema = recordOf(
  'compare',
  resultOf('compare', {
    settings: z.array(setting),
    template: z.string(),
    risk_pct: percent,
    panels: z.array(panel),
    places: z.array(place),
    not_compared: z.array(
      z.strictObject({ panel: z.string(), code: z.string(), text: z.string() }),
    ),
    car,
    common_shift: z
      .strictObject({
        by_um: z.strictObject({ mean: z.number(), low: z.number(), high: z.number() }),
        over: z.enum(['plan', 'nothing']),
        n_panels: count,
        n_left_alone: count,
        as_by_rate: z.boolean(),
      })
      .nullable(),
    visits: z.array(
      z.strictObject({
        from: z.string(),
        to: z.string(),
        car,
        panels: z.array(
          z.strictObject({
            panel: z.string(),
            compared_by: comparedBy,
            removed_um: change,
            resolved: z.boolean(),
            gained: z.boolean(),
          }),
        ),
      }),
    ),
    rates: z.array(
      z.strictObject({
        combination: z.string(),
        n_panels: count,
        ...factor,
        looks: keyOf(rateMeanings).nullable(),
      }),
    ),
    gloss: z.array(
      z.strictObject({
        panel: z.string(),
        angle_deg: z.union([z.literal(20), z.literal(60), z.literal(85)]),
        n_points: z.int().min(1),
        before_gu: z.number().min(0),
        after_gu: z.number().min(0),
        gained_gu: z.strictObject({ mean: z.number(), low: figure, high: figure }),
        haze_hu: z.strictObject({ before: removal, after: removal }).nullable(),
        better_angle_deg: z.union([z.literal(20), z.literal(85)]).nullable(),
      }),
    ),
  }),
);
