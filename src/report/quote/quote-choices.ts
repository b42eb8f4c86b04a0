/** The choices of a quote for the owner of the car: what each gives, takes and costs, side by side. */
import { unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import { isTouched, type PanelPlan, workedParts } from '../../correction/plan/plan.ts';
import { panelNames } from '../../film/template/side-names.ts';
import type { QuoteResult } from '../../tasks/quote/quote-vehicle.ts';
import type { QuoteOption } from '../../work/quote-option.ts';
import { column, figures } from '../columns.ts';
import { type Block, type Cell, type Column, cell, list, paragraph } from '../model.ts';
import type { AimSaid } from './against-before.ts';
import { cheaperAloneForOwner, cheaperForOwner } from './cheaper-texts.ts';
import { amountText } from './money-text.ts';
import { onceReadAgainForOwner } from './once-read-again-texts.ts';
import {
  aimTitle,
  daysText,
  filmText,
  hoursRange,
  percentText,
  sameAs,
  shownPercent,
} from './quote-words.ts';

/** A choice with the letter it has on the curve. */
export type Choice = { readonly option: QuoteOption; readonly title: string };

/** Without those that get and cost what an earlier one does. */
export const choicesOf = ({ options }: QuoteResult): readonly Choice[] =>
  options.flatMap((option, i) =>
    sameAs(options, option) === undefined ? [{ option, title: aimTitle(option.aim, i) }] : [],
  );

export const choiceColumns = (first: string, choices: readonly Choice[]): readonly Column[] => [
  column(first),
  ...choices.map(({ title }) => figures(title)),
];

const AIM_WORDS: ReadonlyMap<string, string> = new Map([
  ['enhance', 'the marks get fainter and the paint shines more'],
  ['correct', 'most marks go where the paint allows it'],
  ['full', 'more of them go, as far as the paint allows'],
]);

/** Where the table does not show more for it than for every choice before it. */
const NO_MORE_WORDS: ReadonlyMap<string, string> = new Map([
  [
    'full',
    'a finish without any veil (haze) comes first; marks go as far as the paint then allows',
  ],
]);

export function choiceBlocks(result: QuoteResult, unit: LengthUnit): readonly Block[] {
  const choices = choicesOf(result);
  return [
    ...namesBlock(choices),
    choiceTable(result, choices, unit),
    ...onceReadAgainForOwner(result, choices).map((text) =>
      paragraph('Only once measured again', text),
    ),
    ...sameBlocks(result),
    ...[...cheaperForOwner(choices), ...cheaperAloneForOwner(result, unit)].map((text) =>
      paragraph('Price', text),
    ),
    ...untouchedBlocks(result),
  ];
}

/** What the names of the choices mean; a per cent says it itself. */
function namesBlock(choices: readonly Choice[]): readonly Block[] {
  const named = choices.flatMap(({ option: { aim, expected }, title }, i) => {
    const isMore = choices
      .slice(0, i)
      .every(({ option }) => shownPercent(option.expected) < shownPercent(expected));
    const words = (isMore ? undefined : NO_MORE_WORDS.get(aim.name)) ?? AIM_WORDS.get(aim.name);
    return words === undefined ? [] : [`${title}: ${words}`];
  });
  return named.length === 0 ? [] : [list('What there is to choose from', named)];
}

/** A column for each choice, so that they stand side by side on a narrow screen too. */
function choiceTable(
  { settings }: QuoteResult,
  choices: readonly Choice[],
  unit: LengthUnit,
): Block {
  const prices = settings.money.prices.value?.list ?? null;
  const row = (name: string, textOf: (option: QuoteOption) => string): readonly Cell[] => [
    cell(name),
    ...choices.map(({ option }) => cell(textOf(option))),
  ];
  const strong = (cells: readonly Cell[]): readonly Cell[] =>
    cells.map((one) => (one.kind === 'text' ? { ...one, tone: 'strong' } : one));
  return {
    kind: 'table',
    columns: choiceColumns('what you get', choices),
    rows: [
      row('marks that go, of all measured', ({ expected }) => `${percentText(expected)}\u00a0%`),
      row('of those where it is polished', ({ polished }) =>
        polished === null ? '–' : `${percentText(polished.expected)}\u00a0%`,
      ),
      row(`paint taken there (${unitName(unit)})`, ({ polished }) =>
        filmText(polished?.spent ?? null, unit),
      ),
      row(`top layer left where thinnest (${unitName(unit)})`, ({ left }) => filmText(left, unit)),
      row('hours of work', hoursRange),
      row('days with us', daysText),
      ...(prices === null
        ? []
        : [
            strong(
              row(`price (${prices.currency.code})`, ({ priced }) =>
                priced === null ? '–' : amountText(priced.total, prices.currency),
              ),
            ),
          ]),
    ],
  };
}

const sameBlocks = ({ options }: QuoteResult): readonly Block[] =>
  sameTexts(options).map(({ text }) => paragraph('Not offered', text));

/** For each choice that gets and costs what an earlier one does. */
export const sameTexts = (options: readonly QuoteOption[]): readonly AimSaid[] =>
  options.flatMap((option) => {
    const before = sameAs(options, option);
    if (before === undefined) return [];
    const text = `on this car ${option.aim.name} gets and costs the same as ${before.aim.name}`;
    return [{ aim: option.aim, text }];
  });

/** Panels that no choice works: what the owner asks first. */
function untouchedBlocks({ options, plan }: QuoteResult): readonly Block[] {
  const touched = new Set(
    options.flatMap((option) => workedParts(option.plan).filter(isTouched).map(panelId)),
  );
  const left = plan.panels.filter((part) => !touched.has(panelId(part)));
  const text = panelNames(left.map(({ survey }) => survey.panel)).join(', ');
  return text === '' ? [] : [paragraph('Not polished by any of them', `${text}; why: see below`)];
}

const panelId = ({ survey }: PanelPlan): string => survey.panel.id;
