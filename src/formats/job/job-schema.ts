/**
 * The job file, `leastcut/job/1`: what is known of one vehicle besides its readings. Every key but
 * `schema` may be left out; what is left out comes from the shop or the built-in defaults. What is
 * said of a panel stands above what is said of the car.
 *
 * `taken_um` is what earlier work took, film that is on record apart: 0 where it is known that nothing
 * was, "unknown" where nobody knows; with an SD where what is stated may be off. `clear_um` of a panel is what is on it now; of the car, the clear
 * as it was painted, from which earlier work is then taken. `under_um` is all that lies under the clear.
 */
import * as z from 'zod';
import type { Substrate } from '../../film/template/template.ts';
import { advised } from '../json/advised.ts';
import {
  aim,
  between,
  finish,
  optionalNote,
  optionalText,
  policy,
  riskPct,
  shownName,
  text,
  wholeBetween,
} from '../json/setting-values.ts';
import { daysAdvice, layerAdvice, takenAdvice } from '../trade-words.ts';
import { optionalYesOrNo, workShape } from './work-schema.ts';

const substrates = ['steel', 'aluminium', 'plastic', 'composite'] as const satisfies Substrate[];

const MOST_TAKEN = 100;
export const takenUm = advised(
  z
    .union([
      between(0, MOST_TAKEN),
      z.literal('unknown'),
      z.strictObject({
        value: between(0, MOST_TAKEN),
        sd: between(0, 20),
      }),
    ])
    .describe(`a number from 0 to ${MOST_TAKEN}, "unknown", or { "value": 3, "sd": 1 }`),
  takenAdvice,
);
const paintedDaysAgo = advised(wholeBetween(0, 100_000), daysAdvice);
const sdUm = between(0.1, 50);

/** A layer's thickness as a number, or with what it may be off by. */
const layerUm = (most: number, example: string) =>
  advised(
    z
      .union([between(0, most), z.strictObject({ value: between(0, most), sd: sdUm })])
      .describe(`a number from 0 to ${most}, or ${example}`),
    layerAdvice,
  );

export const clearUm = layerUm(200, '{ "value": 45, "sd": 3 }');
const underUm = layerUm(400, '{ "value": 72, "sd": 4 }');

const optionalName = shownName.optional();

export const vehicleSchema = z.strictObject({
  id: optionalName,
  make: optionalName,
  model: optionalName,
  year: wholeBetween(1880, 2200).optional(),
  colour: optionalName,
  owner: optionalName,
  length_m: between(1, 20).optional(),
  width_m: between(0.5, 4).optional(),
  height_m: between(0.5, 5).optional(),
  note: optionalNote,
});

/** What may be said of the car and of a panel alike. */
export const paintShape = {
  finish: finish.optional(),
  taken_um: takenUm.optional(),
  galvanised: optionalYesOrNo,
  covered: optionalYesOrNo,
  painted_days_ago: paintedDaysAgo.optional(),
  clear_um: clearUm.optional(),
  under_um: underUm.optional(),
};

export const panelSchema = z.strictObject({
  ...paintShape,
  substrate: z.enum(substrates).optional(),
  clear_coat_failure: optionalYesOrNo,
  note: optionalNote,
});

export const jobSchema = z.strictObject({
  $schema: z.string().optional(),
  schema: z.literal('leastcut/job/1'),
  vehicle: vehicleSchema.optional(),
  template: optionalText,
  gauge: optionalText,
  aim: aim.optional(),
  risk_pct: riskPct.optional(),
  policy: policy.optional(),
  colour_depth: z.enum(['light', 'dark']).optional(),
  hardness: z.enum(['soft', 'medium', 'hard', 'unknown']).optional(),
  floor_um: between(10, 300).optional(),
  ...workShape,
  ...paintShape,
  film_record: optionalText,
  panels: z.record(text, panelSchema).optional(),
  note: optionalNote,
});
