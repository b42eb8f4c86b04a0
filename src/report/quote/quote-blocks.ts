/** A quote as a page for the shop: the aims side by side under one curve, what they cost, what is left out. */
import { shown } from '../../base/rounding.ts';
import { unitName } from '../../base/sentence.ts';
import type { Panel } from '../../film/template/template.ts';
import type { QuoteResult } from '../../tasks/quote/quote-vehicle.ts';
import type { Assumption } from '../../tasks/settings/assumption.ts';
import { assumptionBlocks } from '../assumption-blocks.ts';
import { joined } from '../facts.ts';
import { type Block, gap, paragraph, type Said, title } from '../model.ts';
import type { PageOptions } from '../page-options.ts';
import { colourFirst } from '../survey/colour-lines.ts';
import { doubtBlocks, FILES_DOUBTED, noteBlocks, warningsFirst } from '../survey/note-blocks.ts';
import { heading } from '../survey/page-head.ts';
import { readAgainFirst } from '../survey/slip-lines.ts';
import { strictNote } from '../survey/strict-note.ts';
import { materialBlocks } from './material-blocks.ts';
import { optionTable, partsBlocks } from './option-tables.ts';
import {
  exclusionBlocks,
  missingBlocks,
  onceReadAgainBlocks,
  overrunBlocks,
  shortBlocks,
  termsBlocks,
  unchargedBlocks,
  unreadWorkBlocks,
} from './quote-notes.ts';
import { validityText } from './quote-validity.ts';
import { curveBlocks, isNothingWorked, isPriced } from './quote-words.ts';
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
  const isNothing = isNothingWorked(result.options);
  return [
    ...headBlocks(result, panels, options),
    ...(isNothing ? missingBlocks(result) : choiceBlocks(result, options)),
    ...exclusionBlocks(result, options.verbose),
    ...(options.verbose ? noteBlocks : doubtBlocks)(result.survey, options.unit),
    ...(options.verbose && !isNothing ? termsBlocks(result) : []),
    ...assumptionBlocks(
      { ...result, assumptions: newsOf(result.assumptions, options.verbose) },
      options,
      [FILES_DOUBTED],
    ),
  ];
}

/** What it is of, and what comes before any choice. */
function headBlocks(
  result: QuoteResult,
  panels: readonly Panel[],
  { unit }: QuotePageOptions,
): readonly Block[] {
  const ids = new Set(panels.map(({ id }) => id));
  const read = result.survey.panels.filter(
    ({ panel, points }) => ids.has(panel.id) && points.length > 0,
  );
  const isEstimate = result.settings.money.kind.value === 'estimate';
  return [
    title(heading(isEstimate ? 'Estimate' : 'Quotation', result, read)),
    ...strictNote(result),
    ...warningsFirst(result, unit),
    ...colourFirst(read),
    ...readAgainFirst(read, result, unit),
  ];
}

/** The aims side by side, and what each comes to. */
function choiceBlocks(result: QuoteResult, options: QuotePageOptions): readonly Block[] {
  const { unit, verbose } = options;
  const priceList = result.settings.money.prices.value?.list ?? null;
  return [
    paragraph(null, legendText(result, options)),
    gap,
    optionTable(result.options, priceList, unit),
    ...onceReadAgainBlocks(result),
    gap,
    ...curveBlocks(
      result,
      'Correction against film spent',
      { across: 'film spent', up: 'clears' },
      unit,
    ),
    ...partsBlocks(result.options, priceList, verbose),
    ...missingBlocks(result),
    ...shortBlocks(result, unit),
    ...unreadWorkBlocks(result, unit),
    ...(verbose ? overrunBlocks(result) : []),
    ...materialBlocks(result.options, priceList, options),
    ...(verbose && priceList !== null ? stageCostBlocks(result.options, priceList) : []),
    ...unchargedBlocks(result, verbose),
  ];
}

/** What it is, and what the columns are. */
function legendText(result: QuoteResult, { unit, date }: QuotePageOptions): Said {
  const prices = result.settings.money.prices.value;
  const units =
    prices === null
      ? `Film in ${unitName(unit)}`
      : `Film and money in ${unitName(unit)} and ${prices.list.currency.code}`;
  return joined([...offerTexts(result, date), `${units}.`, COLUMNS], ' ');
}

const COLUMNS: Said = joined(
  [
    'Clears: of all marks there, left panels too',
    'spent: mean film (a plan tells the middle, less)',
    'left: least clear (topcoat) left',
    'hours: one person, half to four in five of such jobs',
    '+1 %: each further per cent',
  ],
  '; ',
  '.',
);

/** Its day, how long it holds, and what it binds to: without a price only the day. */
function offerTexts({ settings, options }: QuoteResult, date: string | null): readonly Said[] {
  const { kind, prices } = settings.money;
  const priced = isPriced(options);
  const validity = validityText(priced ? prices.value : null, date);
  const day = validity === null ? [] : [validity];
  if (!priced) return day;
  const share = shown(settings.models.price.hours[kind.value], 0);
  const what =
    kind.value === 'estimate'
      ? 'An estimate may change once the work has begun'
      : 'A quotation is a fixed offer';
  return [
    ...day,
    joined([what, `priced at hours that ${share}\u00a0% of such jobs keep within`], '; ', '.'),
  ];
}

/** What other lines of the page say, and what survey and plan say of how much may go. */
const SAID: readonly string[] = [
  ...['quote-kind', 'quote-hours', 'quote-materials'],
  ...['taken-exact', 'taken-instead'],
];

/** Without -v no material of panels, as those that no gauge for metal reads are not promised; nor what follows of another gauge. */
const newsOf = (all: readonly Assumption[], verbose: boolean): readonly Assumption[] =>
  all
    .filter(({ code }) => !SAID.includes(code) && (verbose || code !== 'materials'))
    .map((one) =>
      verbose || one.code !== 'eddy-current' ? one : { ...one, text: one.text.replace(/:.*$/, '') },
    );
