/**
 * A quote for the owner of the car: what may be done, what it takes from the paint, what it costs, and
 * what nobody can promise. No word of the trade stands here without its meaning.
 */
import { shown } from '../../base/rounding.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { QuoteResult } from '../../tasks/quote/quote-vehicle.ts';
import type { QuoteKind } from '../../work/price-list.ts';
import type { QuoteOption } from '../../work/quote-option.ts';
import { type Block, type Cell, type Column, cell, list, paragraph, title } from '../model.ts';
import { amountText, moneyText } from './money-text.ts';
import type { QuotePageOptions } from './quote-blocks.ts';
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
  shortTexts,
} from './quote-words.ts';

export function customerBlocks(
  result: QuoteResult,
  { unit, date }: QuotePageOptions,
): readonly Block[] {
  const { options, exclusions, settings } = result;
  const { money } = settings;
  const validity = validityText(money.prices.value, date);
  return [
    title(headingText(result)),
    ...(money.shop === null ? [] : [paragraph('From', money.shop)]),
    ...(validity === null ? [] : [paragraph('When', validity)]),
    paragraph(money.kind.value === 'estimate' ? 'An estimate' : 'A quotation', meaning(result)),
    paragraph(
      'What polishing does',
      'It takes off a thin layer of the paint, and with it the marks in that layer. More marks go if more paint goes, and paint that is gone does not come back: what is left is yours for later years.',
    ),
    ...namesBlock(options),
    ...curveBlocks(
      result,
      'Marks that go, against paint that is taken',
      { across: 'paint taken', up: 'marks that go' },
      unit,
    ),
    choiceTable(result, unit),
    ...partsBlocks(result),
    ...shortBlocks(options),
    ...(exclusions.length === 0
      ? []
      : [list('What is not promised, and why', exclusions.map(exclusionText))]),
    list('What to know', knowBlocks(result)),
    ...termsBlocks(result),
  ];
}

function headingText({ vehicle, identity, settings }: QuoteResult): string {
  const what = settings.money.kind.value === 'estimate' ? 'Estimate' : 'Quotation';
  const car = [identity?.make, identity?.model, identity?.year].filter(Boolean).join(' ');
  const of = [car, vehicle].filter(Boolean).join(', ');
  return `${what}: paint correction${of === '' ? '' : ` of ${of}`}`;
}

const MEANINGS: Readonly<Record<QuoteKind, string>> = {
  estimate:
    'This is our best judgement before the work begins. It may change when the work shows what nobody can see now; you are asked before it does.',
  quotation:
    'This is a fixed offer for what is written here. It does not change, whatever the work turns out to take.',
};

const meaning = ({ settings }: QuoteResult): string => MEANINGS[settings.money.kind.value];

const column = (heading: string, align: Column['align'] = 'right'): Column => ({
  title: heading,
  align,
});

const AIM_WORDS: ReadonlyMap<string, string> = new Map([
  ['enhance', 'the marks get fainter and the paint shines more'],
  ['correct', 'most marks go'],
  ['full', 'as many marks go as can be had'],
]);

/** What the names of the choices mean; a per cent says it itself. */
function namesBlock(options: readonly QuoteOption[]): readonly Block[] {
  const named = options.flatMap(({ aim: { name } }) => {
    const words = AIM_WORDS.get(name);
    return words === undefined ? [] : [`${name}: ${words}`];
  });
  return named.length === 0 ? [] : [list('What there is to choose from', named)];
}

function choiceTable({ options, settings }: QuoteResult, unit: LengthUnit): Block {
  const list = settings.money.prices.value?.list ?? null;
  const name = unit === 'um' ? 'µm' : 'mil';
  return {
    kind: 'table',
    columns: [
      column('choice', 'left'),
      column('marks that go'),
      column(`paint taken (${name})`),
      column(`top layer left (${name})`),
      column('hours of work'),
      column('days with us'),
      ...(list === null ? [] : [column(`price (${list.currency.code})`)]),
    ],
    rows: options.map((option, i): readonly Cell[] => [
      cell(aimTitle(option.aim, i)),
      cell(`${percentText(option.expected)}\u00a0%`),
      cell(filmText(option.spent, unit)),
      cell(filmText(option.left, unit)),
      cell(hoursRange(option)),
      cell(daysText(option)),
      ...(list === null
        ? []
        : [cell(option.priced === null ? '–' : amountText(option.priced.total, list.currency))]),
    ]),
  };
}

function partsBlocks({ options, settings }: QuoteResult): readonly Block[] {
  const list = settings.money.prices.value?.list ?? null;
  const priced = options.map((option) => option.priced);
  if (list === null || priced.every((one) => one === null)) return [];
  return [
    {
      kind: 'table',
      columns: [
        column(`what it is for (${list.currency.code})`, 'left'),
        ...options.map(({ aim }, i) => column(aimTitle(aim, i))),
      ],
      rows: partRows(priced, list, true).map(({ kind, name, amounts }): readonly Cell[] => {
        const tone = kind === 'total' ? 'strong' : 'plain';
        return [
          cell(name, tone),
          ...amounts.map((amount) =>
            cell(amount === null ? '–' : amountText(amount, list.currency), tone),
          ),
        ];
      }),
    },
  ];
}

function shortBlocks(options: readonly QuoteOption[]): readonly Block[] {
  const texts = [...shortTexts(options), ...reversalTexts(options)];
  return texts.length === 0 ? [] : [list('Where less is to be had', texts)];
}

function knowBlocks({ options, settings }: QuoteResult): readonly string[] {
  const { risk } = settings.terms;
  const { kind } = settings.money;
  const overruns = options.flatMap(({ overrun }) => overrun ?? []);
  const most = overruns.length === 0 ? null : Math.max(...overruns);
  return [
    'A reading is no promise. A gauge reads all layers together; how much of it is the clear top layer is judged from what is usual.',
    'One µm is a thousandth of a millimetre. All the paint together is about as thick as a sheet of paper.',
    `We plan so that the chance of too thin a top layer on a panel, on cars like those assumed, stays under ${shown(100 * risk, 1)}\u00a0%. It is never nothing.`,
    'Marks that go are a share of the fine marks over the panels that polishing can help; single deep scratches may stay.',
    ...(most === null
      ? []
      : [
          kind.value === 'estimate'
            ? `The price is for hours that ${shown(100 * (1 - most), 0)} of 100 such jobs keep within; in the others the work takes longer, and the price may change.`
            : `In about ${shown(100 * most, 0)} of 100 such jobs the work takes longer than the price is made for; that is our risk, not yours.`,
        ]),
  ];
}

function termsBlocks({ settings, options }: QuoteResult): readonly Block[] {
  const { value } = settings.money.prices;
  if (value === null) return [];
  const { currency } = value.list;
  const deposits = options.flatMap(({ aim, priced }) =>
    priced === null || priced.deposit === 0n
      ? []
      : [`${aim.name} ${moneyText(priced.deposit, currency)}`],
  );
  return [
    ...(deposits.length === 0 ? [] : [paragraph('Deposit', deposits.join(', '))]),
    ...(value.terms.length === 0 ? [] : [list('Terms', value.terms)]),
  ];
}
