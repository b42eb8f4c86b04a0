/** Panels that were read both times and of which a film record keeps nothing, each with the reason. */
import { type Diagnostic, warning } from '../../base/diagnostics.ts';
import { thicknessText } from '../../base/sentence.ts';
import { standardUncertainty } from '../../base/uncertainty.ts';
import type { PanelComparison } from '../../film/compare/panel-comparison.ts';
import type { Panel } from '../../film/template/template.ts';
import type { VisitPanels } from './compare-visit-record.ts';
import type { PartLeft } from './part-left.ts';

export type Unrecorded = { readonly panel: Panel; readonly why: string };

export const unrecordedPanels = (
  compared: readonly Pick<PartLeft, 'comparison' | 'rise'>[],
  visit: VisitPanels,
): readonly Unrecorded[] => {
  const kept = new Set(visit.map(({ panel }) => panel));
  return compared
    .filter(({ comparison: { panel } }) => !kept.has(panel.id))
    .map(({ comparison, rise }) => ({
      panel: comparison.panel,
      why: whyNot(comparison, rise !== null),
    }));
};

function whyNot({ slips, swap, gained, change }: PanelComparison, rise: boolean): string {
  if (slips.length > 0) return 'a value looks keyed wrongly';
  if (swap !== null) return 'its points fit another way round';
  if (gained) return 'it reads more film than before';
  if (rise) return 'it reads more film at one visit than at the one before';
  if (change === null) return 'nothing to compare by';
  return `what came off is known to ± ${thicknessText(standardUncertainty(change.removed), 'um')} µm (SD) only`;
}

/** A visit that is forgotten frees film that is gone. */
export const notRecorded = (
  unrecorded: readonly Unrecorded[],
  after: string,
): readonly Diagnostic[] =>
  unrecorded.length === 0
    ? []
    : [
        warning(
          'compare-not-recorded',
          `not on the film record: ${unrecorded.map(({ panel, why }) => `${panel.name} (${why})`).join(', ')}`,
          {
            at: { file: after },
            hint: 'read them again and compare once more: what came off them counts at no later visit',
          },
        ),
      ];
