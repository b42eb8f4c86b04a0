/** What a good test spot would teach, before it is made. */
import { keptWith } from '../../base/kept.ts';
import { type Micrometres, scale } from '../../base/units.ts';
import type { CorrectionModel } from '../removal/catalogue.ts';
import { type Combination, ladder } from '../removal/combination.ts';
import { removalPriors } from '../removal/removal-knowledge.ts';

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
  const { hardness, combinationSd, usualCombinationSd, stepSd } = removalPriors('unknown', model);
  const middle = middleOf(model);
  if (middle === undefined) return Math.hypot(hardness.sd, usualCombinationSd, stepSd);
  const before = hardness.sd ** 2 + combinationSd(middle.id) ** 2;
  const width = (repeatability * Math.sqrt(2 / MARKS)) / (SETS * middle.perSet);
  const observed = width ** 2 + stepSd ** 2;
  return Math.sqrt((before * observed) / (before + observed) + stepSd ** 2);
}

/** What such a spot takes off its patch; null where the shop has nothing to polish with. */
export function spotTakes(model: CorrectionModel): Micrometres | null {
  const middle = middleOf(model);
  return middle === undefined ? null : scale(middle.perSet, SETS);
}

/** Kept, for every car of a shop is asked about it. */
const middleOf = keptWith((model: CorrectionModel): Combination | undefined => {
  const rungs = ladder(model);
  return rungs[Math.floor(rungs.length / 2)];
});
