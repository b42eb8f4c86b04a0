/** Why a further aim costs less than the one before it: in the words of the shop, and in those of the owner of the car. */
import { valueAt } from '../../base/at.ts';
import { counted } from '../../base/counted.ts';
import { shown } from '../../base/rounding.ts';
import { type Sentence, says, thicknessText, um, unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { PanelPlan } from '../../correction/plan/plan.ts';
import { type PanelSurvey, partName } from '../../film/survey.ts';
import type { QuoteResult } from '../../tasks/quote/quote-vehicle.ts';
import { type CheaperAim, cheaperAims } from '../../work/cheaper-aims.ts';
import { partForOwner } from '../../work/left-as-found.ts';
import type { Currency } from '../../work/money.ts';
import type { QuoteAim, QuoteOption } from '../../work/quote-option.ts';
import { namesAnd } from '../words.ts';
import type { AimSaid } from './against-before.ts';
import { moneyText } from './money-text.ts';
import { aimTitle } from './quote-words.ts';

export const cheaperTexts = (
  options: readonly QuoteOption[],
  currency: Currency | null,
): readonly AimSaid[] =>
  cheaperAims(options).map((one) => ({ aim: one.aim, text: shopText(one, currency) }));

/** Of an aim that is quoted alone: the further one that comes to less, and what that takes. */
export function cheaperAlone(
  { options, cheaper }: Pick<QuoteResult, 'options' | 'cheaper'>,
  currency: Currency | null,
): readonly { readonly aim: QuoteAim; readonly said: Sentence }[] {
  const [only] = options;
  if (only === undefined || cheaper === null) return [];
  const more = um(moreFilm(only, cheaper), 2);
  return cheaperTexts([only, cheaper], currency).map(({ text }) => ({
    aim: only.aim,
    said: says`${text}; it takes ${more} more (--aim ${cheaper.aim.name})`,
  }));
}

/** The same for the owner, who is not offered it. */
export function cheaperAloneForOwner(
  { options, cheaper }: Pick<QuoteResult, 'options' | 'cheaper'>,
  unit: LengthUnit,
): readonly string[] {
  const [only] = options;
  if (only === undefined || cheaper === null) return [];
  const choices = [
    { option: only, title: aimTitle(only.aim, 0) },
    { option: cheaper, title: `more correction (${cheaper.aim.name}), not offered here,` },
  ];
  return cheaperForOwner(choices).map(
    (text) => `${text}; it takes ${moreText(only, cheaper, unit)} paint`,
  );
}

const moreFilm = (only: QuoteOption, other: QuoteOption): number =>
  (other.spent ?? 0) - (only.spent ?? 0);

const moreText = (only: QuoteOption, other: QuoteOption, unit: LengthUnit): string =>
  `${thicknessText(moreFilm(only, other), unit, 2)}\u00a0${unitName(unit)} more`;

function shopText(one: CheaperAim, currency: Currency | null): string {
  const { aim, than, left, stronger, quicker, fewerSetUps, finer } = one;
  const reasons = [
    ...onParts('it leaves', left),
    ...onParts('stronger steps take less time on', stronger),
    ...onParts('quicker steps on', quicker),
    ...(fewerSetUps > 0 ? [`${counted(fewerSetUps, 'combination')} fewer to set up`] : []),
  ];
  const why = reasons.length > 0 ? namesAnd(reasons) : otherwise(one);
  const haze = finer ? `, as it asks for a finish without the haze that ${than.name} leaves` : '';
  return `${aim.name} ${savedText(one, currency)}: ${why}${haze}`;
}

function savedText({ than, saved, timeSaved }: CheaperAim, currency: Currency | null): string {
  const hours = shown(timeSaved / 60, 1);
  const less = `${hours}\u00a0h less`;
  return saved === null || currency === null
    ? `takes ${less} than ${than.name}`
    : `costs ${moneyText(saved, currency)} less than ${than.name}${timeSaved > 0 ? `, for ${less}` : ''}`;
}

/** What no panel as a whole shows. */
const otherwise = ({ timeSaved }: CheaperAim): string =>
  timeSaved > 0 ? 'less time in all, single marks and wiping counted' : 'less is used up';

const onParts = (
  words: string,
  parts: readonly PanelPlan[],
  nameOf: (part: PanelSurvey) => string = partName,
): readonly string[] =>
  parts.length === 0 ? [] : [`${words} ${namesAnd(parts.map(({ survey }) => nameOf(survey)))}`];

/** For the owner, each under the name that it has there: no step and no combination is spoken of. */
export function cheaperForOwner(
  choices: readonly { readonly option: QuoteOption; readonly title: string }[],
): readonly string[] {
  const titles = new Map(choices.map(({ option, title }) => [option.aim, title]));
  return cheaperAims(choices.map(({ option }) => option)).map((one) => {
    const title = valueAt(titles, one.aim);
    const than = valueAt(titles, one.than);
    const reasons = [
      ...onParts('it leaves out', one.left, partForOwner),
      ...(one.stronger.length === 0 ? [] : ['its passes are stronger and take less time']),
      ...(one.finer ? [`it ends without the faint veil (haze) that ${than} may leave`] : []),
    ];
    const why = reasons.length === 0 ? 'it takes less time, or less is used up' : namesAnd(reasons);
    return `${title} ${one.saved === null ? 'takes less time' : 'costs less'} than ${than}: ${why}`;
  });
}
