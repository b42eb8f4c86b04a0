/** How sure the condition of a panel is, in words and in the record: what it hangs on, and how near that came. */
import { shown } from '../../base/rounding.ts';
import { bare, type Sentence, says, um } from '../../base/sentence.ts';
import type { Micrometres } from '../../base/units.ts';
import type { OtherSide } from '../../film/condition/condition-sureness.ts';
import {
  type ComparedFigure,
  type LineComparison,
  marginOf,
} from '../../film/condition/line-comparison.ts';
import { worksToLess } from '../../film/condition/over-both-sides.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import { machine, machineOrNull } from '../envelope.ts';
import { mostOfDoubt } from './doubt-sources.ts';

const FIGURES: Readonly<Record<ComparedFigure, (figure: number) => Sentence>> = {
  'largest-point': (figure) => says`largest point ${um(figure)}`,
  median: (figure) => says`median ${um(figure)}`,
  mean: (figure) => says`mean ${um(figure)}`,
  'smallest-point': (figure) => says`smallest point ${um(figure)}`,
  thinnest: (figure) => says`thinnest credible film ${um(figure)}`,
  'halves-apart': (figure) => says`its two halves ${um(figure)} apart`,
  'halves-gap': (figure) => says`${um(figure)} between the nearest points of its halves`,
};

/** `mean 110.3 µm; cut-back is under 106.4 µm, … (7.5 % that it is)`. */
export function comparisonText(one: LineComparison): Sentence {
  const { condition, side, isBeyond, otherSide } = one;
  const figure = FIGURES[one.compared](one.figure);
  const said = isBeyond
    ? says`${figure}, ${side} ${lineText(one)}`
    : says`${figure}; ${condition} is ${side} ${lineText(one)}`;
  return says`${said} (${chance(otherSide)} that it is${isBeyond ? ' not' : ''})`;
}

/** In short, with what the chance comes from. */
export const doubtedComparison = (one: LineComparison): Sentence =>
  one.standard === 0
    ? comparisonText(one)
    : says`${FIGURES[one.compared](one.figure)}, ${one.condition} is ${one.side} ${um(one.line)}: ${chance(one.otherSide)} that it is${one.isBeyond ? ' not' : ''}, as the ${bare(marginOf(one))} between are ± ${um(one.standard)} (SD), mostly ${mostOfDoubt(one.difference)}`;

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

/** What a panel near its line would be on the other side, and what might go then; null where it is not near. */
export function otherSideText({ otherSide, budget }: PanelSurvey): Sentence | null {
  if (otherSide === null) return null;
  const { condition, budget: other } = otherSide;
  if (other === null) return says`if ${condition}, each part would have limits of its own`;
  return Math.abs(other - budget) < LEAST_TOLD
    ? says`if ${condition}, as much may go`
    : says`if ${condition}, ${bare(other, 2)} may go, not ${um(budget, 2)}${workTo(otherSide, budget)}`;
}

/** µm that two figures of two decimals differ by at the least. */
const LEAST_TOLD = 0.005;

/** What to work to while nobody knows on which side it lies, at the risk that is taken. */
function workTo({ overBoth }: OtherSide, budget: Micrometres): Sentence {
  if (overBoth === null) return says``;
  const risk = percent(overBoth.riskOfBudget, overBoth.riskOfBudget < 0.0995 ? 1 : 0);
  return worksToLess(budget, overBoth)
    ? says`, ${risk} risk over both: work to ${um(overBoth.workTo, 2)} till settled`
    : says`, which holds: ${risk} risk over both`;
}

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
          work_to_um: machineOrNull(otherSide.overBoth?.workTo ?? null),
          risk_over_both: machineOrNull(otherSide.overBoth?.riskOfBudget ?? null),
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
