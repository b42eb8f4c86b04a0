/** What a quote says of its materials, for the shop: what must be bought, what nobody counts, with -v all that is used. */
import { shown } from '../../base/rounding.ts';
import type { PriceList } from '../../work/price-list.ts';
import type { QuoteOption } from '../../work/quote-option.ts';
import { type NeededMaterial, neededMaterials } from '../../work/to-buy.ts';
import { about, joined } from '../facts.ts';
import { type Block, type Facts, paragraph } from '../model.ts';
import { byVerbose, type PageOptions } from '../page-options.ts';
import { namesAnd } from '../words.ts';
import { aimSign } from './quote-words.ts';

/** A material with what is needed of it under each aim; none where that aim does without. */
type Across = {
  readonly material: NeededMaterial;
  readonly each: readonly (NeededMaterial | undefined)[];
};

/** With -v, and where there are no prices, whatever is used. An amount for each aim. */
export function materialBlocks(
  aimed: readonly QuoteOption[],
  prices: PriceList | null,
  options: Pick<PageOptions, 'verbose' | 'onPaper'>,
): readonly Block[] {
  const { verbose } = options;
  const worked = aimed.filter(({ charged }) => charged !== null);
  const all = across(worked.map(({ work }) => neededMaterials(work, prices?.materials ?? [])));
  const aims = aimsText(aimed);
  return [
    ...(prices === null ? [] : toBuyBlocks(all, aims, options)),
    ...(all.length > 0 && (verbose || prices === null)
      ? [paragraph('Materials', perAim(`for ${aims}`, all.map(useText)))]
      : []),
  ];
}

/** `A/B/C`, as the table of the aims calls them. */
function aimsText(options: readonly QuoteOption[]): string {
  const [first] = options;
  if (options.length === 1 && first !== undefined) return first.aim.name;
  return options.flatMap(({ charged }, i) => (charged === null ? [] : [aimSign(i)])).join('/');
}

function across(needed: readonly (readonly NeededMaterial[])[]): readonly Across[] {
  const first = new Map(needed.flat().map((one) => [one.id, one]));
  return [...first.values()].map((material) => ({
    material,
    each: needed.map((list) => list.find(({ id }) => id === material.id)),
  }));
}

/** None where the shop counts no stock at all: then nothing is claimed of what is to be bought. */
function toBuyBlocks(
  all: readonly Across[],
  aims: string,
  options: Pick<PageOptions, 'verbose' | 'onPaper'>,
): readonly Block[] {
  const known = all.filter(({ material }) => material.toBuy !== null);
  if (known.length === 0) return [];
  const buys = known.flatMap(buyText);
  const told = buys.length === 0 ? 'nothing of what is counted' : perAim(`packs for ${aims}`, buys);
  const rest = all.filter(({ material }) => material.toBuy === null);
  return [
    paragraph(
      'To buy',
      rest.length === 0 ? told : joined([told, uncountedText(rest, options)], '; '),
    ),
  ];
}

/** `12/14`; once where it is the same under every aim. */
const eachOr = (amounts: readonly string[]): string =>
  new Set(amounts).size === 1 ? amounts.slice(0, 1).join('') : amounts.join('/');

/** `for A/B: towels 12/14, wax 27 ml`. */
const perAim = (aims: string, texts: readonly string[]): Facts => about(aims, joined(texts, ', '));

function buyText({ material: { material, listed }, each }: Across): readonly string[] {
  const counts = each.map((one) => one?.toBuy ?? 0);
  if (listed === null || counts.every((count) => count === 0)) return [];
  const pack = listed.pack === 1n ? '' : ` of ${listed.pack}\u00a0${listed.unit}`;
  return [`${material}${pack} ${eachOr(counts.map(String))}`];
}

/** Of those the shop must look for itself. */
function uncountedText(
  rest: readonly Across[],
  options: Pick<PageOptions, 'verbose' | 'onPaper'>,
): string {
  const names = rest.map(({ material }) => material.material);
  return options.verbose
    ? `without a stock in the price list, so look yourself: ${namesAnd(names)}`
    : `no stock listed of ${names.length}${byVerbose('', options)}`;
}

function useText({ material: { material, unit }, each }: Across): string {
  const amounts = eachOr(each.map((one) => shown(one?.quantity ?? 0, 0)));
  return `${material} ${amounts}${unit === 'pieces' ? '' : `\u00a0${unit}`}`;
}
