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
 * The posterior is summed over grids of one spacing, on which the trapezoidal rule of smooth densities that
 * fade at both ends is exact to far beyond use (Trefethen & Weideman 2014, SIAM Review 56(3):385). No random
 * draws: the same records give the same bytes, in any order but for the last digits.
 */
import { groupBy } from '../base/group-by.ts';
import { normalDensity, normalQuantile } from '../base/stats/normal.ts';

export type TrialObservation = {
  readonly combination: string;
  /** Median removal foretold for all its sets, before anything was learned, µm. */
  readonly foretold: number;
  /** Removal by the gauge, µm; null where the film was not read. */
  readonly removed: { readonly value: number; readonly standardError: number } | null;
  /** Share of the defects that went, by eye, and their median depth as assumed, µm. */
  readonly cleared: { readonly share: number; readonly depth: number } | null;
};

/** ln-SDs before any trial; `hardness` also carries what was declared of the paint. */
export type RemovalPriors = {
  readonly hardness: { readonly mean: number; readonly sd: number };
  readonly combinationSd: number;
  readonly stepSd: number;
  readonly depthScaleSd: number;
  /** ln-SD of depth among the defects of one panel. */
  readonly depthLogSd: number;
  readonly eyeSd: number;
};

/** A factor known by the mean and SD of its logarithm. */
export type LogFactor = { readonly mean: number; readonly sd: number };

export type RemovalPosterior = {
  readonly hardness: LogFactor;
  readonly depthScale: LogFactor;
  /**
   * Factor on what was foretold of a combination, tried or not, and how it goes together with the depth
   * scale (covariance of the logarithms): a spot that cleared by eye raises the one or lowers the other.
   */
  readonly of: (combination: string) => LogFactor & { readonly withDepth: number };
};

/** Nobody sees 0 or 100 % for certain. */
const LEAST_CLEARED = 0.03;
/** Grids reach this many SDs to either side. */
const REACH = 6;
/** Spacing over the narrowest density: the sum over a normal one is off by e^(−2π²·4), 1e-34, and by 1e-8 over one half as wide. */
const SPACING = 1 / 2;
/** Chance, against the likeliest, that a record is a slip: one that nothing explains then moves nothing. */
const SLIP = 1e-12;
/** No gauge tells a removal to better than this share of it. */
const FINEST_WIDTH = 0.05;

export function learnRemoval(
  observations: readonly TrialObservation[],
  priors: RemovalPriors,
): RemovalPosterior {
  const grids = gridsFor(observations, priors);
  const tried = [...groupBy(observations, ({ combination }) => combination)].map(
    ([combination, own]) => ({ combination, ...learnCombination(own, grids, priors) }),
  );
  const weights = normalised(
    grids.h.flatMap((h) =>
      grids.d.map((d) => {
        const seen = tried.reduce(
          (product, { likelihood }) => product * likelihood(h.index, d.index),
          1,
        );
        return { h, d, weight: h.weight * d.weight * seen };
      }),
    ),
  );
  const expect = (of: (node: Node) => number): number =>
    weights.reduce((sum, node) => sum + node.weight * of(node), 0);
  return summarise(expect, tried, priors);
}

/** A node of a grid, with the mass of its density there. */
type GridNode = { readonly index: number; readonly value: number; readonly weight: number };
type Grids = {
  readonly spacing: number;
  readonly h: readonly GridNode[];
  readonly k: readonly GridNode[];
  readonly e: readonly GridNode[];
  readonly d: readonly GridNode[];
};
type Node = { readonly h: GridNode; readonly d: GridNode; readonly weight: number };

function gridsFor(observations: readonly TrialObservation[], priors: RemovalPriors): Grids {
  const { hardness, combinationSd, stepSd, depthScaleSd, eyeSd } = priors;
  const widths = [
    hardness.sd,
    combinationSd,
    stepSd,
    depthScaleSd,
    ...observations.flatMap(({ cleared }) => (cleared === null ? [] : [eyeSd])),
    ...observations.flatMap(({ removed, foretold }) =>
      removed === null
        ? []
        : [Math.max(FINEST_WIDTH, removed.standardError / Math.max(foretold, removed.value))],
    ),
  ];
  // Many records of one thing leave a posterior narrower than any of them.
  const crowd = Math.sqrt(Math.max(1, observations.length / 4));
  const spacing = (SPACING / crowd) * Math.min(...widths.filter((width) => width > 0));
  const grid = (mean: number, sd: number): readonly GridNode[] => {
    const reach = Math.ceil((REACH * sd) / spacing);
    return normalised(
      Array.from({ length: 2 * reach + 1 }, (_, i) => {
        const index = i - reach;
        const weight = sd === 0 ? 1 : normalDensity((index * spacing) / sd);
        return { index, value: mean + index * spacing, weight };
      }),
    );
  };
  return {
    spacing,
    h: grid(hardness.mean, hardness.sd),
    k: grid(0, combinationSd),
    e: grid(0, stepSd),
    d: grid(0, depthScaleSd),
  };
}

function normalised<T extends { readonly weight: number }>(nodes: readonly T[]): readonly T[] {
  const total = nodes.reduce((sum, { weight }) => sum + weight, 0);
  return nodes.map((node) => ({ ...node, weight: node.weight / total }));
}

type At = (h: number, d: number) => number;
type Tried = {
  readonly combination: string;
  readonly likelihood: At;
  /** Mean and mean square of ln factor h + k, the paint and the depth scale given. */
  readonly mean: At;
  readonly meanSquare: At;
};

/** What one combination's trials say of each (h, d), the combination's own deviation summed out. */
function learnCombination(
  observations: readonly TrialObservation[],
  grids: Grids,
  priors: RemovalPriors,
): Omit<Tried, 'combination'> {
  const { h, k, d, spacing } = grids;
  const [hReach, kReach, dReach] = [h, k, d].map((grid) => (grid.length - 1) / 2) as [
    number,
    number,
    number,
  ];
  const xReach = hReach + kReach;
  const together = observations.reduce<At>(
    (before, one) => {
      const own = likelihoodOf(one, grids, priors);
      return table(xReach, dReach, (x, j) => before(x, j) * own(x, j), 'to its largest');
    },
    () => 1,
  );
  const moment = (power: 0 | 1 | 2): At =>
    table(hReach, dReach, (i, j) =>
      k.reduce((sum, { index, weight }) => {
        const x = priors.hardness.mean + (i + index) * spacing;
        return sum + weight * x ** power * together(i + index, j);
      }, 0),
    );
  const [likelihood, first, second] = [moment(0), moment(1), moment(2)];
  const given =
    (of: At): At =>
    (i, j) =>
      likelihood(i, j) === 0 ? 0 : of(i, j) / likelihood(i, j);
  return { likelihood, mean: given(first), meanSquare: given(second) };
}

/** Likelihood of one trial at ln factor x and depth scale d, by grid indices; the trial's own part summed out. */
function likelihoodOf(
  { foretold, removed, cleared }: TrialObservation,
  { e, h, k, d, spacing }: Grids,
  { hardness, eyeSd, depthLogSd }: RemovalPriors,
): At {
  const reach = (grid: readonly GridNode[]): number => (grid.length - 1) / 2;
  const aReach = reach(h) + reach(k) + reach(e);
  const gauge = (a: number): number =>
    removed === null
      ? 0
      : logDensity(
          (removed.value - foretold * Math.exp(hardness.mean + a * spacing)) /
            removed.standardError,
        );
  const seen = cleared === null ? null : needed(foretold, cleared, depthLogSd);
  const eye = (aMinusD: number): number =>
    seen === null ? 0 : logDensity((hardness.mean + aMinusD * spacing - seen) / eyeSd);
  const byGauge = line(aReach, gauge);
  const byEye = line(aReach + reach(d), eye);
  const summed = table(
    reach(h) + reach(k),
    reach(d),
    (x, j) =>
      e.reduce((sum, { index, weight }) => {
        const a = x + index;
        return sum + weight * Math.exp(byGauge(a) + byEye(a - j));
      }, 0),
    'to its largest',
  );
  return (x, j) => summed(x, j) + SLIP;
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

/** Values at indices −reach … reach, worked out once, the largest of them 0. */
function line(reach: number, of: (index: number) => number): (index: number) => number {
  const values = Float64Array.from({ length: 2 * reach + 1 }, (_, i) => of(i - reach));
  const largest = values.reduce((most, value) => Math.max(most, value), Number.NEGATIVE_INFINITY);
  return (index) => (values[index + reach] ?? Number.NEGATIVE_INFINITY) - largest;
}

const logDensity = (z: number): number => -(z ** 2) / 2;

/** Values at indices −rows … rows by −columns … columns, worked out once. */
function table(rows: number, columns: number, of: At, scaled?: 'to its largest'): At {
  const width = 2 * columns + 1;
  const values = new Float64Array((2 * rows + 1) * width);
  for (let i = -rows; i <= rows; i += 1) {
    for (let j = -columns; j <= columns; j += 1) {
      values[(i + rows) * width + j + columns] = of(i, j);
    }
  }
  const unit = scaled === undefined ? 1 : values.reduce((most, one) => Math.max(most, one), 0);
  const scale = unit > 0 ? unit : 1;
  return (i, j) => (values[(i + rows) * width + j + columns] ?? 0) / scale;
}

function summarise(
  expect: (of: (node: Node) => number) => number,
  tried: readonly Tried[],
  { combinationSd }: RemovalPriors,
): RemovalPosterior {
  const [h, d] = [expect((node) => node.h.value), expect((node) => node.d.value)];
  const factor = (mean: number, meanSquare: number): LogFactor => ({
    mean,
    sd: Math.sqrt(Math.max(0, meanSquare - mean ** 2)),
  });
  const hardness = factor(
    h,
    expect((node) => node.h.value ** 2),
  );
  const untried = {
    mean: h,
    sd: Math.hypot(hardness.sd, combinationSd),
    withDepth: expect((node) => node.h.value * node.d.value) - h * d,
  };
  const known = new Map(
    tried.map(({ combination, mean, meanSquare }) => {
      const x = expect((node) => mean(node.h.index, node.d.index));
      const square = expect((node) => meanSquare(node.h.index, node.d.index));
      const withDepth = expect((node) => node.d.value * mean(node.h.index, node.d.index)) - x * d;
      return [combination, { ...factor(x, square), withDepth }] as const;
    }),
  );
  return {
    hardness,
    depthScale: factor(
      d,
      expect((node) => node.d.value ** 2),
    ),
    of: (combination) => known.get(combination) ?? untried,
  };
}
