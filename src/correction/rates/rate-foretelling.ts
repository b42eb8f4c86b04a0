/**
 * How well earlier vehicles foretell another: each vehicle's readings from those of the others alone, beside
 * what is foretold by the built-in rates.
 *
 * A reading foretold is lognormal removal + N(0, standard error²). Its place within that, P(foretold ≤ read),
 * is by quadrature; between 5 and 95 % it lies in the range that is to hold nine of ten.
 */

import { at, valueAt } from '../../base/at.ts';
import { add } from '../../base/stats/linear.ts';
import { normalCdf } from '../../base/stats/normal.ts';
import { expectOverNormal } from '../../base/stats/quadrature.ts';
import { rootMeanSquare } from '../../base/stats/summary.ts';
import { believedError } from '../spot/trial-grid.ts';
import { combinationsOf, fitShop, type ShopPosterior, vehicleVariances } from './learn-rates.ts';
import type { RateEvidence, RatePriors } from './rate-evidence.ts';
import { sharedVariance, vehicleCase } from './rate-vehicle.ts';

/** A removal before its reading: lognormal. */
export type Foretold = { readonly median: number; readonly logSd: number };

export type ForetoldReading = {
  readonly evidence: RateEvidence;
  readonly byOthers: Foretold;
  readonly builtIn: Foretold;
  /** Where the reading lies among those that the others let expect, 0 to 1. */
  readonly place: number;
};

/** In the order of the observations. */
export function foretellEach(
  evidence: readonly RateEvidence[],
  priors: RatePriors,
): readonly ForetoldReading[] {
  const combinations = combinationsOf(evidence);
  const builtIn = fitShop([], priors, combinations);
  const vehicles = [...new Set(evidence.map(({ vehicle }) => vehicle))];
  const withoutIt = new Map(
    vehicles.map((vehicle) => {
      const others = evidence.filter((one) => one.vehicle !== vehicle);
      return [vehicle, fitShop(others, priors, combinations)];
    }),
  );
  return evidence.map((one) => {
    const byOthers = foretold(one, valueAt(withoutIt, one.vehicle), priors);
    return {
      evidence: one,
      byOthers,
      builtIn: foretold(one, builtIn, priors),
      place: placeOf(one, byOthers),
    };
  });
}

/** The steps' sum: the sum of their medians, and the spread of its logarithm by their shares in it. */
function foretold(
  one: RateEvidence,
  { combinations, mean, covariance }: ShopPosterior,
  priors: RatePriors,
): Foretold {
  const placeOf = (combination: string): number => combinations.indexOf(combination) + 1;
  const {
    steps,
    entries,
    covariance: onVehicle,
  } = vehicleCase([one], vehicleVariances(priors), placeOf);
  const places = steps.map(({ entry }) => at(entries, entry));
  const medians = steps.map((step, i) => step.foretold * Math.exp(at(mean, at(places, i))));
  const median = medians.reduce((sum, um) => sum + um, 0);
  const ofShop = places.map((a) => places.map((b) => at(at(covariance, a), b)));
  const shares = medians.map((um) => um / median);
  return { median, logSd: Math.sqrt(sharedVariance(add(ofShop, onVehicle), shares)) };
}

function placeOf({ removed }: RateEvidence, { median, logSd }: Foretold): number {
  const noise = believedError(removed);
  return expectOverNormal(
    (z) => normalCdf((removed.value - median * Math.exp(logSd * z)) / noise),
    noise / (logSd * Math.max(median, removed.value)),
  );
}

/** Where a reading lies among those that the built-in rates let expect, 0 to 1. */
export const placeBuiltIn = (one: RateEvidence, priors: RatePriors): number =>
  placeOf(one, foretold(one, fitShop([], priors, combinationsOf([one])), priors));

/** Fewer vehicles, or fewer readings, say nothing of how well others foretell. */
export const LEAST_VEHICLES = 3;
export const LEAST_READINGS = 5;

export type ForetellingRecord = {
  readonly readings: number;
  readonly vehicles: number;
  /** Root mean square of read − foretold, µm a set. */
  readonly error: number;
  readonly builtInError: number;
  /** The same of what the gauge's own noise adds to both. */
  readonly noise: number;
  /** Readings within the range that is to hold nine of ten. */
  readonly within: number;
  /** Vehicles that the others foretold nearer than the built-in rates did. */
  readonly nearer: number;
};

/** Null where there is too little to say. */
export function foretellingRecord(each: readonly ForetoldReading[]): ForetellingRecord | null {
  const vehicles = [...new Set(each.map(({ evidence }) => evidence.vehicle))];
  if (vehicles.length < LEAST_VEHICLES || each.length < LEAST_READINGS) return null;
  const nearer = vehicles.filter((vehicle) => {
    const own = each.filter(({ evidence }) => evidence.vehicle === vehicle);
    return errorOf(own, 'byOthers') < errorOf(own, 'builtIn');
  });
  return {
    readings: each.length,
    vehicles: vehicles.length,
    error: errorOf(each, 'byOthers'),
    builtInError: errorOf(each, 'builtIn'),
    noise: rootMeanSquare(
      each.map(({ evidence }) => evidence.removed.standardError / evidence.sets),
    ),
    within: each.filter(({ place }) => place >= 0.05 && place <= 0.95).length,
    nearer: nearer.length,
  };
}

const errorOf = (each: readonly ForetoldReading[], by: 'byOthers' | 'builtIn'): number =>
  rootMeanSquare(
    each.map((one) => (one.evidence.removed.value - one[by].median) / one.evidence.sets),
  );
