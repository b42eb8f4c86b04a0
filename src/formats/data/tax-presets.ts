/**
 * How some countries reckon the tax of an invoice, each with what it goes back to. None of these could
 * be held against the text it names: they are from memory, and the page of a quote says so.
 */
import type { RoundingMode } from '../../work/money.ts';
import type { TaxLevel } from '../../work/tax.ts';
import type { Basis } from '../default.ts';

export type TaxPreset = {
  readonly name: string;
  /** In per cent; null where it differs from country to country, so that the shop says it. */
  readonly ratePct: number | null;
  readonly level: TaxLevel;
  readonly rounding: RoundingMode;
  /** Whether prices are stated with the tax in them. */
  readonly included: boolean;
  readonly basis: Basis;
  readonly source: string;
};

const from = (source: string, preset: Omit<TaxPreset, 'basis' | 'source'>): TaxPreset => ({
  ...preset,
  basis: 'from memory',
  source,
});

export const taxPresets = {
  'uk-vat': from('HMRC VAT Notice 700, 17.5, total VAT may be rounded down', {
    name: 'VAT',
    ratePct: 20,
    level: 'total',
    rounding: 'down',
    included: false,
  }),
  'au-gst': from('ATO total invoice rule, half a cent goes up', {
    name: 'GST',
    ratePct: 10,
    level: 'total',
    rounding: 'half-up',
    included: true,
  }),
  'eu-e-invoice': from('EN 16931, the tax of each rate rounded on its sum', {
    name: 'VAT',
    ratePct: null,
    level: 'rate',
    rounding: 'half-up',
    included: false,
  }),
  none: from('a shop that charges no tax', {
    name: 'tax',
    ratePct: 0,
    level: 'total',
    rounding: 'half-up',
    included: false,
  }),
} as const satisfies Readonly<Record<string, TaxPreset>>;

export type TaxPresetName = keyof typeof taxPresets;
export const taxPresetNames = Object.keys(taxPresets) as [TaxPresetName, ...TaxPresetName[]];
