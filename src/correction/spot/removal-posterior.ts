/**
 * What test spots teach about a paint: how fast it gives way, how each combination's own rate deviates, and
 * how deep this car's defects are, all at once.
 *
 * With a = ln of the removal of a trial, as a factor of what was foretold for its sets:
 *
 *     a = h + k + e     h ~ N(μ, hardness²)      the paint, shared by all trials
 *                       k ~ N(0, combination²)   the combination, shared by its trials
 *                       e ~ N(0, step²)          the trial
 *     gauge:  removed = foretold·exp(a) + N(0, standard error²)      additive: it may come out below 0
 *     eye:    ln(foretold·exp(a)) − ln depth − d = within·Φ⁻¹(cleared) + N(0, eye²),  d ~ N(0, depth²)
 *
 * Given h and d the trials of one combination know nothing of those of another, so the posterior is a sum
 * over h and d of products over combinations. No random draws: the same records give the same bytes, in any
 * order but for the last digits.
 */
import { at } from '../../base/at.ts';
import { groupBy } from '../../base/group-by.ts';
import { remembered } from '../../base/kept.ts';
import { normalQuantile } from '../../base/stats/normal.ts';
import { believedError, type Grid, type Grids, gridsFor } from './trial-grid.ts';
import type { LogFactor, RemovalPriors, TrialObservation } from './trial-observation.ts';

/** A combination's factor, and how it goes together with the depth scale (covariance of the logarithms). */
export type RateFactor = LogFactor & { readonly withDepth: number };

export type RemovalPosterior = {
  readonly hardness: LogFactor;
  readonly depthScale: LogFactor;
  /**
   * Factor on what was foretold of a combination, tried or not. A spot that cleared by eye raises it or
   * lowers the depth scale: the two move together.
   */
  readonly of: (combination: string) => RateFactor;
  /** Factor of a combination that nobody tried, with the usual doubt about its own rate. */
  readonly untried: RateFactor;
};

/** Nobody sees 0 or 100 % for certain. */
const LEAST_CLEARED = 0.03;
/** Chance, against the likeliest, that a record is a slip: one that nothing explains then moves nothing. */
const SLIP = 1e-12;
/** Far below the chance of a slip. */
const NOTHING = 1e-24;

export function learnRemoval(
  observations: readonly TrialObservation[],
  priors: RemovalPriors,
): RemovalPosterior {
  const telling = observations.filter((one) => one.removed !== null || one.cleared !== null);
  if (telling.length === 0) return beforeAnyTrial(priors);
  const byCombination = groupBy(telling, ({ combination }) => combination);
  const grids = gridsFor(byCombination, priors);
  const tried = [...byCombination].map(([combination, own]) => ({
    combination,
    ...learnCombination(combination, own, grids, priors),
  }));
  return summarise(nodesOf(grids, tried, priors.hardness.mean), tried, priors);
}

const beforeAnyTrial = ({
  hardness,
  depthScaleSd,
  ...priors
}: RemovalPriors): RemovalPosterior => ({
  hardness,
  depthScale: { mean: 0, sd: depthScaleSd },
  ...untriedRates({ ...hardness, withDepth: 0 }, priors),
});

/** Combinations that were not tried: the paint's factor, with the doubt about their own rates. */
function untriedRates(
  paint: RateFactor,
  {
    combinationSd,
    usualCombinationSd,
  }: Pick<RemovalPriors, 'combinationSd' | 'usualCombinationSd'>,
): Pick<RemovalPosterior, 'of' | 'untried'> {
  const withOwn = (sd: number): RateFactor => ({ ...paint, sd: Math.hypot(paint.sd, sd) });
  return {
    of: remembered((combination) => withOwn(combinationSd(combination))),
    untried: withOwn(usualCombinationSd),
  };
}

/** For each pair of a hardness and a depth scale, row by row: likelihood, mean and mean square of h + k. */
type Learned = {
  readonly likelihood: Float64Array;
  readonly mean: Float64Array;
  readonly meanSquare: Float64Array;
};

/** What one combination's trials say of each (h, d), the combination's own deviation summed out. */
function learnCombination(
  combination: string,
  trials: readonly TrialObservation[],
  grids: Grids,
  { hardness, ...priors }: RemovalPriors,
): Learned {
  const own = grids.ownOf(combination);
  const columns = grids.depthScale.mass.length;
  const xReach = grids.hardness.reach + own.reach;
  let seen = new Float64Array((2 * xReach + 1) * columns).fill(1);
  for (const trial of trials) {
    const one = likelihoodOf(trial, xReach, grids, { hardness, ...priors });
    seen = scaleToLargest(seen.map((before, i) => before * (at(one, i) + SLIP)));
  }
  const rows = grids.hardness.mass.length;
  const likelihood = new Float64Array(rows * columns);
  const mean = new Float64Array(rows * columns);
  const meanSquare = new Float64Array(rows * columns);
  for (let row = 0; row < rows; row += 1) {
    const h = row * grids.hardness.stride - grids.hardness.reach;
    for (let j = 0; j < columns; j += 1) {
      let [total, first, second] = [0, 0, 0];
      for (let k = -own.reach; k <= own.reach; k += 1) {
        const both = h + k;
        const x = hardness.mean + both * grids.spacing;
        const weight = at(own.mass, k + own.reach) * at(seen, (both + xReach) * columns + j);
        total += weight;
        first += weight * x;
        second += weight * x * x;
      }
      const node = row * columns + j;
      likelihood[node] = total;
      mean[node] = first / total;
      meanSquare[node] = second / total;
    }
  }
  return { likelihood, mean, meanSquare };
}

/** Likelihood of one trial at each ln factor x and depth scale d, its own part summed out, the largest 1. */
function likelihoodOf(
  { foretold, removed, cleared }: TrialObservation,
  xReach: number,
  { step, depthScale, spacing }: Grids,
  { hardness, eyeSd, depthLogSd }: RemovalPriors,
): Float64Array {
  const aReach = xReach + step.reach;
  const gauge = curve(aReach, (a) =>
    removed === null
      ? 0
      : (removed.value - foretold * Math.exp(hardness.mean + a * spacing)) / believedError(removed),
  );
  const seen = cleared === null ? null : needed(foretold, cleared, depthLogSd);
  const eyeReach = aReach + depthScale.reach;
  const eye = curve(eyeReach, (a) =>
    seen === null ? 0 : (hardness.mean + a * spacing - seen) / eyeSd,
  );
  // Where the gauge says no, nothing needs to be summed.
  const from = gauge.findIndex((one) => one > NOTHING) - aReach;
  const to = gauge.findLastIndex((one) => one > NOTHING) - aReach;
  const columns = depthScale.mass.length;
  const result = new Float64Array((2 * xReach + 1) * columns);
  for (let x = -xReach; x <= xReach; x += 1) {
    for (let j = 0; j < columns; j += 1) {
      const d = j * depthScale.stride - depthScale.reach;
      let sum = 0;
      for (let a = Math.max(from, x - step.reach); a <= Math.min(to, x + step.reach); a += 1) {
        sum +=
          at(step.mass, a - x + step.reach) * at(gauge, a + aReach) * at(eye, a - d + eyeReach);
      }
      result[(x + xReach) * columns + j] = sum;
    }
  }
  return scaleToLargest(result);
}

/** The ln factor at which the share that was seen to go is the share that goes. */
function needed(
  foretold: number,
  { share, depth }: { readonly share: number; readonly depth: number },
  depthLogSd: number,
): number {
  const visible = Math.min(1 - LEAST_CLEARED, Math.max(LEAST_CLEARED, share));
  return Math.log(depth / foretold) + depthLogSd * normalQuantile(visible);
}

/** Normal density of z at −reach … reach, the largest 1 however far off all of them are. */
function curve(reach: number, zOf: (index: number) => number): Float64Array {
  const z = Float64Array.from({ length: 2 * reach + 1 }, (_, i) => zOf(i - reach) ** 2 / 2);
  const least = z.reduce((smallest, one) => Math.min(smallest, one), Number.POSITIVE_INFINITY);
  return z.map((one) => Math.exp(least - one));
}

function scaleToLargest(values: Float64Array<ArrayBuffer>): Float64Array<ArrayBuffer> {
  const largest = values.reduce((most, one) => Math.max(most, one), 0);
  return largest > 0 ? values.map((value) => value / largest) : values;
}

/** Hardness and depth scale, how likely the two are together, and where they stand in the tables. */
type Node = { readonly h: number; readonly d: number; readonly weight: number };

function nodesOf(
  { hardness, depthScale, spacing }: Grids,
  tried: readonly Learned[],
  middle: number,
): readonly Node[] {
  const offset = ({ stride, reach }: Grid, i: number): number => (i * stride - reach) * spacing;
  const columns = depthScale.mass.length;
  const nodes = [...hardness.mass].flatMap((ofHardness, i) =>
    [...depthScale.mass].map((ofDepth, j) => ({
      h: middle + offset(hardness, i),
      d: offset(depthScale, j),
      weight: tried.reduce(
        (product, { likelihood }) => product * at(likelihood, i * columns + j),
        ofHardness * ofDepth,
      ),
    })),
  );
  const total = nodes.reduce((sum, { weight }) => sum + weight, 0);
  return nodes.map((node) => ({ ...node, weight: node.weight / total }));
}

function summarise(
  nodes: readonly Node[],
  tried: readonly (Learned & { readonly combination: string })[],
  priors: RemovalPriors,
): RemovalPosterior {
  const expect = (of: (node: Node, index: number) => number): number =>
    nodes.reduce((sum, node, i) => sum + node.weight * of(node, i), 0);
  const factor = (mean: number, meanSquare: number): LogFactor => ({
    mean,
    sd: Math.sqrt(Math.max(0, meanSquare - mean ** 2)),
  });
  const [h, d] = [expect((node) => node.h), expect((node) => node.d)];
  const hardness = factor(
    h,
    expect((node) => node.h ** 2),
  );
  const withDepth = expect((node) => node.h * node.d) - h * d;
  const known = new Map(
    tried.map(({ combination, mean, meanSquare }) => {
      const x = expect((_, i) => at(mean, i));
      const own = factor(
        x,
        expect((_, i) => at(meanSquare, i)),
      );
      const ofDepth = expect((node, i) => node.d * at(mean, i)) - x * d;
      return [combination, { ...own, withDepth: ofDepth }] as const;
    }),
  );
  const { of, untried } = untriedRates({ ...hardness, withDepth }, priors);
  return {
    hardness,
    depthScale: factor(
      d,
      expect((node) => node.d ** 2),
    ),
    of: (combination) => known.get(combination) ?? of(combination),
    untried,
  };
}
