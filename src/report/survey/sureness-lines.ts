/** How sure the condition of a panel is, in words and in the record: what it hangs on, and how near that came. */
import { saying } from '../../base/remark.ts';
import { roundTo, shown } from '../../base/rounding.ts';
import { bare, type Sentence, says, um } from '../../base/sentence.ts';
import type { Condition } from '../../film/condition/condition.ts';
import {
  type ComparedFigure,
  type LineComparison,
  marginOf,
} from '../../film/condition/line-comparison.ts';
import { HELD_BACK } from '../../film/condition/over-both-sides.ts';
import type { RemovalTerms } from '../../film/limits/removal-limits.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import { machine, machineOrNull } from '../envelope.ts';
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
};

/** `mean 110.3 µm; cut-back is under 106.4 µm, … (7.5 % that it is)`. */
export function comparisonText(one: LineComparison): Sentence {
  const { condition, side, isBeyond, otherSide } = one;
  const figure = FIGURES[one.compared](one.figure);
  const said = isBeyond
    ? says`${figure}, ${side} ${lineText(one)}`
    : says`${figure}; ${condition} is ${side} ${lineText(one)}`;
  const isNot = isBeyond ? ' not' : '';
  // The bound is drawn from few points: it is the bound that would come out otherwise.
  return one.compared === 'thinnest'
    ? says`${said} (${chance(otherSide)} that as many other points would ${isBeyond ? 'not put' : 'put'} it there)`
    : says`${said} (${chance(otherSide)} that it is${isNot})`;
}

/** In short, with what the chance comes from. */
export const doubtedComparison = (one: LineComparison): Sentence =>
  one.standard === 0
    ? comparisonText(one)
    : says`${FIGURES[one.compared](one.figure)}, ${one.condition} is ${one.side} ${um(one.line)}: ${chance(one.otherSide)} that it is${one.isBeyond ? ' not' : ''}, as the ${bare(printedGap(one))} between are ± ${um(one.standard)} (SD), mostly ${mostOfDoubt(one.difference)}`;

/** Between the two as they are printed, so that who subtracts them finds the same. */
const printedGap = ({ figure, line }: LineComparison): number =>
  Math.abs(roundTo(figure, 1) - roundTo(line, 1));

/** `106.4 µm, 12.0 µm under the baseline of 118.4 µm`: a line, and where it is from unless it is the same for any car. */
function lineText({ line, baseline }: LineComparison): Sentence {
  if (baseline === null) return says`${um(line)}`;
  const side = line < baseline ? 'under' : 'over';
  return says`${um(line)}, ${um(Math.abs(line - baseline))} ${side} the baseline of ${um(baseline)}`;
}

/** Under a thousandth it is no figure any more. */
const chance = (share: number): string =>
  share < LEAST_SHOWN ? 'under 0.1 %' : percent(share, share < 0.0995 ? 1 : 0);

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

/**
 * What may go on either side of the line that a panel is near, and the risk of what may go while nobody knows: over
 * both sides and on the worse; null where it is not near.
 */
export function otherSideText(
  survey: PanelSurvey,
  { risk: stated }: Pick<RemovalTerms, 'risk'>,
): Sentence | null {
  const { otherSide, condition: word } = survey;
  if (otherSide === null) return null;
  const { condition, budget: there, ifWordHolds: here, overBoth } = otherSide;
  if (there === null) return says`if ${condition}, each part would have limits of its own`;
  if (Math.abs(there - here) < HELD_BACK) return says`if ${condition}, as much may go`;
  const sides = says`${bare(here, 2)} may go if ${word}, ${um(there, 2)} if ${condition}`;
  if (overBoth === null) return says`${sides}: ${um(here, 2)} holds for both`;
  const { workTo, riskLeft, riskThere } = overBoth;
  if (workTo >= LEAST_TOLD) {
    return says`${sides}: ${um(workTo, 2)} risks ${risk(riskLeft)} over both, ${risk(riskThere)} if ${condition}`;
  }
  return riskLeft > stated
    ? says`${sides}: too little clear with ${risk(riskLeft)} even untouched, so leave it alone till it is settled`
    : says`${sides}: nothing may go till it is settled`;
}

/** How what may go on both sides comes about: the figure of the other side, and the sum of the risks. */
export function bothSidesSteps({
  otherSide,
  sureness,
  condition: word,
}: PanelSurvey): readonly Sentence[] {
  if (sureness === null || otherSide === null || otherSide.boundBy === null) return [];
  const { condition, budget, boundBy, ifWordHolds, overBoth } = otherSide;
  const there = says`if ${condition}${ON_ITS_LINE[condition] ?? ''}: ${bare(budget ?? 0, 2)}, by ${saying(boundBy)}`;
  if (overBoth === null) return [there];
  const { workTo, riskOfBudget, riskLeft, riskHere, riskThere } = overBoth;
  const { otherSide: chance } = sureness.deciding;
  const sum = `${risk(chance)} × ${risk(riskThere)} if ${condition} + ${risk(1 - chance)} × ${risk(riskHere)} if ${word}`;
  const all = says`taking ${um(ifWordHolds, 2)} risks too little clear with ${risk(riskOfBudget)} over both sides`;
  return [
    there,
    ifWordHolds - workTo < LEAST_TOLD
      ? all
      : says`${all}, taking ${um(workTo, 2)} with ${risk(riskLeft)} (${sum})`,
  ];
}

/** What is held of it there. */
const ON_ITS_LINE: Readonly<Partial<Record<Condition, string>>> = {
  'cut-back': ', its mean held to be on the line and all that it lacks gone from its clear',
  thin: ', a point held to be at the floor',
};

/** µm that two figures of two decimals differ by at the least. */
const LEAST_TOLD = 0.005;

const risk = (share: number): string => percent(share, share < 0.0995 || share > 0.9 ? 1 : 0);

/** `condition_sure` and what belongs to it; all null where no figure decides. */
export const surenessRecord = ({ sureness, otherSide }: PanelSurvey) => ({
  condition_sure: sureness?.sure ?? null,
  condition_margin_um: sureness === null ? null : machine(marginOf(sureness.deciding)),
  condition_evidence: sureness === null ? null : comparisonRecord(sureness.deciding),
  if_otherwise:
    otherSide === null
      ? null
      : {
          condition: otherSide.condition,
          budget_um: machineOrNull(otherSide.budget),
          if_word_holds_um: machine(otherSide.ifWordHolds),
          work_to_um: machineOrNull(otherSide.overBoth?.workTo ?? null),
          risk_over_both: machineOrNull(otherSide.overBoth?.riskOfBudget ?? null),
          risk_left: machineOrNull(otherSide.overBoth?.riskLeft ?? null),
        },
});

export const comparisonRecord = (one: LineComparison) => ({
  compared: one.compared,
  value_um: machine(one.figure),
  line_um: machine(one.line),
  by_baseline: one.baseline !== null,
  side: one.side,
  beyond: one.condition,
  is_beyond: one.isBeyond,
  standard_um: machine(one.standard),
  dof: Number.isFinite(one.dof) ? machine(one.dof) : null,
  other_side_prob: machine(one.otherSide),
});
