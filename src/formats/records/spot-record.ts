/** `leastcut/spot/1`: what test spots showed, and what to try next. */
import * as z from 'zod';
import { nextMeanings, rungMeanings } from '../data/state-meanings.ts';
import { aim } from '../json/setting-values.ts';
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
} from './record-parts.ts';

const range = { low: z.number(), high: z.number() };

const spot = z.strictObject({
  spot: z.string(),
  panel: z.string(),
  combination: z.string(),
  sets: z.int().min(1),
  marks: count,
  removed_um: z.strictObject({ mean: z.number(), ...range }).nullable(),
  resolvable_um: figure,
  seen_surely_um: figure,
  defect: z.string(),
  cleared_pct: percent.nullable(),
  haze_grade: figure,
  colour_on_pad: z.boolean().nullable(),
  panel_c: figure,
});

const rung = z.strictObject({
  combination: z.string(),
  before_um_per_set: z.number().min(0),
  removal_um_per_set: z.strictObject({ median: z.number().min(0), ...range }),
  reaches_aim_prob: share,
  tried: z.boolean(),
  state: keyOf(rungMeanings),
});

export const spotRecordSchema = recordOf(
  'spot',
  resultOf('spot', {
    settings: z.array(setting),
    aim,
    spots: z.array(spot),
    hardness: z.strictObject({ ...factor, word: z.enum(['soft', 'medium', 'hard']) }),
    depth_scale: z.strictObject(factor),
    provisional: z.boolean(),
    ladder: z.array(rung),
    next: z.strictObject({ code: keyOf(nextMeanings), combination: word }),
    advice: z.array(remark),
    kept: z.strictObject({ added: count, already: count }).nullable(),
  }),
);
