/** How many points are to be marked so that reading them again shows the loss of what may go. */
import { repeatabilityLimit } from '../../base/stats/repeatability-limit.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { PlanResult } from './plan-vehicle.ts';

/** Nobody marks more. */
const MOST = 9;

/** The loss that one point read again shows: the gauge’s repeatability limit. */
export const seenAtOnePoint = ({ settings: { film } }: PlanResult): Micrometres =>
  micrometres(repeatabilityLimit(film.measurement.repeatability));

/** The mean of n points shows one √n times smaller, so (seen at one point / may go)² points, rounded up. */
export const marksFor = (mayGo: Micrometres, result: PlanResult): number =>
  mayGo <= 0 ? 1 : Math.min(MOST, Math.max(1, Math.ceil((seenAtOnePoint(result) / mayGo) ** 2)));
