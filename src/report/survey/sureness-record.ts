/** How sure the condition of a panel is, in the record. */
import type { Micrometres } from '../../base/units.ts';
import { type LineComparison, marginOf } from '../../film/condition/line-comparison.ts';
import type { RemovalTerms } from '../../film/limits/removal-limits.ts';
import type { TopcoatCase } from '../../film/limits/topcoat-cases.ts';
import { topcoatRisk } from '../../film/limits/topcoat-risk.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import { recorded, recordedDof, recordedOrNull } from '../recorded.ts';

/** `condition_sure` and what belongs to it; all null where no figure decides. */
export const surenessRecord = (
  { sureness, otherSide, topcoat, budget }: PanelSurvey,
  { logSd }: Pick<RemovalTerms, 'logSd'>,
) => ({
  condition_sure: sureness?.sure ?? null,
  condition_margin_um: sureness === null ? null : recorded(marginOf(sureness.deciding)),
  condition_evidence: sureness === null ? null : comparisonRecord(sureness.deciding),
  if_otherwise:
    otherSide === null
      ? null
      : {
          condition: otherSide.condition,
          budget_um: recordedOrNull(otherSide.budget),
          if_word_holds_um: recorded(otherSide.ifWordHolds),
          work_to_um: otherSide.budget === null ? null : recorded(budget),
          risk_over_both_prob: riskOf(topcoat, otherSide.ifWordHolds, logSd),
          risk_left_prob: riskOf(topcoat, budget, logSd),
        },
});

const riskOf = (topcoat: TopcoatCase | null, median: Micrometres, logSd: number): number | null =>
  topcoat === null ? null : recorded(topcoatRisk(topcoat, { median, logSd }));

export const comparisonRecord = (one: LineComparison) => ({
  compared: one.compared,
  value_um: recorded(one.figure),
  put_back_um: recorded(one.putBack),
  line_um: recorded(one.line),
  by_baseline: one.baseline !== null,
  side: one.side,
  beyond: one.condition,
  is_beyond: one.isBeyond,
  standard_um: recorded(one.standard),
  dof: recordedDof(one.dof),
  other_side_prob: recorded(one.otherSide),
});
