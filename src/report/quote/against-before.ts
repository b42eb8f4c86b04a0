/** Where an aim does not get and take more than the one before it, as its order promises: why. */
import { shown } from '../../base/rounding.ts';
import { thicknessText } from '../../base/sentence.ts';
import type { PanelPlan } from '../../correction/plan/plan.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import { clearedMore, endsFiner, leftByOther } from '../../work/cheaper-aims.ts';
import type { Currency } from '../../work/money.ts';
import type { QuoteAim, QuoteOption } from '../../work/quote-option.ts';
import { namesAnd } from '../words.ts';
import { moneyText } from './money-text.ts';
import { sameAs, shownPercent } from './quote-words.ts';

/** How a page calls a part. */
type NameOf = (part: PanelSurvey) => string;

/** What is said of an aim, held against another. */
export type AimSaid = { readonly aim: QuoteAim; readonly text: string };

type Neighbours = { readonly before: QuoteOption; readonly option: QuoteOption };

const neighbours = (options: readonly QuoteOption[]): readonly Neighbours[] =>
  options.flatMap((option, i) => {
    const before = options[i - 1];
    return before === undefined ? [] : [{ before, option }];
  });

/** Where an aim clears less than the one before it, why. */
export const clearsLess = (options: readonly QuoteOption[], nameOf: NameOf): readonly AimSaid[] =>
  neighbours(options)
    .filter(
      ({ before, option }) =>
        percentMore(before, option) < 0 || (before.charged !== null && option.charged === null),
    )
    .map(({ before, option }) => {
      const reason = reversalReason(before, option, nameOf);
      const told = `${option.aim.name} clears less than ${before.aim.name} here`;
      return { aim: option.aim, text: `${told}: ${reason}` };
    });

/** Where it clears no more and costs as much or more, what for; one that costs less is told by that. */
export const clearsNoMore = (
  options: readonly QuoteOption[],
  currency: Currency | null,
  nameOf: NameOf,
): readonly AimSaid[] =>
  neighbours(options)
    .filter(
      ({ before, option }) =>
        percentMore(before, option) === 0 &&
        before.charged !== null &&
        option.charged !== null &&
        sameAs(options, option) === undefined,
    )
    .flatMap(({ before, option }) => {
      const more = costText(before, option, currency);
      if (more === null) return [];
      const than = before.aim.name;
      const reasons = [
        ...(endsFiner(before, option) ? [`it ends without the haze that ${than} leaves`] : []),
        ...onParts('it leaves', leftByOther(before, option), nameOf),
        ...onParts('it clears more on', clearedMore(before, option, shownPercent), nameOf),
      ];
      const why = reasons.length === 0 ? 'nowhere a per cent more' : namesAnd(reasons);
      const told = `${option.aim.name} clears no more than ${than} here${more}`;
      return [{ aim: option.aim, text: `${told}: ${why}` }];
    });

/** Where it clears more and takes less film. */
export const takesLess = (options: readonly QuoteOption[], nameOf: NameOf): readonly AimSaid[] =>
  neighbours(options)
    .filter(({ before, option }) => percentMore(before, option) > 0 && filmMore(before, option) < 0)
    .map(({ before, option }) => {
      const left = onParts('it leaves', leftByOther(before, option), nameOf);
      const why =
        left.length === 0
          ? 'removals that hardly differ count as one, and of those the quicker steps are taken'
          : namesAnd(left);
      const told = `${option.aim.name} takes less film than ${before.aim.name} here`;
      return { aim: option.aim, text: `${told}: ${why}` };
    });

const percentMore = (before: QuoteOption, option: QuoteOption): number =>
  shownPercent(option.expected) - shownPercent(before.expected);

const filmMore = (before: QuoteOption, option: QuoteOption): number =>
  shownFilm(option.spent) - shownFilm(before.spent);

/** As the table of the aims has it. */
const shownFilm = (spent: number | null): number => Number(thicknessText(spent ?? 0, 'um', 2));

/** Null where it costs less, or without prices takes less time. */
function costText(
  before: QuoteOption,
  option: QuoteOption,
  currency: Currency | null,
): string | null {
  if (before.priced === null || option.priced === null || currency === null) {
    const time = (option.charged ?? 0) - (before.charged ?? 0);
    if (time < 0) return null;
    const hours = shown(time / 60, 1);
    return Number(hours) === 0 ? ', in as much time' : ` and takes ${hours}\u00a0h more`;
  }
  const more = option.priced.total - before.priced.total;
  if (more < 0n) return null;
  return more === 0n ? ', for the same price' : ` and costs ${moneyText(more, currency)} more`;
}

const onParts = (words: string, parts: readonly PanelPlan[], nameOf: NameOf): readonly string[] =>
  parts.length === 0 ? [] : [`${words} ${namesAnd(parts.map(({ survey }) => nameOf(survey)))}`];

/** A finish without haze may leave out what it cannot be had on, or take film that another aim cuts with. */
function reversalReason(before: QuoteOption, option: QuoteOption, nameOf: NameOf): string {
  const left = leftByOther(before, option);
  const isLessWhereWorked =
    option.polished !== null && option.polished.expected < (before.polished?.expected ?? 0);
  return isLessWhereWorked || left.length === 0
    ? 'it asks for a finish without any haze, and where little paint may go that leaves less for the marks'
    : `it leaves ${namesAnd(left.map(({ survey }) => nameOf(survey)))} as found, which ${before.aim.name} works`;
}
