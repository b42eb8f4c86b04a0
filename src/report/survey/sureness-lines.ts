/** How sure the condition of a panel is, in words: what it hangs on, and how near that came. */
import { saying } from '../../base/remark.ts';
import { finePercent, LEAST_TOLD, shown } from '../../base/rounding.ts';
import { bare, bareRange, nextFact, type Sentence, says, um } from '../../base/sentence.ts';
import type { Condition } from '../../film/condition/condition.ts';
import {
  type ComparedFigure,
  type LineComparison,
  marginOf,
} from '../../film/condition/line-comparison.ts';
import { HELD_BACK, isAlike, likeliestBesides } from '../../film/condition/other-side.ts';
import type { SidesWhy } from '../../film/help/panel-why.ts';
import type { RemovalTerms } from '../../film/limits/removal-limits.ts';
import { riskTerms, topcoatRisk } from '../../film/limits/topcoat-risk.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import { coatName } from './coat-name.ts';
import { mostOfDoubt } from './doubt-sources.ts';

const FIGURES: Readonly<Record<ComparedFigure, (figure: number) => Sentence>> = {
  'largest-point': (figure) => says`largest point ${um(figure)}`,
  median: (figure) => says`median ${um(figure)}`,
  mean: (figure) => says`mean ${um(figure)}`,
  'smallest-point': (figure) => says`smallest point ${um(figure)}`,
  thinnest: (figure) => says`thinnest credible film ${um(figure)}`,
  'halves-apart': (figure) => says`its thinner and its thicker points ${um(figure)} apart`,
  'halves-gap': (figure) =>
    says`${um(figure)} between the nearest of its thinner and thicker points`,
  'over-mirror': (figure) => says`one side ${um(figure)} over the other`,
};

/** `mean 107.1 µm (2.9 of it put back)`: what is known as taken stands in the figure. */
const figureText = ({ compared, figure, putBack }: LineComparison): Sentence =>
  putBack === 0
    ? FIGURES[compared](figure)
    : says`${FIGURES[compared](figure)} (${bare(putBack)} of it put back)`;

/** `mean 110.3 µm; cut-back is under 106.4 µm, … (7.5 % that it is)`. */
export function comparisonText(one: LineComparison): Sentence {
  const { condition, side, isBeyond, otherSide, shownBy, ifHeld, together } = one;
  const figure = figureText(one);
  if (together !== undefined) {
    return says`${figure}, beyond the ${um(one.line)} that sides painted alike differ by: painted again together, unless the factory did so (${chance(otherSide)} that it is ${condition})`;
  }
  if (shownBy !== undefined && isBeyond) {
    return says`${figure}, ${side} ${lineText(one)}, unless ${shownBy} shows the factory’s film (${chance(otherSide)} that it does)`;
  }
  if (shownBy !== undefined) return says`${figure}${nextFact}${ifShown(one, shownBy)}`;
  if (ifHeld !== undefined) return says`${figure}${nextFact}${ifByFactories(one, ifHeld)}`;
  const said = isBeyond
    ? says`${figure}, ${side} ${lineText(one)}`
    : says`${figure}; ${condition} is ${side} ${lineText(one)}`;
  const isNot = isBeyond ? ' not' : '';
  // The bound is drawn from few points: it is the bound that would come out otherwise.
  return one.compared === 'thinnest'
    ? says`${said} (${chance(otherSide)} that as many other points would ${isBeyond ? 'not put' : 'put'} it there)`
    : says`${said} (${chance(otherSide)} that it is${isNot})`;
}

const ifShown = (one: LineComparison, shownBy: string): Sentence =>
  says`if ${shownBy} shows the factory’s film, ${one.condition} is ${one.side} ${um(one.line)} (${chance(one.otherSide)} that it is)`;

/** Where what factories paint may be the measure, and not the panels that agree. */
const ifByFactories = (one: LineComparison, ifHeld: number): Sentence =>
  says`if the car is held to what factories paint (${chance(ifHeld)}), ${one.condition} is ${one.side} ${lineText(one)} (${chance(one.otherSide)} that both are so)`;

/** `mean 110.3 µm, 3.9 ± 2.6 µm (SD, mostly the baseline) over the line of cut-back: 7.5 % that it is`. */
export function doubtedComparison(one: LineComparison): Sentence {
  const { figure, condition, isBeyond, shownBy } = one;
  // The same of all panels that agree: it hangs on another one, not on their own figure.
  if (shownBy !== undefined && !isBeyond) return ifShown(one, shownBy);
  if (one.together !== undefined) return comparisonText(one);
  if (one.standard === 0 || shownBy !== undefined || one.ifHeld !== undefined) {
    return comparisonText(one);
  }
  const side = figure < one.line ? 'under' : 'over';
  const gap = says`${bare(marginOf(one))} ± ${um(one.standard)} (SD, mostly ${mostOfDoubt(one.difference)})`;
  return says`${figureText(one)}, ${gap} ${side} the line of ${condition}: ${chance(one.otherSide)} that it is${isBeyond ? ' not' : ''}`;
}

/** `106.4 µm, 12.0 µm under the baseline of 118.4 µm`: a line, and where it is from unless it is the same for any car. */
function lineText({ line, baseline }: LineComparison): Sentence {
  if (baseline === null) return says`${um(line)}`;
  const side = line < baseline ? 'under' : 'over';
  return says`${um(line)}, ${um(Math.abs(line - baseline))} ${side} the baseline of ${um(baseline)}`;
}

/** Under a thousandth it is no figure any more. */
const chance = (share: number): string =>
  share < LEAST_SHOWN ? 'under 0.1 %' : finePercent(share);

const LEAST_SHOWN = 0.001;

const percent = (share: number, digits: number): string => `${shown(100 * share, digits)} %`;

/** `over 99.9 % sure`: the chance that the truth lies where the word says. */
export const sureOf = ({ otherSide }: LineComparison): string =>
  otherSide < LEAST_SHOWN
    ? 'over 99.9 % sure'
    : `${percent(1 - otherSide, otherSide < 0.0995 ? 1 : 0)} sure`;

/** Null where no figure decides. */
export const surenessText = ({ sureness, keyingSlips }: PanelSurvey): Sentence | null => {
  if (sureness === null) return null;
  if (keyingSlips.length > 0) {
    return says`unsure, if keyed wrongly: ${comparisonText(sureness.deciding)}`;
  }
  const near = sureness.sure === 'near' ? ', near its line' : '';
  return says`${sureOf(sureness.deciding)}${near}: ${comparisonText(sureness.deciding)}`;
};

/** Panels that hang on another one's film alike: they differ by what might go by their word alone. */
export const hangsOnAnother = ({ sureness, budget }: PanelSurvey): boolean =>
  sureness?.deciding.shownBy !== undefined && !sureness.deciding.isBeyond && budget < LEAST_TOLD;

/** `2.53 to 2.59`. */
export const rangeIfWordHolds = (panels: readonly PanelSurvey[]): Sentence => {
  const here = panels.flatMap(({ otherSide }) => otherSide?.ifWordHolds ?? []);
  const [least, most] = [Math.min(...here), Math.max(...here)];
  return most - least < LEAST_TOLD ? says`${bare(most, 2)}` : says`${bareRange(least, most, 2)}`;
};

/**
 * What may go on either side of the line that a panel is near, and the risk of what may go while nobody knows: over
 * all that it may be and on the worse side; null where it is not near. `byWord` is told in place of what its word allows.
 */
export function otherSideText(
  survey: PanelSurvey,
  { risk: stated, logSd }: Pick<RemovalTerms, 'risk' | 'logSd'>,
  byWord: Sentence = rangeIfWordHolds([survey]),
): Sentence | null {
  const { otherSide, condition: word, budget, topcoat } = survey;
  if (otherSide === null) return null;
  const { condition, budget: there, ifWordHolds: here } = otherSide;
  if (there === null) return says`if ${condition}, each part would have limits of its own`;
  if (isAlike(otherSide) && there < LEAST_TOLD) return says`if ${condition}, nothing may go either`;
  if (isAlike(otherSide)) return says`${word} or ${condition}, the same may go${heldBack(survey)}`;
  const sides = says`${byWord} may go if ${word}, ${um(there, 2)} if ${condition}`;
  const removal = { median: budget, logSd };
  const overAll = topcoat === null ? 0 : topcoatRisk(topcoat, removal);
  if (topcoat === null || budget < LEAST_TOLD) {
    return overAll > stated
      ? says`${sides}: too little ${coatName([survey])} with ${risk(overAll)} even untouched, so leave it alone till it is settled`
      : says`${sides}: nothing may go till it is settled`;
  }
  const worse = there < here ? condition : word;
  const onIt = riskTerms(topcoat, word, removal).find((one) => one.condition === worse);
  const onWorse = onIt === undefined ? '' : `, ${risk(onIt.risk)} if ${worse}`;
  return says`${sides}: ${um(budget, 2)} risks ${risk(overAll)} over both${onWorse}`;
}

/** `; 2.60 may go as original for certain, 0.00 µm with the 11 % that it is cut-back`: near a line that takes nothing. */
export function heldBack({ topcoat, budget, otherSide, condition: word }: PanelSurvey): Sentence {
  const besides = likeliestBesides(topcoat);
  const here = otherSide?.ifWordHolds ?? budget;
  return besides === undefined || here - budget < HELD_BACK
    ? says``
    : says`${nextFact}${bare(here, 2)} may go as ${word} for certain, ${um(budget, 2)} with the ${chance(besides.chance)} that it is ${besides.condition}`;
}

/** What a panel near its line allows on the other side, and by which limit. */
export function otherSideStep({ otherSide, topcoat }: PanelSurvey): readonly Sentence[] {
  if (otherSide === null || otherSide.boundBy === null) return [];
  const { condition, budget, boundBy } = otherSide;
  return [
    says`if ${condition}${onItsLine(condition, coatName([{ topcoat }]))}: ${bare(budget ?? 0, 2)}, by ${saying(boundBy)}`,
  ];
}

/** The sum of the risks over all that a panel may be. */
export function sidesStep(
  { condition: word, budget, topcoat }: Pick<PanelSurvey, 'condition' | 'budget' | 'topcoat'>,
  sides: SidesWhy | null,
): readonly Sentence[] {
  if (sides === null) return [];
  const { byWord, riskByWord, terms } = sides;
  const sum = terms
    .map((one) => `${chance(one.chance)} × ${risk(one.risk)} if ${one.condition}`)
    .join(' + ');
  const total = terms.reduce((all, one) => all + one.chance * one.risk, 0);
  const held = says`${um(budget, 2)} risks too little ${coatName([{ topcoat }])} with ${risk(total)} over all that it may be: ${sum}`;
  return [
    Math.abs(byWord - budget) < LEAST_TOLD
      ? held
      : says`${um(byWord, 2)}, as if it were ${word} for certain, would risk ${risk(riskByWord)}${nextFact}${held}`,
  ];
}

/** What is held of it there. */
const onItsLine = (condition: Condition, coat: string): string =>
  condition === 'cut-back'
    ? `, its mean held to be on the line and all that it lacks gone from its ${coat}`
    : '';

const risk = (share: number): string => percent(share, share < 0.0995 || share > 0.9 ? 1 : 0);
