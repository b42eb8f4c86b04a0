/** What the materials of each stage cost, an amount for each aim. */
import { type PriceList, packsWithoutTax } from '../../work/price-list.ts';
import type { QuoteOption } from '../../work/quote-option.ts';
import { stageCosts } from '../../work/stage-costs.ts';
import { type Block, paragraph } from '../model.ts';
import { amountText } from './money-text.ts';

export function stageCostBlocks(
  options: readonly QuoteOption[],
  prices: PriceList,
): readonly Block[] {
  const worked = options.filter(({ charged }) => charged !== null);
  const { currency } = prices;
  const packs = packsWithoutTax(prices);
  const costs = worked.map(
    ({ work }) => new Map(stageCosts(work, packs).map((one) => [one.stage, one.materials])),
  );
  const stages = worked.flatMap(({ work }) => work.stages.map(({ stage }) => stage));
  const named = new Map(stages.map(({ id, name }) => [id, name]));
  const texts = [...named].flatMap(([id, name]) =>
    costs.every((own) => !own.has(id))
      ? []
      : [`${name} ${costs.map((own) => amountText(own.get(id) ?? 0n, currency)).join('/')}`],
  );
  if (texts.length === 0) return [];
  const aims = worked.map(({ aim }) => aim.name).join(' / ');
  const what = `what is used up in shares of a piece, before markup and tax (the price charges pads by wear, other pieces, ml and m whole), for ${aims} (${currency.code})`;
  return [
    paragraph('Materials by stage', {
      text: `${what}: ${texts.join(', ')}`,
      facts: texts.map((text) => `for ${aims} (${currency.code}): ${text}`),
    }),
  ];
}
