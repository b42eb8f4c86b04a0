/** What is said under the tables of a quote, for the shop: what has no price, falls short, is not promised, must be bought. */
import { groupBy } from '../../base/group-by.ts';
import { textIn } from '../../base/remark.ts';
import { shown } from '../../base/rounding.ts';
import type { LengthUnit } from '../../base/units.ts';
import { partName } from '../../film/survey.ts';
import { unreadWorkNotes } from '../../film/unread-work-note.ts';
import type { QuoteResult } from '../../tasks/quote/quote-vehicle.ts';
import { namingAll } from '../../tasks/settings/assumption.ts';
import { joined } from '../facts.ts';
import { type Block, list, paragraph } from '../model.ts';
import { partNames } from '../panel-list.ts';
import { onceReadAgainLines } from './once-read-again-texts.ts';
import { ONCE_READ_AGAIN, optionNotes } from './option-notes.ts';
import {
  areWithoutMarks,
  exclusionText,
  isNothingWorked,
  isPriced,
  percentText,
  shortExclusions,
  shortTexts,
} from './quote-words.ts';

export function missingBlocks({ missingKeys, options, settings }: QuoteResult): readonly Block[] {
  if (isNothingWorked(options)) {
    const why = areWithoutMarks(options) ? ': no panel has marks to polish' : '';
    return [paragraph('No price', `nothing is polished under any aim${why}`)];
  }
  if (missingKeys.length === 0) return [];
  if (settings.money.areExample) {
    const text =
      'the prices of the shop file are an example: put yours in their place, then take out prices.example';
    return [paragraph('No price', text)];
  }
  const keys = missingKeys.join(', ');
  return [
    paragraph(
      'No price',
      joined([`the shop file does not say ${keys}`, 'no price is made up'], '; '),
    ),
  ];
}

/** With -v by name. */
export const unchargedBlocks = ({ assumptions }: QuoteResult, verbose: boolean): readonly Block[] =>
  assumptions
    .filter(({ code }) => code === 'quote-materials')
    .map((one) => paragraph('Given away', verbose ? namingAll(one) : one.text));

export function shortBlocks(result: QuoteResult, unit: LengthUnit): readonly Block[] {
  const texts = shortTexts(result.options, partName);
  return [
    ...(texts.length === 0 ? [] : [paragraph('Short of the aim', joined(texts, '; '))]),
    ...optionNotes(result)
      .filter(({ note }) => note.code !== ONCE_READ_AGAIN)
      .map(({ note }) => paragraph('Note', textIn(note, unit))),
  ];
}

/** What an offer counts on of panels that were worked before and not read after. */
export function unreadWorkBlocks({ survey }: QuoteResult, unit: LengthUnit): readonly Block[] {
  const told = survey.panels.flatMap((panel) => {
    const notes = panel.points.length === 0 ? [] : unreadWorkNotes(panel.facts);
    return notes.map((one) => ({ panel, text: textIn(one, unit) }));
  });
  return [...groupBy(told, ({ text }) => text)].map(([text, panels]) =>
    paragraph('Note', `${partNames(panels.map(({ panel }) => panel))}: ${text}`),
  );
}

/** Under the table whose hours and prices hold it. */
export function onceReadAgainBlocks(result: QuoteResult): readonly Block[] {
  const texts = onceReadAgainLines(result);
  return texts.length === 0 ? [] : [paragraph('Once read again', joined(texts, '; '))];
}

/** Shortly, as for the shop; with -v in the words that the owner of the car is given. */
export function exclusionBlocks({ exclusions }: QuoteResult, verbose: boolean): readonly Block[] {
  if (exclusions.length === 0) return [];
  return verbose
    ? [list('Not promised', exclusions.map(exclusionText))]
    : [paragraph('Not promised', joined(shortExclusions(exclusions), '; ', '.'))];
}

/** They are alike for all aims, as each is priced by the same share of jobs; none where nothing is charged. */
export function overrunBlocks({ options }: QuoteResult): readonly Block[] {
  if (!isPriced(options)) return [];
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

export function termsBlocks({ settings }: QuoteResult): readonly Block[] {
  const terms = settings.money.prices.value?.terms ?? [];
  return terms.length === 0 ? [] : [paragraph('Terms', joined(terms, ' '))];
}
