/**
 * `leastcut/quote/1`: for each aim what it clears, spends and leaves, its hours and its price with every
 * line; a curve through the aims between; what is not promised. Money is in the currency's least unit.
 */
import * as z from 'zod';
import { roundingModes } from '../../work/money.ts';
import { taxLevels } from '../../work/tax.ts';
import { verdictMeanings } from '../data/state-meanings.ts';
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
} from './record-parts.ts';

const minor = z.int();
const minorOrNull = minor.nullable();
const thickness = z.number().min(0).nullable();
const hours = z.number().min(0).nullable();

const line = z.strictObject({
  kind: z.enum(['labour', 'material', 'fixed', 'discount', 'minimum']),
  id: z.string(),
  name: z.string(),
  quantity: thickness,
  unit: z.enum(['min', 'ml', 'pieces', 'm']).nullable(),
  price_minor: minorOrNull,
  per: z.int().min(1).nullable(),
  markup_pct: z.number().min(0).nullable(),
  tax_pct: percent,
  amount_minor: minor,
  tax_minor: minor,
});

const material = z.strictObject({
  id: z.string(),
  material: z.string(),
  quantity: z.number().min(0),
  used_up: z.number().min(0),
  lasts: z.boolean(),
  unit: z.enum(['ml', 'pieces', 'm']),
  pack: z.int().min(1).nullable(),
  price_minor: minorOrNull,
  stock: z.number().min(0).nullable(),
  to_buy: count.nullable(),
});

const short = z.strictObject({
  panel: z.string(),
  zone: z.enum(['thinner', 'thicker']).nullable(),
  verdict: keyOf(verdictMeanings),
  expected_pct: percent,
  reasons: z.array(remark),
});

const onceReadAgain = z.strictObject({
  panels: z.array(z.string()),
  time: z.strictObject({ p50_h: z.number(), p80_h: z.number() }),
  charged_min: count,
  total_minor: minorOrNull,
});

const option = z.strictObject({
  aim: z.string(),
  aimed_pct: percent,
  expected_pct: percent,
  spent_um: thickness,
  expected_polished_pct: percent.nullable(),
  spent_polished_um: thickness,
  left_um: figure,
  risk_prob: share.nullable(),
  expected_panels_below_floor: z.number().min(0),
  time: z.strictObject({ p50_h: hours, p80_h: hours, p95_h: hours }),
  charged_min: count.nullable(),
  overrun_prob: share.nullable(),
  days: count.nullable(),
  days_p80: count.nullable(),
  lines: z.array(line),
  subtotal_minor: minorOrNull,
  tax_minor: minorOrNull,
  total_minor: minorOrNull,
  payable_minor: minorOrNull,
  deposit_minor: minorOrNull,
  per_extra_pct: z.strictObject({ price_minor: minorOrNull, spent_um: z.number() }).nullable(),
  short: z.array(short),
  materials: z.array(material),
  stage_costs: z.array(z.strictObject({ stage: z.string(), materials_minor: minor })),
  towel_loads: count,
  once_read_again: onceReadAgain.nullable(),
  notes: z.array(remark),
});

const quoteSchema = resultOf('quote', {
  settings: z.array(setting),
  template: z.string(),
  aim: z.string(),
  kind: z.enum(['estimate', 'quotation']),
  date: word,
  valid_until: word,
  price_list: z.strictObject({ shop: z.string().nullable(), file: z.string() }).nullable(),
  currency: word,
  currency_digits: z.int().min(0).max(4).nullable(),
  tax: z
    .strictObject({
      name: z.string(),
      rate_pct: percent,
      level: z.enum(taxLevels),
      rounding: z.enum(roundingModes),
      included: z.boolean(),
    })
    .nullable(),
  notes: z.array(remark),
  options: z.array(option),
  curve: z.array(
    z.strictObject({
      aimed_pct: percent,
      expected_pct: percent,
      spent_um: thickness,
    }),
  ),
  missing_keys: z.array(z.string()),
  exclusions: z.array(
    z.strictObject({ code: z.string(), text: z.string(), panels: z.array(z.string()) }),
  ),
  terms: z.array(z.string()),
});

export const quoteRecordSchema = recordOf('quote', quoteSchema);
