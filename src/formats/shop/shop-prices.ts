/**
 * What a shop charges, in its shop file. Amounts are whole numbers of the currency's minor unit, so
 * that no price is ever a fraction; a preset of tax gives whatever beside it is left out.
 */
import * as z from 'zod';
import { roundTo } from '../../base/rounding.ts';
import { PERCENT_DECIMALS, roundingModes, shareOfPercent } from '../../work/money.ts';
import type { MaterialPrice, PriceList, QuoteKind } from '../../work/price-list.ts';
import { type TaxRule, taxLevels } from '../../work/tax.ts';
import { currencies } from '../data/currencies.ts';
import { type TaxPresetName, taxPresetNames, taxPresets } from '../data/tax-presets.ts';
import { advised, keysAdvised } from '../json/advised.ts';
import { given } from '../json/given.ts';
import { anyOf, has, hasSuch, not } from '../json/rule-words.ts';
import { note, shownName, text } from '../json/setting-values.ts';
import { quoted } from '../json/shorten.ts';
import { yesOrNoAdvice } from '../trade-words.ts';
import {
  currencyAdvice,
  minorAdvice,
  modeAdvice,
  priceKeyAdvice,
  taxLevelAdvice,
} from './price-words.ts';

/** Beyond any price of a job, and far within what a number holds exactly. */
const MOST_MINOR = 1_000_000_000_000;
const MOST_PACK = 1_000_000;

const minor = advised(z.int().min(0).max(MOST_MINOR), minorAdvice);

const percentUpTo = (most: number) =>
  z
    .number()
    .min(0)
    .max(most)
    .refine((percent) => roundTo(percent, PERCENT_DECIMALS) === percent, {
      message: `has more than ${PERCENT_DECIMALS} digits after the point`,
      params: { hint: `round it to ${PERCENT_DECIMALS} digits` },
    });

const materialUnits = ['ml', 'pieces', 'm'] as const;

const materialPrice = z.strictObject({
  id: text,
  pack: z.int().min(1).max(MOST_PACK),
  unit: z.enum(materialUnits),
  price_minor: minor,
  stock: z.number().min(0).max(MOST_PACK).optional(),
  note: note.optional(),
});

const materials = z
  .array(materialPrice)
  .superRefine((entries, context) => {
    const ids = entries.map(({ id }) => id);
    for (const [i, id] of ids.entries()) {
      if (ids.indexOf(id) === i) continue;
      context.addIssue({
        code: 'custom',
        path: [i, 'id'],
        message: `names ${quoted(id)} again`,
        params: { hint: 'keep one of the two' },
      });
    }
  })
  .describe('a list in brackets of packs, each with id, pack, unit and price_minor');

const mode = advised(z.enum(roundingModes), modeAdvice);

const tax = z
  .strictObject({
    preset: z.enum(taxPresetNames).optional(),
    name: shownName.optional(),
    rate_pct: percentUpTo(100).optional(),
    level: advised(z.enum(taxLevels), taxLevelAdvice).optional(),
    rounding: mode.optional(),
    included: z.boolean().optional(),
    note: note.optional(),
  })
  .superRefine(({ preset, rate_pct, level, rounding, included }, context) => {
    const usual = preset === undefined ? undefined : taxPresets[preset];
    const stated = {
      rate_pct: rate_pct ?? usual?.ratePct ?? undefined,
      level: level ?? usual?.level,
      rounding: rounding ?? usual?.rounding,
      included: included ?? usual?.included,
    };
    const lacks = Object.entries(stated).flatMap(([key, value]) =>
      value === undefined ? [key] : [],
    );
    if (lacks.length === 0) return;
    context.addIssue({
      code: 'custom',
      path: [],
      message: `does not say ${lacks.join(', ')}`,
      params: {
        hint: `say ${lacks.length === 1 ? 'it' : 'them'}${usual === undefined ? `, or a preset: ${taxPresetNames.join(', ')}` : ''}`,
        lacks: preset === undefined ? [...lacks, 'preset'] : lacks,
      },
    });
  })
  .meta(
    anyOf(
      has('rate_pct', 'level', 'rounding', 'included'),
      hasSuch('preset', {
        enum: taxPresetNames.filter((name) => taxPresets[name].ratePct !== null),
      }),
      has('preset', 'rate_pct'),
    ),
  );

const labour = z
  .union([
    minor,
    z.strictObject({
      wash: minor.optional(),
      survey: minor.optional(),
      polish: minor.optional(),
      interior: minor.optional(),
      protect: minor.optional(),
      other: minor.optional(),
    }),
  ])
  .describe('the price of an hour, or one by skill: { "polish": 5400, "other": 4200 }');

export const pricesObject = keysAdvised(
  z
    .strictObject({
      currency: advised(
        z.enum([...currencies.keys()]).describe('a currency by its three letters, such as "EUR"'),
        currencyAdvice,
      ),
      kind: z.enum(['estimate', 'quotation']).optional(),
      labour_minor_per_h: advised(labour, minorAdvice).optional(),
      materials: materials.optional(),
      markup_pct: percentUpTo(1000).optional(),
      fixed: z
        .array(
          z.strictObject({
            name: shownName,
            price_minor: minor,
            tax_pct: percentUpTo(100).optional(),
          }),
        )
        .describe('a list in brackets of what every job is charged, each with name and price_minor')
        .optional(),
      minimum_minor: minor.optional(),
      discount_pct: percentUpTo(100).optional(),
      discount_minor: minor.optional(),
      tax: tax.optional(),
      rounding: mode.optional(),
      cash_rounding_minor: z.int().min(1).max(MOST_PACK).optional(),
      deposit_pct: percentUpTo(100).optional(),
      validity_days: z.int().min(0).max(3650).optional(),
      contact: note.optional(),
      terms: note.optional(),
      example: advised(z.boolean(), yesOrNoAdvice).optional(),
      note: note.optional(),
    })
    .superRefine(({ discount_pct, discount_minor }, context) => {
      if (discount_pct === undefined || discount_minor === undefined) return;
      context.addIssue({
        code: 'custom',
        path: ['discount_minor'],
        message: 'is a second discount beside discount_pct',
        params: { hint: 'keep one of the two', key: true },
      });
    })
    .meta(not(has('discount_pct', 'discount_minor'))),
  priceKeyAdvice,
);

type TypedPrices = z.output<typeof pricesObject>;

/** A price list and what else a quote says. */
export type Prices = {
  readonly list: PriceList;
  /** Null where the file does not say. */
  readonly kind: QuoteKind | null;
  readonly taxPreset: TaxPresetName | null;
  /** Whether the file says anything of tax. */
  readonly taxSaid: boolean;
  readonly validityDays: number | null;
  /** Address, telephone: under the name of the shop. */
  readonly contact: readonly string[];
  readonly terms: readonly string[];
};

export function toPrices(typed: TypedPrices): Prices {
  const { currency: code, tax: said } = typed;
  const currency = currencies.get(code);
  if (currency === undefined) throw new Error(`no currency ${code}`);
  return {
    list: {
      currency,
      labour: toLabour(typed.labour_minor_per_h),
      materials: (typed.materials ?? []).map(toMaterial),
      markup: shareOfPercent(typed.markup_pct ?? 0),
      fixed: (typed.fixed ?? []).map(({ name, price_minor, tax_pct }) => ({
        name,
        price: BigInt(price_minor),
        taxShare: tax_pct === undefined ? null : shareOfPercent(tax_pct),
      })),
      minimum: BigInt(typed.minimum_minor ?? 0),
      discount: toDiscount(typed),
      tax: toTax(said),
      rounding: typed.rounding ?? 'half-up',
      cashStep: typed.cash_rounding_minor === undefined ? null : BigInt(typed.cash_rounding_minor),
      deposit: shareOfPercent(typed.deposit_pct ?? 0),
    },
    kind: typed.kind ?? null,
    taxPreset: said?.preset ?? null,
    taxSaid: said !== undefined,
    validityDays: typed.validity_days ?? null,
    contact: linesOf(typed.contact),
    terms: linesOf(typed.terms),
  };
}

const linesOf = (said: string | readonly string[] | undefined): readonly string[] =>
  typeof said === 'string' ? [said] : (said ?? []);

function toLabour(said: TypedPrices['labour_minor_per_h']): PriceList['labour'] {
  if (typeof said !== 'object') {
    return { bySkill: new Map(), other: said === undefined ? null : BigInt(said) };
  }
  const { other, ...skills } = said;
  const bySkill = Object.entries(given(skills)).map(
    ([skill, price]) => [skill as keyof typeof skills, BigInt(price)] as const,
  );
  return { bySkill: new Map(bySkill), other: other === undefined ? null : BigInt(other) };
}

const toMaterial = ({
  id,
  pack,
  unit,
  price_minor,
  stock,
}: z.output<typeof materialPrice>): MaterialPrice => ({
  id,
  pack: BigInt(pack),
  unit,
  price: BigInt(price_minor),
  stock: stock ?? null,
});

function toDiscount({ discount_pct, discount_minor }: TypedPrices): PriceList['discount'] {
  if (discount_pct !== undefined) return { kind: 'share', share: shareOfPercent(discount_pct) };
  return discount_minor === undefined ? null : { kind: 'amount', amount: BigInt(discount_minor) };
}

/** What the file says, else the preset, else no tax. */
function toTax(said: TypedPrices['tax']): TaxRule {
  const usual = taxPresets[said?.preset ?? 'none'];
  return {
    name: said?.name ?? usual.name,
    share: shareOfPercent(said?.rate_pct ?? usual.ratePct ?? 0),
    level: said?.level ?? usual.level,
    rounding: said?.rounding ?? usual.rounding,
    included: said?.included ?? usual.included,
  };
}
