/** How many points are to be marked so that reading them again shows the loss of what may go. */
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { PlanResult } from '../../tasks/plan/plan-vehicle.ts';

/** A change of so many SDs of a difference is seen at the level of 95 %. */
const SEEN = 1.96;

/** Nobody marks more. */
const MOST = 9;

/** The loss that one point read again shows: 1.96·√2 of the gauge's repeatability. */
export const seenAtOnePoint = ({ settings: { film } }: PlanResult): Micrometres =>
  micrometres(SEEN * Math.SQRT2 * film.measurement.repeatability);

/** The mean of n points shows one √n times smaller, so (seen at one point / may go)² points, rounded up. */
export const marksFor = (mayGo: Micrometres, result: PlanResult): number =>
  mayGo <= 0 ? 1 : Math.min(MOST, Math.max(1, Math.ceil((seenAtOnePoint(result) / mayGo) ** 2)));
