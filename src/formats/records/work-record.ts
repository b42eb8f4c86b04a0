/** The whole job in a record: hours, stages, days, materials. */
import * as z from 'zod';
import { count, type KeptAs, later, percent } from './record-parts.ts';

const hours = z.number().min(0);
const word = z.string();
const amount = z.number().min(0);

export const jobHours = z.strictObject({ p50_h: hours, p80_h: hours, p95_h: hours });

const material = z.strictObject({
  id: word,
  material: word,
  quantity: amount,
  unit: z.enum(['ml', 'pieces', 'm']),
});

const scope = z.strictObject({
  wheels: z.enum(['on', 'off', 'none']),
  shuts: z.boolean(),
  decontamination: z.enum(['full', 'chemical', 'clay', 'none']),
  trim: z.boolean(),
  engine_bay: z.boolean(),
  interior: z.boolean(),
  glass: z.boolean(),
  protection: z.enum(['none', 'wax', 'sealant', 'coating']),
  arrival: z.enum(['light', 'usual', 'heavy']),
  hands: z.int().min(1),
  hours_per_day: z.number().min(1),
});

const stage = (as: KeptAs) =>
  z.strictObject({
    stage: word,
    text: word,
    part: z.enum(['correction', 'rest']),
    skill: z.enum(['wash', 'survey', 'polish', 'interior', 'protect']),
    mean_min: amount,
    p50_min: later(amount, as),
    sd_min: amount,
    wait_min: amount,
    spread_pct: percent,
    materials: z.array(material),
  });

const day = z.strictObject({
  day: z.int().min(1),
  hours_h: hours,
  stages: z.array(z.strictObject({ stage: word, clock_min: amount, panels: z.array(word) })),
  points: z.array(amount),
  a8_m_per_s2: amount,
  action_passed: z.boolean(),
});

const history = z.strictObject({
  jobs: count,
  factor: z.strictObject({ middle: amount, low: amount, high: amount }),
  stages: z.array(z.strictObject({ stage: word, records: count, factor: amount })),
  error_before_pct: amount.nullable(),
  error_after_pct: amount.nullable(),
});

export const workShape = (as: KeptAs) => ({
  scope,
  job_time: jobHours,
  stages: z.array(stage(as)),
  time_spread: z.strictObject({ stages_pct: percent, pace_pct: percent, job_pct: percent }),
  days: z.array(day),
  days_p80: count,
  job_materials: z.array(material),
  pads: z.array(z.strictObject({ id: word, material: word, ready: count, worn_out: amount })),
  towel_loads: count,
  history: history.nullable(),
});
