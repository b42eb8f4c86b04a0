/** How sure the condition of a panel is, in words and in the record: what it hangs on, and how near that came. */
import { shown } from '../../base/rounding.ts';
import { type Sentence, says, um } from '../../base/sentence.ts';
import type { ConditionSureness } from '../../film/condition/condition-sureness.ts';
import {
  type ComparedFigure,
  type LineComparison,
  marginOf,
} from '../../film/condition/line-comparison.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import { machine } from '../envelope.ts';

const FIGURES: Readonly<Record<ComparedFigure, (figure: number) => Sentence>> = {
  'largest-point': (figure) => says`largest point ${um(figure)}`,
  median: (figure) => says`median ${um(figure)}`,
  mean: (figure) => says`mean ${um(figure)}`,
  'smallest-point': (figure) => says`smallest point ${um(figure)}`,
  thinnest: (figure) => says`thinnest credible film ${um(figure)}`,
  'halves-apart': (figure) => says`its two halves ${um(figure)} apart`,
  'halves-gap': (figure) => says`${um(figure)} between the nearest points of its halves`,
};

/** `mean 110.3 µm, cut-back under 106.4 µm by the baseline (8.8 % that it is)`; of the word itself without its name. */
export function comparisonText(one: LineComparison): Sentence {
  const { condition, side, line, byBaseline, isBeyond, otherSide } = one;
  const beyond = isBeyond ? `${side} its line of` : `${condition} ${side}`;
  const from = byBaseline ? ' by the baseline' : '';
  const said = says`${FIGURES[one.compared](one.figure)}, ${beyond} ${um(line)}${from}`;
  return says`${said} (${chance(otherSide)} that it is${isBeyond ? ' not' : ''})`;
}

/** Under a thousandth it is no figure any more. */
const chance = (share: number): string =>
  share < LEAST_SHOWN ? 'under 0.1 %' : `${shown(100 * share, share < 0.0995 ? 1 : 0)} %`;

const LEAST_SHOWN = 0.001;

const SURE_WORDS: Readonly<Record<ConditionSureness['sure'], string>> = {
  clear: 'clear-cut',
  near: 'near the line',
};

/** Null where no figure decides. */
export const surenessText = ({ sureness, keyingSlips }: PanelSurvey): Sentence | null => {
  if (sureness === null) return null;
  const sure = keyingSlips.length === 0 ? SURE_WORDS[sureness.sure] : 'unsure, if keyed wrongly';
  return says`${sure}: ${comparisonText(sureness.deciding)}`;
};

/** `condition_sure` and what belongs to it; all null where no figure decides. */
export const surenessRecord = ({ sureness }: PanelSurvey) => ({
  condition_sure: sureness?.sure ?? null,
  condition_margin_um: sureness === null ? null : machine(marginOf(sureness.deciding)),
  condition_evidence: sureness === null ? null : comparisonRecord(sureness.deciding),
});

export const comparisonRecord = (one: LineComparison) => ({
  compared: one.compared,
  value_um: machine(one.figure),
  line_um: machine(one.line),
  by_baseline: one.byBaseline,
  side: one.side,
  beyond: one.condition,
  is_beyond: one.isBeyond,
  standard_um: machine(one.standard),
  dof: Number.isFinite(one.dof) ? machine(one.dof) : null,
  other_side_prob: machine(one.otherSide),
});
