/** How sure the word for a panel is: the lines it was held against, and how far it is from each. */
import { type Sentence, says, um } from '../../base/sentence.ts';
import { type LineComparison, marginOf } from '../../film/condition/line-comparison.ts';
import type { FilmModel } from '../../film/film-model.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import { type Block, list, paragraph } from '../model.ts';
import { doubtShares } from './doubt-sources.ts';
import {
  comparisonText,
  otherSideStep,
  otherSideText,
  surenessText,
  sureOf,
} from './sureness-lines.ts';
import { degrees, toldIn, type WhyContext } from './why-context.ts';

/** What the first word hangs on, and every other comparison that could have made it another. */
export function wordBlocks(survey: PanelSurvey, { unit, result }: WhyContext): readonly Block[] {
  const { settings } = result;
  const said = surenessText(survey);
  if (survey.condition === 'unread') {
    return [paragraph('How sure', 'nothing is sure of a panel that was not read')];
  }
  if (survey.sureness === null || said === null) return [];
  const { comparisons, beside, deciding } = survey.sureness;
  const lines = [
    said,
    doubtOfLine(deciding),
    ...[otherSideText(survey, settings.terms)].filter((text) => text !== null),
    ...otherSideStep(survey),
    ...comparisons.slice(1).map(comparisonText),
    ...beside.map((one) => says`${one.condition} besides, ${sureOf(one)}: ${comparisonText(one)}`),
    ...noCut(survey, settings.film),
  ];
  return [list(`How sure “${survey.condition}” is`, lines.map(toldIn(unit)))];
}

/** Why no comparison speaks of two zones. */
function noCut(
  { points, zones, sureness }: PanelSurvey,
  { zones: { leastPoints } }: FilmModel,
): readonly Sentence[] {
  const asked = sureness?.comparisons.some(({ condition }) => condition === 'mixed') ?? false;
  if (asked || zones.length > 0 || points.length === 0) return [];
  return [
    says`mixed: no question of it, as no cut leaves ${leastPoints} points or more on either side, factory film among them`,
  ];
}

/** The sum behind the chance of the other side. */
function doubtOfLine(one: LineComparison): Sentence {
  const apart = says`figure and line are ${um(marginOf(one), 2)} apart, which is uncertain by ± ${um(one.standard, 2)} (SD) on ${degrees(one.dof)} degrees of freedom`;
  const shares = doubtShares(one.difference);
  return shares === '' ? apart : says`${apart}: ${shares}`;
}
