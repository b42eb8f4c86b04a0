/** What a good test spot would teach, before it is made. */
import type { Micrometres } from '../base/units.ts';
import type { CorrectionModel } from './catalogue.ts';
import { ladder } from './combination.ts';

/** A spot worth making: marks read before and after, and sets worked on it. */
const MARKS = 10;
const SETS = 2;

/**
 * ln-SD of a removal by a combination that was tried on this paint, as expected before trying it.
 *
 * By linear theory on the logarithm: the spot observes ln rate with variance (s·√(2/n)/R)² + step², R the
 * removal foretold for two sets by the middle of the ladder; with the prior's hardness² + combination² that
 * leaves 1/(1/v + 1/o), and the next step adds its own. s is the SD of a repeated reading.
 */
export function logSdAfterSpot(model: CorrectionModel, repeatability: Micrometres): number {
  const { hardnessLogSd, combinationLogSd, stepLogSd } = model.removal;
  const rungs = ladder(model);
  const middle = rungs[Math.floor(rungs.length / 2)];
  const before = hardnessLogSd ** 2 + combinationLogSd ** 2;
  if (middle === undefined) return Math.sqrt(before + stepLogSd ** 2);
  const width = (repeatability * Math.sqrt(2 / MARKS)) / (SETS * middle.perSet);
  const observed = width ** 2 + stepLogSd ** 2;
  return Math.sqrt((before * observed) / (before + observed) + stepLogSd ** 2);
}
