/**
 * What is known of the gauge that took the readings → what they may be off by.
 *
 * The gauge's own statement takes the place of the assumed calibration error. A check that failed says that
 * the statement does not hold: then the half-width is at least the most that a shim was off by, with its
 * own uncertainty, max(|e| + U). Where readings are adjusted, what counts is what is left after that.
 */
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { FilmModel } from '../film-model.ts';
import { displayStep } from '../panel-points.ts';
import type { Reading } from '../reading.ts';
import {
  adjusted,
  type CheckedShim,
  checkAdjusted,
  type GaugeAdjustment,
} from './gauge-adjustment.ts';
import {
  decideError,
  type GaugeVerdict,
  overallVerdict,
  type PermittedError,
  reachesFilm,
  whereTested,
} from './gauge-check.ts';

export type GaugeInUse = {
  readonly permitted: PermittedError;
  /** As stated; null before any check. */
  readonly verdict: GaugeVerdict | null;
  readonly checks: readonly (Omit<CheckedShim, 'permitted'> & { readonly error: Micrometres })[];
  /** `dof` is absent where the file only states the SD. */
  readonly repeatability?: { readonly sd: Micrometres; readonly dof?: number };
  readonly step?: Micrometres;
  readonly adjustment: GaugeAdjustment | null;
};

export type GaugeStanding = {
  /** That of the readings as they are used: after adjusting where there is an adjustment. */
  readonly verdict: GaugeVerdict | null;
  /** Most that a shim was off by, with its own uncertainty; null without a check. */
  readonly worst: Micrometres | null;
  /** Whether a shim was as thick as a film; null without a check. */
  readonly reached: boolean | null;
};

/** Decided anew from the checks themselves; without one, as stated. */
export function gaugeStanding(
  { permitted: { fixed, proportional }, verdict, checks, adjustment }: GaugeInUse,
  { filmShim }: Pick<FilmModel['measurement'], 'filmShim'>,
): GaugeStanding {
  if (checks.length === 0) return { verdict, worst: null, reached: null };
  const reached = reachesFilm(checks, filmShim);
  const decided = checks.map((one) => ({
    ...one,
    permitted: micrometres(fixed + proportional * one.shim),
  }));
  if (adjustment !== null) {
    const left = checkAdjusted(decided, adjustment);
    return {
      verdict: whereTested(left.verdict, reached),
      worst: worstOf(left.shims.map(({ residual, expanded }) => ({ error: residual, expanded }))),
      reached,
    };
  }
  const verdicts = decided.map(({ error, expanded, permitted }) => ({
    verdict: decideError(error, expanded, permitted),
  }));
  return {
    verdict: whereTested(overallVerdict(verdicts), reached),
    worst: worstOf(checks),
    reached,
  };
}

type ErrorSeen = { readonly error: Micrometres; readonly expanded: Micrometres };

const worstOf = (seen: readonly ErrorSeen[]): Micrometres =>
  micrometres(Math.max(...seen.map(({ error, expanded }) => Math.abs(error) + expanded)));

/** The numbers of a measurement taken with this gauge. */
export function measuredWith(
  measurement: FilmModel['measurement'],
  gauge: GaugeInUse,
): FilmModel['measurement'] {
  const { permitted, step } = gauge;
  const { verdict, worst, reached } = gaugeStanding(gauge, measurement);
  return {
    ...measurement,
    ...permitted,
    ...(reached === false ? { proportional: untestedShare(measurement, gauge) } : {}),
    ...(verdict === 'fail' && worst !== null ? { leastCalibration: worst } : {}),
    ...(tellsRepeatability(gauge, measurement) ? { repeatability: gauge.repeatability.sd } : {}),
    ...(step === undefined ? {} : { step }),
  };
}

/** A better share of the film than is usual is not taken on trust from a check that could have shown it and did not. */
export const untestedShare = (
  { proportional }: FilmModel['measurement'],
  { permitted }: GaugeInUse,
): number => Math.max(proportional, permitted.proportional);

/** A spread from too few repeats may be small by luck. */
export const tellsRepeatability = (
  gauge: GaugeInUse,
  { repeatabilityLeastDof }: FilmModel['measurement'],
): gauge is GaugeInUse & Required<Pick<GaugeInUse, 'repeatability'>> =>
  gauge.repeatability !== undefined &&
  (gauge.repeatability.dof ?? Number.POSITIVE_INFINITY) >= repeatabilityLeastDof;

/** Readings of the whole film as the adjusted gauge would have shown them; film is never under 0. */
export const adjustReadings = (
  readings: readonly Reading[],
  adjustment: GaugeAdjustment,
): readonly Reading[] =>
  readings.map((reading) =>
    reading.layer === ''
      ? { ...reading, thickness: atLeastNothing(adjusted(reading.thickness, adjustment)) }
      : reading,
  );

const atLeastNothing = (thickness: Micrometres): Micrometres => micrometres(Math.max(0, thickness));

/** Adjusting hides the display's step from whoever looks at the values: it is told from them before. */
export const stepBeforeAdjusting = (
  readings: readonly Reading[],
  { slope }: GaugeAdjustment,
  known = micrometres(0),
): Micrometres => {
  const shown = readings.filter(({ layer }) => layer === '').map(({ thickness }) => thickness);
  return micrometres(slope * Math.max(displayStep(shown), known));
};
