/**
 * Film that came on by more than wax, a coating or a gauge that moved makes: paint.
 *
 * Wax and coatings are some µm, a coat of clear 30 or more, a blend that was rubbed down less; 15 µm by assumption.
 */
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { PanelComparison } from './compare-surveys.ts';

const LEAST_OF_PAINT = 15;

export const isPaintGain = (gained: number): boolean => gained >= LEAST_OF_PAINT;

export type GainedPart = {
  readonly comparison: PanelComparison;
  /** By how much it rose from one visit to the next, where it did. */
  readonly rise: { readonly by: Micrometres } | null;
};

/** By how much it gained where that is paint: over all visits, from one to the next, or in a zone of it; else null. */
export function paintGained({ comparison, rise }: GainedPart): Micrometres | null {
  const gains = [comparison, ...comparison.zones].flatMap(({ gained, change }) =>
    gained && change !== null ? [-change.removed.value] : [],
  );
  const most = Math.max(0, rise?.by ?? 0, ...gains);
  return isPaintGain(most) ? micrometres(most) : null;
}
