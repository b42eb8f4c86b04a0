/** What a panel that a test spot of its own frees is held to, whatever else is learned of it. */
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { LimitCode } from '../limits/limit.ts';
import type { PanelSurvey } from '../survey.ts';

const BY_SPOT: readonly LimitCode[] = ['sound-panels', 'spot-depth'];

/** By what its spot showed and by the other panels; null of a panel that no spot frees. */
export function heldBySpot({ limits }: Pick<PanelSurvey, 'limits'>): Micrometres | null {
  const held = limits.flatMap(({ code, value }) => (BY_SPOT.includes(code) ? [value] : []));
  return held.length === 0 ? null : micrometres(Math.min(...held));
}
