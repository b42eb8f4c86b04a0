/** A comparison as a table for spreadsheets: one row a panel. */
import type { ForetoldPanel } from '../../formats/plan-file.ts';
import type { CompareResult } from '../../tasks/compare/compare-files.ts';
import type { DataTable } from '../model.ts';
import { recorded, recordedOrNull } from '../recorded.ts';
import { setsOf } from './compare-words.ts';

const columns = [
  'panel',
  'compared_by',
  'n_pairs',
  'n_before',
  'n_after',
  'removed_um',
  'removed_low_um',
  'removed_high_um',
  'resolved',
  'gained',
  'seen_surely_um',
  'planned_um',
  'worked_um',
  'planned_sets',
  'worked_sets',
  'against_plan',
  'clear_um',
  'budget_left_um',
  'bound_by',
  'one_more_set',
  'one_more_um',
  'risk_prob',
  'verdict',
] as const;

/** One row a panel. */
export const compareTable = ({ panels }: CompareResult): DataTable => ({
  columns,
  rows: panels.map((panel) => {
    const { comparison, planned, foretold, against, left, oneMore, riskOneMore, verdict } = panel;
    const { change, counts } = comparison;
    return [
      comparison.panel.id,
      comparison.by,
      comparison.pairs.length,
      counts.before,
      counts.after,
      recordedOrNull(change?.removed.value),
      recordedOrNull(change?.low),
      recordedOrNull(change?.high),
      yesNo(change?.resolved ?? false),
      yesNo(comparison.gained),
      recordedOrNull(change?.detectable.surely),
      medianOf(planned),
      medianOf(foretold),
      planned === null ? null : setsOf(planned.steps),
      foretold === null ? null : setsOf(foretold.steps),
      against,
      recordedOrNull(left?.topcoat?.clear.mean),
      recordedOrNull(left?.budget),
      left?.boundBy.code ?? null,
      oneMore?.combination ?? null,
      recordedOrNull(oneMore?.removal.median),
      recordedOrNull(riskOneMore),
      verdict,
    ];
  }),
});

const medianOf = (foretold: ForetoldPanel | null): number | null =>
  foretold === null ? null : recorded(foretold.removal?.median ?? 0);

const yesNo = (value: boolean): string => (value ? 'yes' : 'no');
