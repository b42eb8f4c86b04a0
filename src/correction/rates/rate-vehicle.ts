/**
 * One vehicle's readings given the shop's rates, by their exact first two moments.
 *
 * Given the shop's φ, the ln factors of a vehicle's steps are normal about its entries with covariance
 *
 *     S = paint² + combination²·[same combination] + step²·[same step]
 *
 * so that a step takes τ = foretold·exp(φ + S/2) in the mean, two of them covary by τ·τ′·(exp(S) − 1)
 * (moments of the lognormal), and a reading is the sum over its steps + N(0, standard error²). The noise is
 * additive: an unresolved or a negative removal speaks for what it is worth.
 */
import { at } from '../../base/at.ts';
import { dot, type Matrix, multiply, solveLinear, transpose } from '../../base/stats/linear.ts';
import { believedError } from '../spot/trial-grid.ts';
import type { RateEvidence } from './rate-evidence.ts';

/** ln-variances about the shop's own rates. */
export type VehicleVariances = {
  readonly paint: number;
  readonly combination: (combination: string) => number;
  readonly step: number;
};

type Step = { readonly observation: number; readonly foretold: number; readonly entry: number };

export type VehicleCase = {
  readonly evidence: readonly RateEvidence[];
  /** Of all its observations; `entry` is the place among the vehicle's `entries`. */
  readonly steps: readonly Step[];
  /** Its combinations' places in the shop's vector. */
  readonly entries: readonly number[];
  /** S of the steps. */
  readonly covariance: Matrix;
};

/** `placeOf` a combination in the shop's vector. */
export function vehicleCase(
  evidence: readonly RateEvidence[],
  variances: VehicleVariances,
  placeOf: (combination: string) => number,
): VehicleCase {
  const typed = evidence.flatMap((one, observation) =>
    one.steps.map((step) => ({ ...step, observation })),
  );
  const entries = [...new Set(typed.map(({ combination }) => placeOf(combination)))];
  return {
    evidence,
    entries,
    steps: typed.map(({ combination, foretold, observation }) => ({
      observation,
      foretold,
      entry: entries.indexOf(placeOf(combination)),
    })),
    covariance: typed.map((a, i) =>
      typed.map(
        (b, j) =>
          variances.paint +
          (a.combination === b.combination ? variances.combination(a.combination) : 0) +
          (i === j ? variances.step : 0),
      ),
    ),
  };
}

/** What a vehicle says of the shop's φ near where it stands, at its own entries. */
export type Information = {
  readonly matrix: Matrix;
  /** Which way, and how strongly, its readings pull. */
  readonly pull: readonly number[];
};

/** Uᵀ·C⁻¹·U and Uᵀ·C⁻¹·(read − expected), U = ∂expected/∂φ and C the covariance of the readings. */
export function information(one: VehicleCase, shop: readonly number[]): Information {
  const { evidence, steps, entries, covariance } = one;
  const taken = steps.map(
    ({ foretold, entry }, i) =>
      foretold * Math.exp(at(shop, at(entries, entry)) + at(at(covariance, i), i) / 2),
  );
  const sumOver = (observation: number, of: (taken: number, step: Step, i: number) => number) =>
    steps.reduce(
      (sum, step, i) => (step.observation === observation ? sum + of(at(taken, i), step, i) : sum),
      0,
    );
  const slopes = evidence.map((_, observation) =>
    entries.map((_entry, place) =>
      sumOver(observation, (um, { entry }) => (entry === place ? um : 0)),
    ),
  );
  const spread = evidence.map(({ removed }, a) =>
    evidence.map((_, b) => {
      const varying = sumOver(a, (um, _step, i) =>
        sumOver(b, (other, _other, j) => um * other * Math.expm1(at(at(covariance, i), j))),
      );
      return varying + (a === b ? believedError(removed) ** 2 : 0);
    }),
  );
  const off = evidence.map(({ removed }, i) => believedValue(removed) - sumOver(i, (um) => um));
  const both = slopes.map((row, i) => [...row, at(off, i)]);
  const weighted = multiply(transpose(slopes), solveLinear(spread, both));
  return {
    matrix: weighted.map((row) => row.slice(0, -1)),
    pull: weighted.map((row) => at(row, row.length - 1)),
  };
}

/** Standard errors under nothing that noise explains; what lies lower counts as that. */
const NOISE_REACH = 2;

const believedValue = ({ value, standardError }: RateEvidence['removed']): number =>
  Math.max(value, -NOISE_REACH * standardError);

/** Variance of ln of a plan's removal about the shop's own, by each step's share in it. */
export const sharedVariance = (covariance: Matrix, shares: readonly number[]): number =>
  dot(
    shares,
    covariance.map((row) => dot(row, shares)),
  );
