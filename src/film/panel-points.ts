/** Readings of one panel, gathered to points: the value of a point is the mean of its repeats. */
import { groupBy, type OneOrMore } from '../base/group-by.ts';
import { pooledVarianceOf } from '../base/stats/pooled-variance.ts';
import { mean } from '../base/stats/summary.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import type { PointPlace, Reading } from './reading.ts';

export type PanelPoint = {
  readonly point: string;
  readonly thickness: Micrometres;
  readonly repeats: readonly Micrometres[];
  readonly place: PointPlace;
  readonly curved: boolean;
};

/** Points in order of first appearance; all readings are of the same layer, or of the total film. */
export function gatherPoints(readings: readonly Reading[]): readonly PanelPoint[] {
  return areReadOnce(readings)
    ? readings.map((one) => pointOf([one]))
    : [...groupBy(readings, pointKey).values()].map(pointOf);
}

/** Nearly every panel: a few points, none of them read again. */
function areReadOnce(readings: readonly Reading[]): boolean {
  if (readings.length > FEW) return false;
  for (const [k, { point, place }] of readings.entries()) {
    for (let other = 0; other < k; other += 1) {
      if (readings[other]?.point === point && readings[other]?.place === place) return false;
    }
  }
  return true;
}
/** Of more a table is faster. */
const FEW = 12;

function pointOf(repeats: OneOrMore<Reading>): PanelPoint {
  const [{ point, thickness, place, curved }] = repeats;
  if (repeats.length === 1) return { point, thickness, repeats: [thickness], place, curved };
  const values = repeats.map((one) => one.thickness);
  return {
    ...{ point, thickness: micrometres(mean(values)), repeats: values, place },
    curved: repeats.some((one) => one.curved),
  };
}

/** Most points are on the face, and their names are keys as they are. */
const pointKey = ({ place, point }: Reading): string =>
  place === 'face' && point.charCodeAt(0) !== 0 ? point : `\u0000${place}\u0000${point}`;

/**
 * SD of a reading repeated at its point, pooled over the points that have repeats, with the degrees
 * of freedom it rests on. Undefined when no point was repeated.
 */
export function pooledRepeatability(
  points: readonly PanelPoint[],
): { readonly sd: Micrometres; readonly dof: number } | undefined {
  const pooled = pooledVarianceOf(points.map(({ repeats }) => repeats));
  return pooled === undefined
    ? undefined
    : { sd: micrometres(Math.sqrt(pooled.variance)), dof: pooled.dof };
}

/** Display steps in use, largest first: tenths and wholes of a micrometre, the same of a mil. */
const DISPLAY_STEPS = [10, 5, 2.54, 1, 0.5, 0.254, 0.1, 0.0254, 0.01] as const;

/** The largest display step that all readings are multiples of, read off the data itself. */
export function displayStep(values: readonly Micrometres[]): Micrometres {
  const fits = (step: number): boolean =>
    values.every((value) => Math.abs(value / step - Math.round(value / step)) < 1e-6);
  return micrometres(values.length === 0 ? 0 : (DISPLAY_STEPS.find(fits) ?? 0));
}
