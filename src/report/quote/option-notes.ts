/** What the aims of a quote say for themselves, held against each other: on the page of the shop, in records and tables. */
import { type Remark, remark } from '../../base/remark.ts';
import { partName } from '../../film/survey.ts';
import type { QuoteResult } from '../../tasks/quote/quote-vehicle.ts';
import type { QuoteAim } from '../../work/quote-option.ts';
import { type AimSaid, clearsLess, clearsNoMore, takesLess } from './against-before.ts';
import { cheaperAlone, cheaperTexts } from './cheaper-texts.ts';
import { onceReadAgainTexts } from './once-read-again-texts.ts';
import { sameTexts } from './quote-choices.ts';
import { isNothingWorked } from './quote-words.ts';

/** By what they say; none where no aim is worked. */
export function optionNotes(result: QuoteResult): readonly OptionNote[] {
  const { options, settings } = result;
  if (isNothingWorked(options)) return [];
  const currency = settings.money.prices.value?.list.currency ?? null;
  const noted = (code: string, said: readonly AimSaid[]): readonly OptionNote[] =>
    said.map(({ aim, text }) => ({ aim, note: remark(code, text) }));
  return [
    ...noted('aim-clears-less', clearsLess(options, partName)),
    ...noted('aim-clears-no-more', clearsNoMore(options, currency, partName)),
    ...noted('aim-takes-less-film', takesLess(options, partName)),
    ...noted('aim-costs-less', cheaperTexts(options, currency)),
    ...cheaperAlone(result, currency).map(({ aim, said }) => ({
      aim,
      note: remark('further-aim-costs-less', said),
    })),
    ...noted('aim-same', sameTexts(options)),
    ...noted(ONCE_READ_AGAIN, onceReadAgainTexts(result)),
  ];
}

/** What of its hours and its price waits for readings. */
export const ONCE_READ_AGAIN = 'once-read-again';

export type OptionNote = { readonly aim: QuoteAim; readonly note: Remark };

/** Those of one aim as a record and a table write them. */
export const notesOfAim = (notes: readonly OptionNote[], aim: QuoteAim): readonly Remark[] =>
  notes.flatMap(({ aim: of, note }) => (of === aim ? [plain(note)] : []));

/** What keeps a figure with its unit on a page is a blank like any other to a machine. */
const plain = (note: Remark): Remark => ({
  ...note,
  text: note.text.replaceAll('\u00a0', ' '),
});
