/** What of each aim is for panels that are worked only once they are read again: in hours, and in money where there is a price. */
import { groupBy } from '../../base/group-by.ts';
import { rangeShown, shown } from '../../base/rounding.ts';
import { panelNames } from '../../film/template/side-names.ts';
import type { Panel } from '../../film/template/template.ts';
import type { OnceReadAgain } from '../../tasks/quote/once-read-again.ts';
import type { QuoteResult } from '../../tasks/quote/quote-vehicle.ts';
import type { QuoteOption } from '../../work/quote-option.ts';
import { namesAnd } from '../words.ts';
import type { AimSaid } from './against-before.ts';
import { moneyText } from './money-text.ts';

/** An aim by the name that the page has for it. */
type Titled = { readonly option: QuoteOption; readonly title: string };

const byName = ({ options }: QuoteResult): readonly Titled[] =>
  options.map((option) => ({ option, title: option.aim.name }));

/** For each aim by itself, as a record and a table have it. */
export const onceReadAgainTexts = (result: QuoteResult): readonly AimSaid[] =>
  byName(result).flatMap((one) =>
    linesOf(result, [one], forShop).map((text) => ({ aim: one.option.aim, text })),
  );

/** `of enhance 1.1–1.3 h / 81.00 GBP, of full 2.0 h / 102.00 GBP: for panels worked only once read again (bonnet)`. */
export const onceReadAgainLines = (result: QuoteResult): readonly string[] =>
  linesOf(result, byName(result), forShop);

export const onceReadAgainForOwner = (
  result: QuoteResult,
  choices: readonly Titled[],
): readonly string[] => linesOf(result, choices, forOwner);

type Words = { readonly joint: string; readonly of: (panels: readonly Panel[]) => string };

const forShop: Words = {
  joint: ' / ',
  of: (panels) =>
    `for panels worked only once read again (${panels.map(({ name }) => name).join(', ')})`,
};

const forOwner: Words = {
  joint: ' and ',
  of: (panels) =>
    `for work on the ${namesAnd(panelNames(panels))}, which is done only once the readings there are taken again`,
};

/** Aims that work the same such panels together. */
function linesOf(
  result: QuoteResult,
  titled: readonly Titled[],
  { joint, of }: Words,
): readonly string[] {
  const parts = titled.flatMap(({ option, title }) => {
    const part = result.onceReadAgain.get(option.aim);
    return part === undefined
      ? []
      : [{ text: `of ${title} ${partText(part, result, joint)}`, why: of(part.panels) }];
  });
  return [...groupBy(parts, ({ why }) => why)].map(
    ([why, group]) => `${group.map(({ text }) => text).join(', ')}: ${why}`,
  );
}

function partText(
  { p50, p80, total }: OnceReadAgain,
  { settings }: QuoteResult,
  joint: string,
): string {
  const currency = settings.money.prices.value?.list.currency;
  const hours = rangeShown([p50 / 60, p80 / 60], (one) => shown(one, 1), '–');
  const money = total === null || currency === undefined ? [] : [moneyText(total, currency)];
  return [`${hours}\u00a0h`, ...money].join(joint);
}
