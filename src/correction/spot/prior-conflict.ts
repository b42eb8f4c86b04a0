/**
 * Trials that contradict what was held of paints before them.
 *
 * What a trial teaches rests on the prior being right of this car. A reading outside the 95 % that was foretold of it says
 * that something is not as held: the paint, the way of working, the gauge. It makes nothing surer (prior-data conflict;
 * as En > 1 in ISO 13528, where a result and its reference disagree beyond what both are uncertain by). A value above is
 * still the best there is. One below, which would call for stronger steps, counts for nothing: a slip of it (a place
 * that was not worked, marks read twice before) would cost the clear, hard paint in earnest a mark that stays.
 */
import { remembered } from '../../base/kept.ts';
import { normalCdf, normalQuantile } from '../../base/stats/normal.ts';
import { mean } from '../../base/stats/summary.ts';
import type { RateFactor, RemovalPosterior } from './removal-posterior.ts';
import type { LogFactor, RemovalPriors, TrialObservation } from './trial-observation.ts';

const COVERAGE = 0.95;
/** Slices of equal chance in which what was foretold is summed. */
const SLICES = 200;

/** What a trial took beside what was foretold of it, where it lies outside. */
export type PriorConflict = 'more' | 'less' | null;

export function conflictWithPrior(
  { combination, foretold, removed }: TrialObservation,
  priors: RemovalPriors,
): PriorConflict {
  if (removed === null) return null;
  const sd = Math.hypot(priors.hardness.sd, priors.combinationSd(combination), priors.stepSd);
  const below = mean(
    Array.from({ length: SLICES }, (_, i) => {
      const a = priors.hardness.mean + sd * normalQuantile((i + 0.5) / SLICES);
      return normalCdf((removed.value - foretold * Math.exp(a)) / removed.standardError);
    }),
  );
  const tail = (1 - COVERAGE) / 2;
  if (below < tail) return 'less';
  return below > 1 - tail ? 'more' : null;
}

/** What was learnt, nothing of it surer than before any trial. */
export function noSurer(learnt: RemovalPosterior, before: RemovalPosterior): RemovalPosterior {
  const wider = <Factor extends LogFactor>(factor: Factor, { sd }: LogFactor): Factor => ({
    ...factor,
    sd: Math.max(factor.sd, sd),
  });
  return {
    hardness: wider(learnt.hardness, before.hardness),
    depthScale: learnt.depthScale,
    of: remembered(
      (combination): RateFactor => wider(learnt.of(combination), before.of(combination)),
    ),
    untried: wider(learnt.untried, before.untried),
  };
}
