/** A quote as a page for the shop: the aims side by side under one curve, what they cost, what is left out. */
import { shown } from '../../base/rounding.ts';
import { unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { Panel } from '../../film/template/template.ts';
import type { QuoteResult } from '../../tasks/quote/quote-vehicle.ts';
import type { Assumption } from '../../tasks/settings/assumption.ts';
import type { PriceList } from '../../work/price-list.ts';
import { marginal, type QuoteOption } from '../../work/quote-option.ts';
import { type NeededMaterial, neededMaterials } from '../../work/to-buy.ts';
import { type Block, type Cell, type Column, cell, gap, list, paragraph, title } from '../model.ts';
import { assumptionBlocks } from '../survey/assumption-blocks.ts';
import { heading, strictNote } from '../survey/page-head.ts';
import type { PageOptions } from '../survey/page-options.ts';
import { amountText } from './money-text.ts';
import { sameTexts } from './quote-choices.ts';
import { partRows } from './quote-lines.ts';
import { validityText } from './quote-validity.ts';
import {
  aimTitle,
  curveBlocks,
  daysText,
  exclusionText,
  filmText,
  hoursRange,
  percentText,
  reversalTexts,
  shortExclusion,
  shortTexts,
} from './quote-words.ts';
import { stageCostBlocks } from './stage-cost-lines.ts';

export type QuotePageOptions = PageOptions & {
  /** The day the quote is of; none is printed where nobody asked for one. */
  readonly date: string | null;
};

export function quoteBlocks(
  result: QuoteResult,
  panels: readonly Panel[],
  options: QuotePageOptions,
): readonly Block[] {
  const ids = new Set(panels.map(({ id }) => id));
  const read = result.survey.panels.filter(
    ({ panel, points }) => ids.has(panel.id) && points.length > 0,
  );
  const { unit } = options;
  const { kind, prices } = result.settings.money;
  const priceList = prices.value?.list ?? null;
  return [
    title(heading(kind.value === 'estimate' ? 'Estimate' : 'Quotation', result, read)),
    ...strictNote(result.settings),
    paragraph(null, legendText(result, options)),
    gap,
    optionTable(result.options, priceList, unit),
    gap,
    ...curveBlocks(
      result,
      'Correction against film spent',
      { across: 'film spent', up: 'clears' },
      unit,
    ),
    ...partsBlocks(result.options, priceList, options.verbose),
    ...missingBlocks(result),
    ...shortBlocks(result.options),
    ...(options.verbose ? overrunBlocks(result.options) : []),
    ...materialBlocks(result.options, priceList, options.verbose),
    ...(options.verbose && priceList !== null ? stageCostBlocks(result.options, priceList) : []),
    ...unchargedBlocks(result, options.verbose),
    ...exclusionBlocks(result, options.verbose),
    ...(options.verbose ? termsBlocks(result) : []),
    ...assumptionBlocks({ ...result, assumptions: result.assumptions.filter(isNews) }, options),
  ];
}

/** What it is, and what the columns are. */
function legendText({ settings }: QuoteResult, { unit, date }: QuotePageOptions): string {
  const { money, price } = settings;
  const prices = money.prices.value;
  const validity = validityText(prices, date);
  const share = shown(price.hours[money.kind.value], 0);
  const what =
    money.kind.value === 'estimate'
      ? 'An estimate may change once the work has begun'
      : 'A quotation is a fixed offer';
  const units =
    prices === null
      ? `Film in ${unitName(unit)}`
      : `Film and money in ${unitName(unit)} and ${prices.list.currency.code}`;
  return [
    ...(validity === null ? [] : [validity]),
    `${what}; priced at hours that ${share}\u00a0% of such jobs keep within.`,
    `${units}. Clears: of the marks that polishing can help; spent: mean film there; left: least clear (topcoat) left; hours: one person, half to four in five of such jobs; +1 %: each further per cent.`,
  ].join(' ');
}

/** What other lines of the page say. */
const SAID: readonly string[] = ['quote-kind', 'quote-hours', 'quote-materials'];
const isNews = ({ code }: Assumption): boolean => !SAID.includes(code);

const column = (heading: string, align: Column['align'] = 'right'): Column => ({
  title: heading,
  align,
});

function optionTable(
  options: readonly QuoteOption[],
  prices: PriceList | null,
  unit: LengthUnit,
): Block {
  const film = (heading: string): Column => ({ ...column(heading), unit: unitName(unit) });
  const money = (heading: string): readonly Column[] =>
    prices === null ? [] : [{ ...column(heading), unit: prices.currency.code }];
  return {
    kind: 'table',
    columns: [
      column('aim', 'left'),
      column('clears'),
      film('spent'),
      film('left'),
      column('risk'),
      column('hours'),
      column('days'),
      ...money('price'),
      ...money('+1 % costs'),
      film('+1 % takes'),
    ],
    rows: options.map((option, i) => optionRow(option, i, options, prices, unit)),
  };
}

function optionRow(
  option: QuoteOption,
  index: number,
  options: readonly QuoteOption[],
  prices: PriceList | null,
  unit: LengthUnit,
): readonly Cell[] {
  const before = options[index - 1];
  const further = before === undefined ? null : marginal(before, option);
  const money = (amount: bigint | null | undefined): Cell =>
    cell(
      amount === null || amount === undefined || prices === null
        ? '–'
        : amountText(amount, prices.currency),
    );
  return [
    cell(aimTitle(option.aim, index)),
    cell(`${percentText(option.expected)}\u00a0%`),
    cell(filmText(option.spent, unit, 2)),
    cell(filmText(option.left, unit)),
    cell(option.risk === null ? '–' : `${percentText(option.risk, 1)}\u00a0%`),
    cell(hoursRange(option)),
    cell(daysText(option)),
    ...(prices === null ? [] : [money(option.priced?.total), money(further?.price)]),
    cell(filmText(further?.film ?? null, unit, 3)),
  ];
}

/** What each aim is charged, part by part. */
function partsBlocks(
  options: readonly QuoteOption[],
  prices: PriceList | null,
  verbose: boolean,
): readonly Block[] {
  const priced = options.map((option) => option.priced);
  if (prices === null || priced.every((one) => one === null)) return [];
  const rows = partRows(priced, prices, verbose).map(({ kind, name, amounts }): readonly Cell[] => {
    const tone = kind === 'total' ? 'strong' : 'plain';
    return [
      cell(name, tone),
      ...amounts.map((amount) =>
        cell(amount === null ? '–' : amountText(amount, prices.currency), tone),
      ),
    ];
  });
  const columns = [
    column(`parts (${prices.currency.code})`, 'left'),
    ...options.map(({ aim }, i) => ({
      ...column(aimTitle(aim, i)),
      unit: prices.currency.code,
    })),
  ];
  return [{ kind: 'table', columns, rows }];
}

function missingBlocks({ missingKeys, options, settings }: QuoteResult): readonly Block[] {
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
const unchargedBlocks = ({ assumptions }: QuoteResult, verbose: boolean): readonly Block[] =>
  assumptions
    .filter(({ code }) => code === 'quote-materials')
    .map(({ text }) =>
      paragraph('Given away', verbose ? text : text.replace(/ lacks them: .*/su, ' lacks them')),
    );

function shortBlocks(options: readonly QuoteOption[]): readonly Block[] {
  const texts = shortTexts(options);
  return [
    ...(texts.length === 0 ? [] : [paragraph('Short of the aim', texts.join('; '))]),
    ...[...reversalTexts(options), ...sameTexts(options)].map((text) => paragraph('Note', text)),
  ];
}

/** Shortly, as for the shop; with -v in the words that the owner of the car is given. */
function exclusionBlocks({ exclusions }: QuoteResult, verbose: boolean): readonly Block[] {
  if (exclusions.length === 0) return [];
  return verbose
    ? [list('Not promised', exclusions.map(exclusionText))]
    : [paragraph('Not promised', `${exclusions.map(shortExclusion).join('; ')}.`)];
}

/** They are alike for all aims, as each is priced by the same share of jobs. */
function overrunBlocks(options: readonly QuoteOption[]): readonly Block[] {
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
function materialBlocks(
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

function termsBlocks({ settings }: QuoteResult): readonly Block[] {
  const terms = settings.money.prices.value?.terms ?? [];
  return terms.length === 0 ? [] : [paragraph('Terms', terms.join(' '))];
}
