/** A comparison for a spreadsheet: a row for each panel, and for each zone in place of one in two. */
import type { ForetoldPanel } from '../../formats/plan-file.ts';
import type { CompareResult } from '../../tasks/compare/compare-files.ts';
import type { PartLeft } from '../../tasks/compare/part-left.ts';
import type { DataTable } from '../model.ts';
import { recorded, recordedOrNull } from '../recorded.ts';
import { type ColumnsOf, codesOf, tableOf } from '../table-of.ts';
import { setsRecord } from './compare-record.ts';
import { isSeen, partsLeft } from './compare-words.ts';

export function compareTable({ vehicle, panels }: CompareResult): DataTable {
  const { columns: names, rows } = tableOf(columns, partsLeft(panels));
  return { columns: ['vehicle', ...names], rows: rows.map((row) => [vehicle, ...row]) };
}

const medianOf = (foretold: ForetoldPanel | null): number | null =>
  foretold === null ? null : recorded(foretold.removal?.median ?? 0);

const yesNo = (value: boolean): string => (value ? 'yes' : 'no');

const columns: ColumnsOf<PartLeft> = {
  panel: ({ comparison }) => comparison.panel.id,
  zone: ({ comparison }) => comparison.zone,
  compared_by: ({ comparison }) => comparison.by,
  n_pairs: ({ comparison }) => comparison.pairs.length,
  n_before: ({ comparison }) => comparison.counts.before,
  n_after: ({ comparison }) => comparison.counts.after,
  removed_um: ({ comparison }) => recordedOrNull(comparison.change?.removed.value),
  removed_low_um: ({ comparison }) => recordedOrNull(comparison.change?.low),
  removed_high_um: ({ comparison }) => recordedOrNull(comparison.change?.high),
  resolved: ({ comparison }) => yesNo(isSeen(comparison)),
  gained: ({ comparison, rise }) => yesNo(comparison.gained || rise !== null),
  seen_surely_um: ({ comparison }) => recordedOrNull(comparison.change?.detectable.surely),
  planned_um: ({ planned }) => medianOf(planned),
  worked_um: ({ foretold }) => medianOf(foretold),
  planned_sets: (part) => setsRecord(part).planned_sets,
  worked_sets: (part) => setsRecord(part).worked_sets,
  against_plan: ({ against }) => against,
  allowed_um: ({ allowed }) => recordedOrNull(allowed?.most),
  overrun: ({ overruns }) => codesOf(overruns),
  clear_um: ({ left }) => recordedOrNull(left?.topcoat?.clear.mean),
  clear_sd_um: ({ left }) => recordedOrNull(left?.topcoat?.clear.sd),
  budget_left_um: ({ left }) => recordedOrNull(left?.budget),
  bound_by: ({ left }) => left?.boundBy.code ?? null,
  one_more_set_combination: ({ oneMore }) => oneMore?.combination ?? null,
  one_more_set_removal_um: ({ oneMore }) => recordedOrNull(oneMore?.removal.median),
  one_more_set_risk_prob: ({ riskOneMore }) => recordedOrNull(riskOneMore),
  verdict: ({ verdict }) => verdict,
  reasons: ({ reasons }) => codesOf(reasons),
  reasons_text: ({ reasons }) => reasons.map(({ text }) => text).join('; '),
};
