/**
 * A quote for the owner of the car: what may be done, what it takes from the paint, what it costs, and
 * what nobody can promise. No word of the trade stands here without its meaning.
 */
import { shown } from '../../base/rounding.ts';
import type { QuoteResult } from '../../tasks/quote/quote-vehicle.ts';
import { partForOwner } from '../../work/left-as-found.ts';
import type { Currency } from '../../work/money.ts';
import type { QuoteKind } from '../../work/price-list.ts';
import type { QuoteOption } from '../../work/quote-option.ts';
import { joined } from '../facts.ts';
import { type Block, list, paragraph, type Said } from '../model.ts';
import { namesAnd } from '../words.ts';
import { clearsLess, clearsNoMore } from './against-before.ts';
import { ownerDoubts } from './owner-doubts.ts';
import { ownerHead } from './owner-head.ts';
import type { QuotePageOptions } from './quote-blocks.ts';
import { choiceBlocks, choiceColumns, choicesOf } from './quote-choices.ts';
import { partCells } from './quote-lines.ts';
import {
  areWithoutMarks,
  curveBlocks,
  exclusionText,
  isNothingWorked,
  isPriced,
  shortTexts,
} from './quote-words.ts';
import { taxBlocks } from './tax-block.ts';

export function customerBlocks(
  result: QuoteResult,
  { unit, date }: QuotePageOptions,
): readonly Block[] {
  if (isNothingWorked(result.options)) return nothingBlocks(result, { unit, date });
  return [
    ...ownerHead(result, date),
    ...ownerDoubts(result, unit),
    meaningBlock(result),
    ...choiceBlocks(result, unit),
    ...shortBlocks(
      choicesOf(result).map(({ option }) => option),
      result.settings.money.prices.value?.list.currency ?? null,
    ),
    ...partsBlocks(result),
    ...notPromisedBlocks(result),
    ...polishingBlocks,
    ...curveBlocks(
      result,
      'Marks that go, against paint that is taken, over all that was measured',
      { across: 'paint taken', up: 'marks that go' },
      unit,
    ),
    list('What to know', knowBlocks(result)),
    ...termsBlocks(result),
    ...orderBlocks(result),
  ];
}

/** Of a car that nothing is done to: what was found, and why. No choice, no price, nothing that holds. */
const nothingBlocks = (
  result: QuoteResult,
  { unit, date }: Pick<QuotePageOptions, 'unit' | 'date'>,
): readonly Block[] => [
  ...ownerHead(result, date),
  ...ownerDoubts(result, unit),
  paragraph(
    'What we found',
    areWithoutMarks(result.options)
      ? 'There is no mark that wants polishing on what was measured.'
      : 'Nothing on this car can be polished; why is said below.',
  ),
  ...notPromisedBlocks(result),
  ...polishingBlocks,
  list('What to know', knowBlocks(result)),
];

const notPromisedBlocks = ({ exclusions }: QuoteResult): readonly Block[] =>
  exclusions.length === 0
    ? []
    : [list('What is not promised, and why', exclusions.map(exclusionText))];

const polishingBlocks: readonly Block[] = [
  paragraph(
    'What polishing does',
    joined(
      [
        'It takes off a thin layer of the paint, and with it the marks in that layer.',
        'More marks go if more paint goes, and paint that is gone does not come back: what is left is yours for later years.',
      ],
      ' ',
    ),
  ),
];

/** Where to choose and sign; none without a price to agree to. */
function orderBlocks(result: QuoteResult): readonly Block[] {
  const choices = choicesOf(result).filter(({ option }) => option.priced !== null);
  if (choices.length === 0) return [];
  return [
    paragraph('To order', 'write the choice, sign, and send this page back'),
    {
      kind: 'form',
      fields: [
        `Choice (${choices.map(({ title }) => title.slice(0, 1)).join(', ')})`,
        'Name',
        'Date of order',
        'Signature',
      ],
    },
  ];
}

const MEANINGS: Readonly<Record<QuoteKind, readonly string[]>> = {
  estimate: [
    'This is our best judgement before the work begins.',
    'It may change when the work shows what nobody can see now; you are asked before it does.',
  ],
  quotation: [
    'This is a fixed offer for what is written here.',
    'It does not change, whatever the work turns out to take.',
  ],
};

const UNPRICED: Said = joined(
  [
    'This page says what can be done, and how long it takes.',
    'It offers nothing until a price is made.',
  ],
  ' ',
);

function meaningBlock({ settings, options }: QuoteResult): Block {
  if (!isPriced(options)) return paragraph('No price yet', UNPRICED);
  const kind = settings.money.kind.value;
  const label = kind === 'estimate' ? 'An estimate' : 'A quotation';
  return paragraph(label, joined(MEANINGS[kind], ' '));
}

function partsBlocks(result: QuoteResult): readonly Block[] {
  const list = result.settings.money.prices.value?.list ?? null;
  const choices = choicesOf(result);
  const priced = choices.map(({ option }) => option.priced);
  if (list === null || !isPriced(result.options)) return [];
  return [
    {
      kind: 'table',
      columns: choiceColumns(`what it is for (${list.currency.code})`, choices),
      rows: partCells(priced, list, true),
    },
    ...taxBlocks(
      choices.map(({ option, title }) => ({ title, priced: option.priced })),
      list,
    ),
  ];
}

function shortBlocks(options: readonly QuoteOption[], currency: Currency | null): readonly Block[] {
  const against = [
    ...clearsLess(options, partForOwner),
    ...clearsNoMore(options, currency, partForOwner),
  ];
  const texts = [...shortTexts(options, partForOwner), ...against.map(({ text }) => text)];
  return texts.length === 0 ? [] : [list('Where fewer marks go', texts)];
}

function knowBlocks(result: QuoteResult): readonly string[] {
  const { options, settings } = result;
  const { kind } = settings.money;
  const overruns = isPriced(options) ? options.flatMap(({ overrun }) => overrun ?? []) : [];
  const most = overruns.length === 0 ? null : Math.max(...overruns);
  return [
    'A reading is no promise. A gauge reads all layers together; how much of it is the clear top layer is judged from what is usual.',
    'One µm is a thousandth of a millimetre. All the paint together is about as thick as a sheet of paper.',
    riskText(result),
    'Marks that go are a share of the fine marks on all paint that was measured; where nothing may be polished, none go. Single deep scratches may stay.',
    ...(most === null
      ? []
      : [
          kind.value === 'estimate'
            ? `The price is for hours that ${shown(100 * (1 - most), 0)} of 100 such jobs keep within; in the others the work takes longer, and the price may change.`
            : `In about ${shown(100 * most, 0)} of 100 such jobs the work takes longer than the price is made for; that is our risk, not yours.`,
        ]),
  ];
}

/** What holds of panels whose top layer can be told is not said of one whose cannot. */
function riskText({ exclusions, settings }: QuoteResult): string {
  const unknown = exclusions.flatMap(({ code, panels }) => (code === 'risk-unknown' ? panels : []));
  const most = `at most ${shown(100 * settings.terms.risk, 1)}\u00a0%`;
  return [
    `We plan so that the chance of too thin a top layer on a panel, on cars like those assumed, is ${most}.`,
    ...(unknown.length === 0 ? [] : [`Of the ${namesAnd(unknown)} it is not known.`]),
    'It is never nothing.',
  ].join(' ');
}

function termsBlocks({ settings, options }: QuoteResult): readonly Block[] {
  const terms = isPriced(options) ? (settings.money.prices.value?.terms ?? []) : [];
  return terms.length === 0 ? [] : [list('Terms', terms)];
}
