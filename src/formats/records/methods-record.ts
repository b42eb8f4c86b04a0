/** `leastcut/methods/1`: what the shop works with, or one thing of it with the numbers behind it. */

import * as z from 'zod';
import { STAGES } from '../../correction/removal/catalogue.ts';
import { basisMeanings } from '../data/state-meanings.ts';
import {
  count,
  factor,
  figure,
  keyOf,
  origin,
  recordOf,
  resultOf,
  share,
  word,
} from './record-parts.ts';

const stages = z.array(z.enum(STAGES));

const machine = z.strictObject({
  machine: z.string(),
  name: z.string(),
  motion: z.enum(['rotary', 'orbital', 'hand']),
  rpm: figure,
  throw_mm: figure,
  orbits_per_min: figure,
  forced_rpm: figure,
  pad_mm: z.number().gt(0),
  force_n: z.number().gt(0),
  arm_speed_m_per_s: z.number().gt(0),
});

const thing = z.strictObject({
  id: z.string(),
  name: z.string(),
  factor: z.number().gt(0),
  haze: z.number().min(0),
  stages,
});

const range = z.strictObject({
  median: z.number().min(0),
  low: z.number().min(0),
  high: z.number().min(0),
  ln_sd: z.number().min(0),
});

const combination = z.strictObject({
  combination: z.string(),
  machine: z.string(),
  pad: z.string(),
  product: z.string(),
  removal_um_per_set: range,
  derived_um_per_set: range,
  measured_um_per_set: range.nullable(),
  learned_um_per_set: range.nullable(),
  observations: count,
  vehicles: count,
  basis: z.enum(['learned', 'related', 'measured', 'derived']),
  min_per_section: z.number().gt(0),
  min_per_m2: z.number().gt(0),
  haze: z.number().min(0),
  stages,
});

const number = z.strictObject({
  name: z.string(),
  value: z.number(),
  unit: z.string(),
  basis: keyOf({ ...basisMeanings, stated: '' }),
  source: z.string(),
  origin,
  where: z.string(),
  id: word,
});

const chainLine = z.strictObject({
  name: z.string(),
  value: z.number(),
  unit: z.string(),
  formula: z.string(),
  range: range.nullable(),
});

const heat = z.strictObject({
  skin: z.string(),
  per_pass_k: z.number(),
  per_set_k: z.number(),
  per_step_k: z.number(),
  reached_c: z.number(),
  verdict: z.enum(['cool', 'caution', 'stop']),
  standing_s: z.number().min(0),
});

const ownRates = z
  .strictObject({
    file: z.string(),
    observations: count,
    vehicles: count,
    by_eye: count,
    not_known: count,
    usual_paint: z.strictObject(factor),
    foretelling: z
      .strictObject({
        error_um_per_set: z.number().min(0),
        built_in_error_um_per_set: z.number().min(0),
        noise_um_per_set: z.number().min(0),
        within_range: count,
        vehicles_nearer: count,
      })
      .nullable(),
    observed: z.array(
      z.strictObject({
        line: figure,
        day: z.string(),
        vehicle: word,
        panel: word,
        worked: z.array(z.strictObject({ combination: z.string(), sets: z.int().min(1) })),
        removed_um: z.number(),
        standard_error_um: z.number().gt(0),
        foretold_um: z.number().min(0),
        built_in_um: z.number().min(0),
        place_prob: share,
      }),
    ),
  })
  .nullable();

const material = z.strictObject({
  id: z.string(),
  material: z.string(),
  unit: z.enum(['ml', 'pieces', 'm']),
  uses: z.array(
    z.strictObject({
      quantity: z.number().gt(0),
      per: z.enum([
        'job',
        'wheels',
        'vehicle-area',
        'worked-area',
        'worked-trim',
        'set-area',
        'fresh-pad',
        'section',
      ]),
    }),
  ),
  used_by: z.array(z.string()),
});

export const methodsRecordSchema = recordOf(
  'methods',
  resultOf('methods', {
    own_rates: ownRates,
    machines: z.array(machine),
    pads: z.array(thing),
    products: z.array(thing),
    combinations: z.array(combination),
  }),
  resultOf('methods', {
    own_rates: ownRates,
    shown: z.enum(['combination', 'machine', 'pad', 'product']),
    id: z.string(),
    name: z.string(),
    owned: z.boolean(),
    numbers: z.array(number),
    combinations: z.array(combination),
    chain: z.array(chainLine).nullable(),
    heat: z.array(heat).nullable(),
    compared_with: word,
    compared_times: figure,
    measured_at: word,
  }),
  resultOf('methods', { materials: z.array(material) }),
);
