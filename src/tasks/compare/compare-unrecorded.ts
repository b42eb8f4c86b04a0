/** Panels that were read both times and of which a film record keeps nothing, each with the reason. */
import { type Diagnostic, warning } from '../../base/diagnostics.ts';
import { thicknessText } from '../../base/sentence.ts';
import { standardUncertainty } from '../../base/uncertainty.ts';
import type { PanelComparison } from '../../film/compare/compare-surveys.ts';
import type { Panel } from '../../film/template/template.ts';
import type { VisitPanels } from './compare-visit-record.ts';

export type Unrecorded = { readonly panel: Panel; readonly why: string };

export const unrecordedPanels = (
  compared: readonly PanelComparison[],
  visit: VisitPanels,
): readonly Unrecorded[] => {
  const kept = new Set(visit.map(({ panel }) => panel));
  return compared
    .filter(({ panel }) => !kept.has(panel.id))
    .map((comparison) => ({ panel: comparison.panel, why: whyNot(comparison) }));
};

function whyNot({ slips, gained, change }: PanelComparison): string {
  if (slips.length > 0) return 'a value looks keyed wrongly';
  if (gained) return 'it reads more film than before';
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
