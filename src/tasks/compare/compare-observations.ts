/** What came off the panels that were worked to a plan, as a shop keeps it for its next vehicles. */
import type { RateObservation } from '../../formats/rates.ts';
import { isOfGauge } from './common-shift.ts';
import type { CompareResult } from './compare-files.ts';
import { measuredOf } from './compare-plan.ts';

/**
 * By the gauge, for all steps as they were worked; film that came on is no measurement of a removal, and the steps of a
 * plan of other readings may be those of other panels. Nothing where the gauge shifted, as far as anybody can tell. Where
 * a rate explains a common shift as well, it is kept: without the cars that lost most, rates would come out too low.
 */
export const compareObservations = (
  { panels, planOfOthers, shift }: Pick<CompareResult, 'panels' | 'planOfOthers' | 'shift'>,
  { date, vehicle }: { readonly date: string; readonly vehicle: string },
): readonly RateObservation[] =>
  (planOfOthers.length > 0 || isOfGauge(shift) ? [] : panels)
    .flatMap((panel) => (panel.zones.length === 0 ? [panel] : panel.zones))
    .flatMap(({ comparison, foretold }): readonly RateObservation[] => {
      const { change, gained, panel } = comparison;
      if (change === null || gained || foretold === null || foretold.steps.length === 0) return [];
      const { value: mean, standardError } = measuredOf(change);
      const steps = foretold.steps.map(({ combination, sets }) => ({ combination, sets }));
      return [{ date, vehicle, panel: panel.id, steps, removed: { mean, standardError } }];
    });
