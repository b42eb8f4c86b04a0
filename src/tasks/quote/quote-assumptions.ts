/** What a quote rests on that nobody stated. */
import { inWords } from '../../base/in-words.ts';
import { shown } from '../../base/rounding.ts';
import { taxPresets } from '../../formats/data/tax-presets.ts';
import type { PriceList } from '../../work/price-list.ts';
import type { QuoteOption } from '../../work/quote-option.ts';
import { neededMaterials } from '../../work/to-buy.ts';
import type { Assumption } from '../settings/assumption.ts';
import type { Settings } from '../settings/settings.ts';

export const quoteAssumptions = (
  settings: Settings,
  options: readonly QuoteOption[],
): readonly Assumption[] => [
  ...kindAssumption(settings),
  ...hoursAssumption(settings),
  ...taxAssumption(settings),
  ...unpriced(settings, options),
];

const builtIn = (code: string, text: string): Assumption => ({ code, text, origin: 'built-in' });

const kindAssumption = ({ money: { kind } }: Settings): readonly Assumption[] =>
  kind.origin === 'built-in'
    ? [builtIn('quote-kind', 'an estimate, as nothing says it is a quotation')]
    : [];

function hoursAssumption({ money: { kind }, models, numbers }: Settings): readonly Assumption[] {
  if (numbers.has(`price.hours.${kind.value}_pct`)) return [];
  const share = shown(models.price.hours[kind.value], 0);
  return [builtIn('quote-hours', `priced at hours that ${share} % of such jobs keep within`)];
}

/** An item of its own rate is taxed all the same. */
function untaxedText(fixed: PriceList['fixed']): string {
  const taxed = fixed.flatMap(({ name, taxShare }) => ((taxShare ?? 0n) > 0n ? [name] : []));
  return taxed.length === 0
    ? 'no tax: the price list does not speak of any'
    : `no tax but that of ${inWords(taxed)}: the price list does not speak of any other`;
}

function taxAssumption({ money: { prices } }: Settings): readonly Assumption[] {
  const { value, origin } = prices;
  if (value === null) return [];
  if (!value.taxSaid) {
    return [builtIn('quote-tax', untaxedText(value.list.fixed))];
  }
  const { taxPreset } = value;
  if (taxPreset === null || taxPreset === 'none') return [];
  const { basis, source } = taxPresets[taxPreset];
  return [{ code: 'quote-tax', text: `${taxPreset} ${basis}, to be checked: ${source}`, origin }];
}

/** What is used up and not on the list is not charged apart, and that is said. */
function unpriced(
  { money: { prices } }: Settings,
  options: readonly QuoteOption[],
): readonly Assumption[] {
  const { value, origin } = prices;
  if (value === null) return [];
  const used = options.flatMap(({ work }) => neededMaterials(work, value.list.materials));
  const names = [
    ...new Set(
      used.flatMap(({ listed, usedUp, material }) =>
        listed === null && usedUp > 0 ? [material] : [],
      ),
    ),
  ];
  if (names.length === 0) return [];
  const code = 'quote-materials';
  if (value.list.materials.length === 0) {
    return [{ code, text: 'materials are not charged: the price list has none', origin }];
  }
  const text =
    names.length === 1
      ? '1 material is not charged, as the price list lacks it'
      : `${names.length} materials are not charged, as the price list lacks them`;
  return [{ code, text, names, origin }];
}
