/**
 * Grids on which the posterior of test spots is summed. Their nodes are whole multiples of one spacing, so
 * that sums such as hardness + own deviation fall on nodes again.
 *
 * The trapezoidal rule of a normal density of width w at spacing s is off by 2·exp(−2π²(w/s)²) of it
 * (Trefethen & Weideman 2014, SIAM Review 56(3):385). With s = .9·w of whatever is narrowest that is 5e-11.
 */
import { normalDensity } from '../../base/stats/normal.ts';
import type { RemovalPriors, TrialObservation } from './trial-observation.ts';

/** Nodes at every `stride`-th multiple of the spacing, from −reach to +reach, with their masses. */
export type Grid = {
  readonly reach: number;
  readonly stride: number;
  readonly mass: Float64Array;
};

export type Grids = {
  readonly spacing: number;
  readonly hardness: Grid;
  readonly step: Grid;
  readonly depthScale: Grid;
  readonly ownOf: (combination: string) => Grid;
};

/** Grids reach this many SDs to either side: 2e-9 lies beyond. */
const REACH = 6;
const SPACING_PER_WIDTH = 0.9;
/** No gauge tells a removal to better than this share of it. */
const FINEST_WIDTH = 0.05;

/** Standard error of a removal, as a gauge can be believed. */
export const believedError = ({ value, standardError }: { value: number; standardError: number }) =>
  Math.max(standardError, FINEST_WIDTH * Math.abs(value));

/** Width of the product of normal densities: 1/√Σw⁻². */
const together = (widths: readonly number[]): number =>
  1 / Math.sqrt(widths.reduce((sum, width) => sum + width ** -2, 0));

const present = (width: number): readonly number[] => (width > 0 ? [width] : []);

type Trials = ReadonlyMap<string, readonly TrialObservation[]>;

/** What the trials are wide in, in ln: of the paint's factor, of the depth scale, and of whatever is narrowest. */
function widthsOf(
  byCombination: Trials,
  priors: RemovalPriors,
): Readonly<Record<'paint' | 'depth' | 'finest', number>> {
  const { hardness, stepSd, depthScaleSd, eyeSd } = priors;
  const seen = (trial: TrialObservation): readonly number[] => [
    ...(trial.removed === null
      ? []
      : [believedError(trial.removed) / Math.max(trial.foretold, trial.removed.value)]),
    ...(trial.cleared === null ? [] : [eyeSd]),
  ];
  const trials = [...byCombination.values()].flat();
  const eyes = trials.filter(({ cleared }) => cleared !== null).length;
  /** What a trial's likelihood is wide in ln of its removal, and in ln of its combination's rate. */
  const byTrial = trials.map((trial) => together([...seen(trial), ...present(stepSd)]));
  const byRate = (trial: TrialObservation): number => Math.hypot(stepSd, together(seen(trial)));
  const combinations = [...byCombination].map(([combination, own]) => {
    const sd = priors.combinationSd(combination);
    const likelihood = together(own.map(byRate));
    return { rate: together([...present(sd), likelihood]), paint: Math.hypot(sd, likelihood) };
  });
  const paint = together([
    ...present(hardness.sd),
    ...combinations.map((combination) => combination.paint),
  ]);
  const depth = together([...present(depthScaleSd), ...Array.from({ length: eyes }, () => eyeSd)]);
  const finest = Math.min(paint, depth, ...byTrial, ...combinations.map(({ rate }) => rate));
  return { paint, depth, finest };
}

export function gridsFor(byCombination: Trials, priors: RemovalPriors): Grids {
  const { paint, depth, finest } = widthsOf(byCombination, priors);
  const spacing = SPACING_PER_WIDTH * finest;
  const grid = (sd: number, width: number): Grid => {
    const stride = Math.max(1, Math.floor((SPACING_PER_WIDTH * width) / spacing + 1e-9));
    const nodes = Math.ceil((REACH * sd) / (spacing * stride));
    const density = Float64Array.from({ length: 2 * nodes + 1 }, (_, i) =>
      sd === 0 ? 1 : normalDensity(((i - nodes) * stride * spacing) / sd),
    );
    const sum = density.reduce((total, one) => total + one, 0);
    return { reach: nodes * stride, stride, mass: density.map((one) => one / sum) };
  };
  return {
    spacing,
    hardness: grid(priors.hardness.sd, paint),
    step: grid(priors.stepSd, finest),
    depthScale: grid(priors.depthScaleSd, depth),
    ownOf: (combination) => grid(priors.combinationSd(combination), finest),
  };
}
