/** The aims of a quote side by side, for the shop: what each gets, takes and costs, then part by part. */
import type { LengthUnit } from '../../base/units.ts';
import type { PriceList } from '../../work/price-list.ts';
import { marginal, type QuoteOption } from '../../work/quote-option.ts';
import { column, figures, filmFigures } from '../columns.ts';
import { type Block, type Cell, type Column, cell } from '../model.ts';
import { amountText } from './money-text.ts';
import { partCells } from './quote-lines.ts';
import { aimTitle, daysText, filmText, hoursRange, percentText } from './quote-words.ts';
import { taxBlocks } from './tax-block.ts';

export function optionTable(
  options: readonly QuoteOption[],
  prices: PriceList | null,
  unit: LengthUnit,
): Block {
  const film = (title: string): Column => filmFigures(title, unit);
  const money = (heading: string, none: string): readonly Column[] =>
    prices === null ? [] : [{ ...figures(heading), unit: prices.currency.code, none }];
  return {
    kind: 'table',
    columns: [
      column('aim'),
      figures('clears'),
      film('spent'),
      film('left'),
      figures('risk'),
      figures('hours'),
      figures('days'),
      ...money('price', 'no price'),
      ...money('+1 % costs', ''),
      { ...film('+1 % takes'), none: '' },
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
export function partsBlocks(
  options: readonly QuoteOption[],
  prices: PriceList | null,
  verbose: boolean,
): readonly Block[] {
  const priced = options.map((option) => option.priced);
  if (prices === null || priced.every((one) => one === null)) return [];
  const columns = [
    column(`parts (${prices.currency.code})`),
    ...options.map(({ aim }, i) => ({
      ...figures(aimTitle(aim, i)),
      unit: prices.currency.code,
    })),
  ];
  return [
    { kind: 'table', columns, rows: partCells(priced, prices, verbose) },
    ...taxBlocks(
      options.map(({ aim, priced }) => ({ title: aim.name, priced })),
      prices,
    ),
  ];
}
