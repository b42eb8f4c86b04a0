import { isZone } from '../../film/survey.ts';
import type { OnceReadAgain } from '../../tasks/quote/once-read-again.ts';
import type { QuoteResult } from '../../tasks/quote/quote-vehicle.ts';
import { type Minor, percentOfShare } from '../../work/money.ts';
import type { QuoteLine, Thousandths } from '../../work/price-job.ts';
import { type MaterialPrice, packsWithoutTax } from '../../work/price-list.ts';
import { type Marginal, marginal, type QuoteOption } from '../../work/quote-option.ts';
import { stageCosts } from '../../work/stage-costs.ts';
import { type NeededMaterial, neededMaterials } from '../../work/to-buy.ts';
import { envelope, type RecordContext, remarkRecord } from '../envelope.ts';
import type { MachineRecord } from '../model.ts';
import { recorded, recordedOrNull } from '../recorded.ts';
import { optionFigures, optionHours } from './option-figures.ts';
import { notesOfAim, optionNotes } from './option-notes.ts';
import { validUntil } from './quote-validity.ts';
import { isPriced } from './quote-words.ts';

export type QuoteRecordContext = RecordContext & { readonly date: string | null };

/** `leastcut/quote/1`. Amounts are exact: `price-too-large` refuses what a number could not hold. */
export function quoteRecord(result: QuoteResult, context: QuoteRecordContext): MachineRecord {
  const { settings, survey, options, curve, missingKeys, exclusions } = result;
  const { kind, prices, shop, at } = settings.money;
  const said = prices.value;
  const packs = said === null ? [] : packsWithoutTax(said.list);
  const notes = optionNotes(result);
  return {
    ...envelope('quote', result, context),
    template: survey.template.id,
    aim: settings.aim.name,
    kind: kind.value,
    date: context.date,
    valid_until: isPriced(options) ? validUntil(said, context.date) : null,
    price_list: at === undefined ? null : { shop, file: at.file },
    currency: said?.list.currency.code ?? null,
    currency_digits: said?.list.currency.digits ?? null,
    tax:
      said === null
        ? null
        : {
            name: said.list.tax.name,
            rate_pct: percentOfShare(said.list.tax.share),
            level: said.list.tax.level,
            rounding: said.list.tax.rounding,
            included: said.list.tax.included,
          },
    notes: survey.notes.map(remarkRecord),
    options: options.map((option, i) => ({
      ...optionRecord(option, options[i - 1], packs),
      once_read_again: onceReadAgainRecord(result.onceReadAgain.get(option.aim)),
      notes: notesOfAim(notes, option.aim).map(remarkRecord),
    })),
    curve: curve.map((option) => ({
      aimed_pct: recorded(100 * option.aim.share),
      expected_pct: recorded(100 * option.expected),
      spent_um: recordedOrNull(option.spent),
    })),
    missing_keys: missingKeys,
    exclusions: exclusions.map(({ code, text, panels }) => ({ code, text, panels })),
    terms: said?.terms ?? [],
  };
}

function optionRecord(
  option: QuoteOption,
  before: QuoteOption | undefined,
  packs: readonly MaterialPrice[],
): MachineRecord {
  const { plan, work, charged, priced } = option;
  const hours = (chance: number) => optionHours(option, chance);
  return {
    ...optionFigures(option),
    expected_panels_below_floor: recorded(plan.expectedPanelsBelowFloor),
    time: { p50_h: hours(0.5), p80_h: hours(0.8), p95_h: hours(0.95) },
    charged_min: charged,
    overrun_prob: recordedOrNull(option.overrun),
    days: charged === null ? null : work.days.length,
    days_p80: charged === null ? null : work.daysP80,
    lines: (priced?.lines ?? []).map(lineRecord),
    subtotal_minor: minorOrNull(priced?.subtotal),
    tax_minor: minorOrNull(priced?.tax),
    total_minor: minorOrNull(priced?.total),
    payable_minor: minorOrNull(priced?.payable),
    deposit_minor: minorOrNull(priced?.deposit ?? undefined),
    per_extra_pct: before === undefined ? null : marginalRecord(marginal(before, option)),
    short: option.short.map(shortRecord),
    materials: (charged === null ? [] : neededMaterials(work, packs)).map(materialRecord),
    stage_costs: (charged === null ? [] : stageCosts(work, packs)).map(({ stage, materials }) => ({
      stage,
      materials_minor: Number(materials),
    })),
    towel_loads: charged === null ? 0 : work.towelLoads,
  };
}

const onceReadAgainRecord = (of: OnceReadAgain | undefined): MachineRecord | null =>
  of === undefined
    ? null
    : {
        panels: of.panels.map(({ id }) => id),
        time: { p50_h: recorded(of.p50 / 60), p80_h: recorded(of.p80 / 60) },
        charged_min: of.charged,
        total_minor: minorOrNull(of.total ?? undefined),
      };

const shortRecord = ({ survey, verdict, expected, reasons }: QuoteOption['short'][number]) => ({
  panel: survey.panel.id,
  zone: isZone(survey) ? survey.zone : null,
  verdict,
  expected_pct: recorded(100 * expected),
  reasons: reasons.map(remarkRecord),
});

const materialRecord = (needed: NeededMaterial) => ({
  id: needed.id,
  material: needed.material,
  quantity: recorded(needed.quantity),
  used_up: recorded(needed.usedUp),
  lasts: needed.lasts,
  unit: needed.unit,
  pack: needed.listed === null ? null : Number(needed.listed.pack),
  price_minor: minorOrNull(needed.listed?.price),
  stock: needed.listed?.stock ?? null,
  to_buy: needed.toBuy,
});

export const lineRecord = ({ kind, id, name, unitPrice, taxShare, amount, tax }: QuoteLine) => ({
  kind,
  id,
  name,
  quantity: unitPrice === null ? null : quantityOf(unitPrice.quantity),
  unit: unitPrice?.unit ?? null,
  price_minor: minorOrNull(unitPrice?.price),
  per: unitPrice === null ? null : Number(unitPrice.per),
  markup_pct: unitPrice === null ? null : percentOfShare(unitPrice.markup),
  tax_pct: percentOfShare(taxShare),
  amount_minor: Number(amount),
  tax_minor: Number(tax),
});

const quantityOf = (quantity: Thousandths): number => recorded(Number(quantity) / 1000);

export const minorOrNull = (amount: Minor | undefined): number | null =>
  amount === undefined ? null : Number(amount);

const marginalRecord = (further: Marginal | null) =>
  further === null
    ? null
    : {
        price_minor: further.price === null ? null : Number(further.price),
        spent_um: recorded(further.film),
      };
