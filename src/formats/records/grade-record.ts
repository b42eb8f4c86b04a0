/** `leastcut/grade/1` as the command writes it: the grades of a class, or of one trainee of it. */
import * as z from 'zod';
import {
  conditionMeanings,
  gradeVerdictMeanings,
  scoreMeanings,
  verdictGroundMeanings,
} from '../data/state-meanings.ts';
import {
  count,
  figure,
  keyOf,
  percent,
  recordOf,
  resultOf,
  setting,
  share,
  word,
} from './record-parts.ts';

const length = z.number().min(0);
const attempt = z.int().min(1);
const verdict = keyOf(scoreMeanings);

const score = z.strictObject({
  panel: z.string(),
  n: attempt,
  mean_um: length,
  reference_um: length,
  difference_um: z.number(),
  shared_points: count,
  score: z.enum(['z', 'z-prime']),
  z: z.number(),
  zeta: figure,
  en: figure,
  verdict,
});

const criterion = z.strictObject({
  criterion: z.enum(['accuracy', 'coverage', 'low_points', 'repairs', 'repeatability']),
  weight: share,
  counted_pct: percent.nullable(),
  reached_pct: percent.nullable(),
});

const span = { low_um: z.number(), high_um: z.number() };

const bias = z.strictObject({
  mean_um: z.number(),
  ...span,
  z: z.number(),
  verdict,
  hint: z.string().nullable(),
});

const agreement = z.strictObject({
  n: attempt,
  mean_um: z.number(),
  sd_um: length,
  ...span,
  low_limit: z.strictObject(span),
  high_limit: z.strictObject(span),
});

const found = z.strictObject({
  found: count,
  out_of: count,
  low_pct: percent.nullable(),
  high_pct: percent.nullable(),
});

const conditions = z.strictObject({ n_panels: count, alike_pct: percent, kappa: figure });
const ownConditions = conditions.extend({
  otherwise: z.array(
    z.strictObject({
      panel: z.string(),
      condition: keyOf(conditionMeanings),
      reference_condition: keyOf(conditionMeanings),
    }),
  ),
});

const reason = z.strictObject({
  code: z.string(),
  text: z.string(),
  file: word,
  line: attempt.nullable(),
  panels: z.array(z.string()),
});

const trainee = z.strictObject({
  trainee: z.string(),
  attempt,
  attempts: attempt,
  file: z.string(),
  date: word,
  verdict: keyOf(gradeVerdictMeanings),
  verdict_because: z.array(keyOf(verdictGroundMeanings)),
  mark_pct: percent.nullable(),
  void_panels: z.array(
    z.strictObject({ panel: z.string(), void_as: z.enum(['unread', 'wrong', 'turned']) }),
  ),
  mark_if_sound_pct: percent.nullable(),
  criteria: z.array(criterion),
  scores: z.array(score),
  coverage_pct: percent.nullable(),
  panels_read: count.nullable(),
  points_read: count.nullable(),
  bias: bias.nullable(),
  agreement: agreement.nullable(),
  slipped_panels: z.array(z.string()),
  repeatability_um: length.nullable(),
  repeatability_dof: count.nullable(),
  low_spots: found.nullable(),
  repaired_panels: found.nullable(),
  missed: z.array(
    z.strictObject({ panel: z.string(), what: z.enum(['panel', 'low-spot', 'repair']) }),
  ),
  conditions: ownConditions.nullable(),
  reasons: z.array(reason),
});

const classPanel = z.strictObject({
  panel: z.string(),
  reference_um: length,
  reference_u_um: length,
  n_points: count,
  condition: keyOf(conditionMeanings),
  low_spot: word,
  n_trainees: count,
  robust_mean_um: length.nullable(),
  robust_sd_um: length.nullable(),
  satisfactory_pct: percent.nullable(),
});

const gaugeRr = z.strictObject({
  parts_are: z.enum(['marked-points', 'panels']),
  n_parts: count,
  n_trainees: count,
  n_trials: count,
  repeatability_um: length,
  reproducibility_um: length,
  interaction_um: length,
  interaction_prob: share,
  interaction_pooled: z.boolean(),
  rr_um: length,
  part_um: length,
  total_um: length,
  study_variation_pct: percent.nullable(),
  ndc: attempt.nullable(),
});

export const gradeRecordSchema = recordOf(
  'grade',
  resultOf('grade', {
    settings: z.array(setting),
    reference: z.strictObject({
      kind: z.enum(['expert', 'consensus']),
      file: word,
      assessor: word,
      date: word,
    }),
    sigma_pt_um: z.number().gt(0),
    sigma_pt_from: z.enum(['stated', 'class']),
    rubric: word,
    pass_mark_pct: percent,
    trainees: z.array(trainee),
    class: z.strictObject({
      n_trainees: count,
      n_graded: count,
      panels: z.array(classPanel),
      low_spots: found,
      repaired_panels: found,
      conditions: conditions.nullable(),
      gauge_rr: gaugeRr.nullable(),
      left_out: z.array(
        z.strictObject({
          trainee: z.string(),
          left_out_as: z.enum([
            'slip',
            'made-up',
            'copied',
            'gauge-drift',
            'not-following',
            'half-unread',
            'repeats-alike',
            'few-marks',
          ]),
        }),
      ),
      copied: z.array(
        z.strictObject({
          trainees: z.array(z.string()).min(1).max(2),
          from_reference: z.boolean(),
          identical: z.enum(['file', 'readings']).nullable(),
          same: count,
          out_of: count,
          copied_panels: z.array(z.string()),
          apart_um: length.nullable(),
          usual_um: length.nullable(),
        }),
      ),
    }),
  }),
);
