/** Values of a panel that only rise or only fall from point to point. */
import { at } from '../base/at.ts';
import { repeatabilityLimit } from '../base/stats/repeatability-limit.ts';
import type { PanelPoint } from '../film/panel-points.ts';

const stepsOf = (points: readonly PanelPoint[]): readonly number[] =>
  points.slice(1).map(({ thickness }, k) => thickness - at(points, k).thickness);

/** Each value above the one before, or each under it. */
export function isInOrder(points: readonly PanelPoint[]): boolean {
  const steps = stepsOf(points);
  return steps.length > 0 && (steps.every((step) => step > 0) || steps.every((step) => step < 0));
}

/** The same where steps the other way are no more than repeats differ by: who reads these points again may find them in order. */
export function mayBeInOrder(points: readonly PanelPoint[], repeatability: number): boolean {
  const steps = stepsOf(points);
  const repeats = Math.min(...points.map((point) => point.repeats.length));
  const none = repeatabilityLimit(repeatability) / Math.sqrt(repeats);
  return (
    steps.length > 0 && (steps.every((step) => step > -none) || steps.every((step) => step < none))
  );
}
