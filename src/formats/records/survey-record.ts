/** `leastcut/survey/1`: what is known of each panel, and what may come off. */
import * as z from 'zod';
import { conditionMeanings } from '../data/state-meanings.ts';
import { facts } from './facts-record.ts';
import {
  count,
  figure,
  keyOf,
  recordOf,
  remark,
  resultOf,
  setting,
  zoned,
} from './record-parts.ts';

const condition = keyOf(conditionMeanings);

const panel = zoned({
  panel: z.string(),
  n_points: count,
  n_readings: count,
  mean_um: figure,
  sd_um: figure,
  min_um: figure,
  max_um: figure,
  median_um: figure,
  moderated_sd_um: figure,
  moderated_dof: figure,
  calibration_um: figure,
  thinnest_um: figure,
  facts,
  condition,
  also: z.array(condition),
  evidence: z.array(remark),
  clear: z.strictObject({ mean_um: figure, sd_um: figure, low_um: figure }),
  budget_um: z.number().min(0),
  bound_by: z.string(),
  limits: z.array(remark),
  low_points: z.array(z.string()),
  high_points: z.array(z.string()),
  advice: z.array(remark),
});

export const surveyRecordSchema = recordOf(
  'survey',
  resultOf('survey', {
    settings: z.array(setting),
    template: z.string(),
    baseline_um: figure,
    notes: z.array(remark),
    panels: z.array(panel),
  }),
);
