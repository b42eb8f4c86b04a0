/** `leastcut/survey/1`: what is known of each panel, and what may come off. */
import * as z from 'zod';
import { conditionMeanings } from '../data/state-meanings.ts';
import { facts } from './facts-record.ts';
import { leftOutCell } from './left-out-record.ts';
import {
  count,
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

const condition = keyOf(conditionMeanings);

/** Degrees of freedom are null where nothing limits them. */
const uncertainty = z
  .strictObject({
    value_um: z.number(),
    standard_um: z.number().min(0),
    dof: figure,
    expanded_um: z.number().min(0),
    confidence_pct: percent,
    sources: z.array(
      z.strictObject({ source: z.string(), sd_um: z.number().min(0), share, dof: figure }),
    ),
  })
  .nullable();

/** `value` is what more may go, in µm, once it is done, `value_otherwise` where it comes out the other way. */
const advice = remark.extend({
  value_otherwise: figure,
  points: count.nullable(),
  time_min: z.number().min(0).nullable(),
});

const estimate = z.strictObject({ mean_um: z.number(), sd_um: z.number().min(0) });

const readPoint = z.strictObject({
  point: z.string(),
  place: z.enum(['face', 'edge', 'shut']),
  curved: z.boolean(),
  mean_um: z.number(),
  readings_um: z.array(z.number()),
});

const comparison = z.strictObject({
  compared: z.enum([
    'largest-point',
    'median',
    'mean',
    'smallest-point',
    'thinnest',
    'halves-apart',
    'halves-gap',
    'over-mirror',
  ]),
  value_um: z.number(),
  put_back_um: z.number().min(0),
  line_um: z.number(),
  by_baseline: z.boolean(),
  side: z.enum(['over', 'under']),
  beyond: condition,
  is_beyond: z.boolean(),
  standard_um: z.number().min(0),
  dof: figure,
  other_side_prob: share,
});

const why = z
  .strictObject({
    readings: z.array(readPoint),
    comparisons: z.array(comparison),
    beside: z.array(comparison),
    spread: z
      .strictObject({
        own_sd_um: figure,
        own_dof: z.number().min(0),
        prior_sd_um: z.number().min(0),
        prior_dof: z.number().min(0),
        sd_um: z.number().min(0),
        dof: z.number().gt(0),
      })
      .nullable(),
    thinnest: z
      .strictObject({
        content_pct: percent,
        confidence_pct: percent,
        tolerance_factor: figure,
        bound_um: figure,
        min_um: z.number(),
        gauge_margin_um: figure,
        thinnest_um: figure,
        distribution_free: z.strictObject({ confidence_pct: percent, points_needed: count }),
      })
      .nullable(),
    clear: z
      .strictObject({
        finish: z.enum(['clear-over-base', 'single-stage']),
        taken_um: z.number(),
        held: estimate.nullable(),
        under: estimate,
        by_total: estimate,
        share_g: share,
        gap_counted_um: z.number(),
        over_panel: estimate,
        gone_at_place: estimate,
        within_sd_um: z.number().min(0),
        thinnest_share_pct: percent,
        on_thinnest: estimate,
      })
      .nullable(),
    risk: z
      .strictObject({ risk_prob: share, risk_if_thin_prob: share, already_prob: share })
      .nullable(),
    doubt: z.array(
      z.strictObject({
        source: z.enum(['layers', 'removal', 'spread', 'sampling', 'gauge']),
        share,
      }),
    ),
    limits: z.array(
      z.strictObject({
        code: z.string(),
        allows_um: z.number().min(0),
        by_word_um: figure,
        room_um: figure,
        room_sd_um: figure,
        limit_risk_prob: share.nullable(),
        removal_factor: figure,
        removal_mean_um: figure,
        removal_sd_um: figure,
        together_sd_um: figure,
        sds: figure,
      }),
    ),
    flag_rule: z.enum(['other-panels', 'esd', 'grubbs', 'none']),
    ashman_d: figure,
  })
  .nullable();

const panel = zoned({
  panel: z.string(),
  n_points: count,
  points: z.array(z.string()),
  n_readings: count,
  mean_um: figure,
  sd_um: figure,
  min_um: figure,
  max_um: figure,
  median_um: figure,
  moderated_sd_um: figure,
  moderated_dof: figure,
  calibration_um: figure,
  uncertainty,
  thinnest_um: figure,
  facts: facts('record'),
  substrate: z.enum(['steel', 'aluminium', 'plastic', 'composite']),
  baseline_um: figure,
  condition,
  condition_sure: z.enum(['clear', 'near']).nullable(),
  condition_margin_um: figure,
  condition_evidence: comparison.nullable(),
  if_otherwise: z
    .strictObject({
      condition,
      budget_um: figure,
      if_word_holds_um: z.number().min(0),
      work_to_um: figure,
      risk_over_both_prob: share.nullable(),
      risk_left_prob: share.nullable(),
    })
    .nullable(),
  also: z.array(condition),
  may_be: z.array(z.strictObject({ condition, condition_prob: share, clear_um: figure })),
  evidence: z.array(remark),
  clear: z.strictObject({ mean_um: figure, sd_um: figure, low_um: figure }),
  budget_um: z.number().min(0),
  bound_by: z.string(),
  limits: z.array(remark),
  low_points: z.array(z.string()),
  high_points: z.array(z.string()),
  other_points: z.array(readPoint),
  excluded: z.array(leftOutCell),
  advice: z.array(advice),
  why,
});

export const surveyRecordSchema = recordOf(
  'survey',
  resultOf('survey', {
    settings: z.array(setting),
    template: z.string(),
    baseline_um: figure,
    baseline_expanded_um: figure,
    baseline_panels: z.array(z.string()),
    notes: z.array(remark),
    to_read: z.array(
      z.strictObject({ panel: z.string(), point: word, place: z.enum(['face', 'shut']) }),
    ),
    panels: z.array(panel),
  }),
);
