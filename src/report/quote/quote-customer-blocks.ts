/**
 * A quote for the owner of the car: what may be done, what it takes from the paint, what it costs, and
 * what nobody can promise. No word of the trade stands here without its meaning.
 */
import { shown } from '../../base/rounding.ts';
import { says, tell, um } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import { doubtsFinish } from '../../film/limits/colour-at-spot.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import { panelNames } from '../../film/template/side-names.ts';
import type { QuoteResult } from '../../tasks/quote/quote-vehicle.ts';
import { isClearShown } from '../../work/exclusions.ts';
import { partForOwner } from '../../work/left-as-found.ts';
import type { QuoteKind } from '../../work/price-list.ts';
import type { QuoteOption } from '../../work/quote-option.ts';
import { joined } from '../facts.ts';
import { type Block, list, notice, paragraph, type Said, title } from '../model.ts';
import { namesAnd } from '../words.ts';
import type { QuotePageOptions } from './quote-blocks.ts';
import { choiceBlocks, choiceColumns, choicesOf } from './quote-choices.ts';
import { partCells } from './quote-lines.ts';
import { validityText } from './quote-validity.ts';
import {
  areWithoutMarks,
  curveBlocks,
  exclusionText,
  isNothingWorked,
  reversalTexts,
  shortTexts,
} from './quote-words.ts';
import { taxBlocks } from './tax-block.ts';

export function customerBlocks(
  result: QuoteResult,
  { unit, date }: QuotePageOptions,
): readonly Block[] {
  const { settings } = result;
  const { money } = settings;
  if (isNothingWorked(result.options)) return nothingBlocks(result, { unit, date });
  return [
    title(headingText(result)),
    ...addressBlocks(result),
    ...dateBlocks(result, date),
    ...doubtBlocks(result, unit),
    paragraph(money.kind.value === 'estimate' ? 'An estimate' : 'A quotation', meaning(result)),
    ...choiceBlocks(result, unit),
    ...shortBlocks(choicesOf(result).map(({ option }) => option)),
    ...partsBlocks(result),
    ...orderBlocks(result),
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
  ];
}

/** Of a car that nothing is done to: what was found, and why. No choice, no price, nothing that holds. */
const nothingBlocks = (
  result: QuoteResult,
  { unit, date }: Pick<QuotePageOptions, 'unit' | 'date'>,
): readonly Block[] => [
  title(headingText(result)),
  ...addressBlocks(result),
  date === null ? dayForm : paragraph('Date', date),
  ...doubtBlocks(result, unit),
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

/** What puts the whole car in doubt comes before any choice. */
const doubtBlocks = (
  { survey: { panels, notes } }: QuoteResult,
  unit: LengthUnit,
): readonly Block[] => [
  ...notes.flatMap(({ code, value }) => {
    const told = DOUBTS[code];
    if (told === undefined || value === undefined) return [];
    return [notice(BEFORE_ANY_WORK, joined(told(tell(says`${um(value, 0)}`, unit)), ' '))];
  }),
  ...firstBlocks(panels.filter(isClearShown), (where) => [
    `At a trial on the ${where} no colour came off with the polish.`,
    'Paint without a clear top layer, as was stated, gives colour: so there is such a layer, or nobody looked at the pad.',
    'Which of the two it is must be settled before any panel is polished; until then no more is planned than either allows.',
  ]),
  ...firstBlocks(panels.filter(doubtsFinish), (where) => [
    `At a trial on the ${where} colour came off with the polish: the clear top layer is gone there, or the paint of this car is not what was thought.`,
    'Which of the two it is must be settled before any panel is polished.',
  ]),
];

const BEFORE_ANY_WORK = 'Before any work';

/** By the code of what the survey warns of, with the film that it is about. */
const DOUBTS: Readonly<Record<string, (film: string) => readonly string[]>> = {
  'thick-baseline': (film) => [
    `All that was measured is thick, about ${film}: far more than factories paint.`,
    'A car painted again all over reads so, and so does one under a film or a wrap.',
    'Which of the two it is must be settled, and a trial made, before any panel is polished.',
  ],
  'spot-overrun': (film) => [
    `At a trial about ${film} of paint came off, more than was meant to go.`,
    'Why must be known before any panel is polished.',
  ],
  'spot-perhaps-overrun': (film) => [
    `At a trial about ${film} of paint came off, perhaps more than was meant to go.`,
    'It is measured again before any panel is polished.',
  ],
};

const firstBlocks = (
  shown: readonly PanelSurvey[],
  told: (where: string) => readonly string[],
): readonly Block[] =>
  shown.length === 0
    ? []
    : [
        notice(
          BEFORE_ANY_WORK,
          joined(told(namesAnd(panelNames(shown.map(({ panel }) => panel)))), ' '),
        ),
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

/** Who offers it, and to whom. */
function addressBlocks({ settings: { money }, identity }: QuoteResult): readonly Block[] {
  const from = [money.shop, ...(money.prices.value?.contact ?? [])].filter(Boolean).join(', ');
  const to = identity?.owner ?? '';
  return [
    ...(from === '' ? [] : [paragraph('From', from)]),
    ...(to === '' ? [] : [paragraph('For', to)]),
  ];
}

/** A day to write in where nobody asked for one. */
const dayForm: Block = { kind: 'form', fields: ['Date'] };

/** What is offered holds from that day. */
function dateBlocks({ settings: { money } }: QuoteResult, date: string | null): readonly Block[] {
  const validity = validityText(money.prices.value, date);
  return [
    ...(date === null ? [dayForm] : []),
    ...(validity === null ? [] : [paragraph('When', validity)]),
  ];
}

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

function headingText({ vehicle, identity, settings }: QuoteResult): string {
  const what = settings.money.kind.value === 'estimate' ? 'Estimate' : 'Quotation';
  const car = [identity?.make, identity?.model, identity?.year].filter(Boolean).join(' ');
  const of = [car, vehicle].filter(Boolean).join(', ');
  return `${what}: paint correction${of === '' ? '' : ` of ${of}`}`;
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

const meaning = ({ settings }: QuoteResult): Said =>
  joined(MEANINGS[settings.money.kind.value], ' ');

function partsBlocks(result: QuoteResult): readonly Block[] {
  const list = result.settings.money.prices.value?.list ?? null;
  const choices = choicesOf(result);
  const priced = choices.map(({ option }) => option.priced);
  if (list === null || priced.every((one) => one === null)) return [];
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

function shortBlocks(options: readonly QuoteOption[]): readonly Block[] {
  const texts = [...shortTexts(options, partForOwner), ...reversalTexts(options, partForOwner)];
  return texts.length === 0 ? [] : [list('Where fewer marks go', texts)];
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

function termsBlocks({ settings }: QuoteResult): readonly Block[] {
  const terms = settings.money.prices.value?.terms ?? [];
  return terms.length === 0 ? [] : [list('Terms', terms)];
}
