/**
 * The shop file, `leastcut/shop/1`: what a workshop has and how it works, the same for every job.
 * Machines, pads and products are named by the ids of the catalogue, which the caller passes in.
 */
import * as z from 'zod';
import type { Outcome } from '../base/diagnostics.ts';
import { type Minutes, minutes } from '../base/units.ts';
import { parseJson } from './json-text.ts';
import {
  type Aim,
  aim,
  asQuantity,
  given,
  type Policy,
  policy,
  riskPct,
  text,
} from './setting-values.ts';
import { validate } from './validate.ts';

export type KnownIds = {
  readonly machines: readonly string[];
  readonly pads: readonly string[];
  readonly products: readonly string[];
};

const durationMin = z.number().min(0).max(240);

const idList = (known: readonly string[], kind: string) =>
  z
    .array(z.enum(known).describe(`the id of a known ${kind}`))
    .min(1)
    .superRefine((ids, context) => {
      for (const [i, id] of ids.entries()) {
        if (ids.indexOf(id) === i) continue;
        context.addIssue({
          code: 'custom',
          path: [i],
          message: `names ${JSON.stringify(id)} again`,
        });
      }
    })
    .describe(`a list of ids, at least one, each of a known ${kind}`);

export const shopSchema = (known: KnownIds) =>
  z.strictObject({
    schema: z.literal('leastcut/shop/1'),
    name: text.optional(),
    machines: idList(known.machines, 'machine').optional(),
    pads: idList(known.pads, 'pad').optional(),
    products: idList(known.products, 'product').optional(),
    risk_pct: riskPct.optional(),
    policy: policy.optional(),
    aim: aim.optional(),
    minutes: z
      .strictObject({
        wipe_min_per_section: durationMin.optional(),
        pad_cleaning_min_per_section: durationMin.optional(),
        setup_min_per_combination: durationMin.optional(),
      })
      .optional(),
  });

export type Shop = {
  readonly name?: string;
  readonly machines?: readonly string[];
  readonly pads?: readonly string[];
  readonly products?: readonly string[];
  readonly riskPct?: number;
  readonly policy?: Policy;
  readonly aim?: Aim;
  readonly times?: ShopTimes;
};

/** How long the small recurring jobs take in this workshop. */
export type ShopTimes = {
  readonly wipePerSection?: Minutes;
  readonly padCleaningPerSection?: Minutes;
  readonly setupPerCombination?: Minutes;
};

export function readShop(file: string, text: string, known: KnownIds): Outcome<Shop> {
  const { value: document, diagnostics } = parseJson(file, text);
  if (document === undefined) return { diagnostics };
  const checked = validate(shopSchema(known), document);
  if (checked.value === undefined) return { diagnostics: checked.diagnostics };
  return { value: toShop(checked.value), diagnostics: checked.diagnostics };
}

function toShop(typed: z.output<ReturnType<typeof shopSchema>>): Shop {
  const { schema: _, risk_pct, minutes: times, ...same } = typed;
  return given({
    ...same,
    riskPct: risk_pct,
    times: times === undefined ? undefined : toTimes(times),
  });
}

const toTimes = (typed: {
  readonly wipe_min_per_section?: number | undefined;
  readonly pad_cleaning_min_per_section?: number | undefined;
  readonly setup_min_per_combination?: number | undefined;
}): ShopTimes =>
  given({
    wipePerSection: asQuantity(minutes, typed.wipe_min_per_section),
    padCleaningPerSection: asQuantity(minutes, typed.pad_cleaning_min_per_section),
    setupPerCombination: asQuantity(minutes, typed.setup_min_per_combination),
  });
