/** What is said under the tables of a quote, for the shop: what has no price, falls short, is not promised, must be bought. */
import { shown } from '../../base/rounding.ts';
import type { QuoteResult } from '../../tasks/quote/quote-vehicle.ts';
import { namingAll } from '../../tasks/settings/assumption.ts';
import type { PriceList } from '../../work/price-list.ts';
import type { QuoteOption } from '../../work/quote-option.ts';
import { type NeededMaterial, neededMaterials } from '../../work/to-buy.ts';
import { type Block, list, paragraph } from '../model.ts';
import { sameTexts } from './quote-choices.ts';
import {
  exclusionText,
  percentText,
  reversalTexts,
  shortExclusion,
  shortTexts,
} from './quote-words.ts';

export function missingBlocks({ missingKeys, options, settings }: QuoteResult): readonly Block[] {
  if (options.every(({ charged }) => charged === null)) {
    return [paragraph('No price', 'nothing can be polished')];
  }
  if (missingKeys.length === 0) return [];
  if (settings.money.areExample) {
    const text =
      'the prices of the shop file are an example: put yours in their place, then take out prices.example';
    return [paragraph('No price', text)];
  }
  const keys = missingKeys.join(', ');
  return [paragraph('No price', `the shop file does not say ${keys}; no price is made up`)];
}

/** With -v by name. */
export const unchargedBlocks = ({ assumptions }: QuoteResult, verbose: boolean): readonly Block[] =>
  assumptions
    .filter(({ code }) => code === 'quote-materials')
    .map((one) => paragraph('Given away', verbose ? namingAll(one) : one.text));

export function shortBlocks(options: readonly QuoteOption[]): readonly Block[] {
  const texts = shortTexts(options);
  return [
    ...(texts.length === 0 ? [] : [paragraph('Short of the aim', texts.join('; '))]),
    ...[...reversalTexts(options), ...sameTexts(options)].map((text) => paragraph('Note', text)),
  ];
}

/** Shortly, as for the shop; with -v in the words that the owner of the car is given. */
export function exclusionBlocks({ exclusions }: QuoteResult, verbose: boolean): readonly Block[] {
  if (exclusions.length === 0) return [];
  return verbose
    ? [list('Not promised', exclusions.map(exclusionText))]
    : [paragraph('Not promised', `${exclusions.map(shortExclusion).join('; ')}.`)];
}

/** They are alike for all aims, as each is priced by the same share of jobs. */
export function overrunBlocks(options: readonly QuoteOption[]): readonly Block[] {
  const chances = options.flatMap(({ overrun }) => overrun ?? []);
  const hours = options.flatMap(({ charged }) =>
    charged === null ? [] : [shown(charged / 60, 1)],
  );
  return chances.length === 0
    ? []
    : [
        paragraph(
          'Overrun',
          `${percentText(Math.max(...chances))}\u00a0% chance of more hours than are charged (${hours.join(', ')}\u00a0h)`,
        ),
      ];
}

/** What must be bought; with -v, and where there are no prices, whatever is used. An amount for each aim. */
export function materialBlocks(
  options: readonly QuoteOption[],
  prices: PriceList | null,
  verbose: boolean,
): readonly Block[] {
  const worked = options.filter(({ charged }) => charged !== null);
  const needed = worked.map(({ work }) => neededMaterials(work, prices?.materials ?? []));
  const all = new Map(needed.flat().map((one) => [one.id, one]));
  const aims = worked.map(({ aim }) => aim.name).join(' / ');
  const eachOf = (id: string, figureOf: (one: NeededMaterial) => number): readonly number[] =>
    needed.map((list) => {
      const found = list.find((one) => one.id === id);
      return found === undefined ? 0 : figureOf(found);
    });
  const buys = [...all.values()].flatMap(({ id, material, listed }) => {
    const counts = eachOf(id, ({ toBuy }) => toBuy ?? 0);
    if (listed === null || counts.every((count) => count === 0)) return [];
    const pack = listed.pack === 1n ? '' : ` of ${listed.pack}\u00a0${listed.unit}`;
    return [`${material}${pack} ${counts.join('/')}`];
  });
  const uses = [...all.values()].map(({ id, material, unit }) => {
    const amounts = eachOf(id, ({ quantity }) => quantity).map((amount) => shown(amount, 0));
    return `${material} ${amounts.join('/')}${unit === 'pieces' ? '' : `\u00a0${unit}`}`;
  });
  return [
    ...(buys.length === 0 ? [] : [paragraph('To buy', `packs for ${aims}: ${buys.join(', ')}`)]),
    ...(uses.length > 0 && (verbose || prices === null)
      ? [paragraph('Materials', `for ${aims}: ${uses.join(', ')}`)]
      : []),
  ];
}

export function termsBlocks({ settings }: QuoteResult): readonly Block[] {
  const terms = settings.money.prices.value?.terms ?? [];
  return terms.length === 0 ? [] : [paragraph('Terms', terms.join(' '))];
}
