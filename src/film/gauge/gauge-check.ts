/**
 * Readings of shims (foils of known thickness) → whether a gauge keeps what its maker states, how well it
 * repeats, and whether it drifted between two checks.
 *
 * The error at a shim is the mean of its readings less its value. Its uncertainty has three sources: the
 * shim's own, the display step, and repeatability pooled over all shims (GUM: JCGM 100:2008). The decision
 * keeps a guard band on either side (JCGM 106:2012): pass where |e| + U ≤ MPE, fail where |e| − U > MPE,
 * undecided between; MPE, the largest error permitted, is the gauge's own statement a₀ + a₁·t. Beside it
 * stands the chance that the true error keeps within MPE.
 */
import { conformanceProbability } from '../../base/conformance.ts';
import { groupBy } from '../../base/group-by.ts';
import { pooledVariance, pooledVarianceOf } from '../../base/stats/pooled-variance.ts';
import { mean } from '../../base/stats/summary.ts';
import {
  effectiveDegreesOfFreedom,
  expandedUncertainty,
  resolution,
  standardUncertainty,
  subtract,
  type Uncertain,
  uncertain,
} from '../../base/uncertainty.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';

export type ShimReading = {
  readonly shim: Micrometres;
  /** As its certificate states it: expanded, k = 2. One and the same for all readings of a shim. */
  readonly shimUncertainty: Micrometres;
  readonly reading: Micrometres;
};

/** a₀ + a₁·t: a fixed part and a share of the thickness. */
export type PermittedError = { readonly fixed: Micrometres; readonly proportional: number };

export type Repeatability = {
  readonly sd: Micrometres;
  /** Infinite where it is assumed: no shim was read twice. */
  readonly dof: number;
};

export type GaugeVerdict = 'pass' | 'fail' | 'undecided';

export type ShimCheck = {
  readonly shim: Micrometres;
  readonly shimUncertainty: Micrometres;
  readonly count: number;
  readonly mean: Micrometres;
  readonly error: Uncertain<'µm'>;
  /** Half-width that holds the error with 95 % confidence. */
  readonly expanded: Micrometres;
  readonly permitted: Micrometres;
  /** Chance that the true error keeps within what is permitted. */
  readonly conformance: number;
  readonly verdict: GaugeVerdict;
};

export type GaugeCheck = {
  readonly verdict: GaugeVerdict;
  readonly shims: readonly ShimCheck[];
  readonly repeatability: Repeatability;
};

export type GaugeTerms = {
  readonly permitted: PermittedError;
  /** Where no shim was read twice. */
  readonly assumedRepeatability: Micrometres;
  readonly step: Micrometres;
};

/** Shims in order of thickness. Needs one reading. */
export function checkGauge(readings: readonly ShimReading[], terms: GaugeTerms): GaugeCheck {
  const read = byShim(readings);
  const repeatability = pooledRepeatability(read, terms.assumedRepeatability);
  const shims = read.map((one) => checkShim(one, repeatability, terms));
  return { verdict: overallVerdict(shims), shims, repeatability };
}

type ReadShim = Pick<ShimReading, 'shim' | 'shimUncertainty'> & {
  readonly shown: readonly Micrometres[];
};

function byShim(readings: readonly ShimReading[]): readonly ReadShim[] {
  if (readings.length === 0) throw new Error('a gauge check has at least one reading');
  return [...groupBy(readings, ({ shim }) => shim)]
    .sort(([a], [b]) => a - b)
    .map(([shim, own]) => ({
      shim,
      shimUncertainty: micrometres(Math.max(...own.map(({ shimUncertainty }) => shimUncertainty))),
      shown: own.map(({ reading }) => reading),
    }));
}

function pooledRepeatability(shims: readonly ReadShim[], assumed: Micrometres): Repeatability {
  const pooled = pooledVarianceOf(shims.map(({ shown }) => shown));
  return pooled === undefined
    ? { sd: assumed, dof: Number.POSITIVE_INFINITY }
    : { sd: micrometres(Math.sqrt(pooled.variance)), dof: pooled.dof };
}

function checkShim(
  read: ReadShim,
  repeatability: Repeatability,
  { permitted: { fixed, proportional }, step }: GaugeTerms,
): ShimCheck {
  const error = shimError(read, repeatability, step);
  const { shim, shimUncertainty, shown } = read;
  const expanded = micrometres(expandedUncertainty(error));
  const permitted = micrometres(fixed + proportional * shim);
  return {
    shim,
    shimUncertainty,
    count: shown.length,
    mean: micrometres(shim + error.value),
    error,
    expanded,
    permitted,
    conformance: conformanceProbability(
      error.value,
      { u: standardUncertainty(error), dof: effectiveDegreesOfFreedom(error) },
      { lower: -permitted, upper: permitted },
    ),
    verdict: decideError(error.value, expanded, permitted),
  };
}

const shimSource = (shim: Micrometres): string => `shim ${shim}`;

/** The mean of the readings less the shim, with all that it is uncertain by. */
function shimError(
  { shim, shimUncertainty, shown }: ReadShim,
  { sd, dof }: Repeatability,
  step: Micrometres,
): Uncertain<'µm'> {
  return uncertain(micrometres(mean(shown) - shim), {
    [shimSource(shim)]: { contribution: shimUncertainty / 2, dof: Number.POSITIVE_INFINITY },
    resolution: { contribution: resolution(step), dof: Number.POSITIVE_INFINITY },
    repeatability: { contribution: sd / Math.sqrt(shown.length), dof },
  });
}

/** The guard band of JCGM 106:2012 on both sides of the limit. */
export function decideError(error: number, expanded: number, permitted: number): GaugeVerdict {
  if (Math.abs(error) + expanded <= permitted) return 'pass';
  return Math.abs(error) - expanded > permitted ? 'fail' : 'undecided';
}

/** One shim out of its limits fails the gauge; all within them pass it. */
export function overallVerdict(shims: readonly { readonly verdict: GaugeVerdict }[]): GaugeVerdict {
  if (shims.some(({ verdict }) => verdict === 'fail')) return 'fail';
  return shims.every(({ verdict }) => verdict === 'pass') ? 'pass' : 'undecided';
}

/** Whether a shim was as thick as a film. */
export const reachesFilm = (
  shims: readonly { readonly shim: Micrometres }[],
  filmShim: Micrometres,
): boolean => shims.some(({ shim }) => shim >= filmShim);

/** What was not tested did not pass. */
export const whereTested = (verdict: GaugeVerdict, reached: boolean): GaugeVerdict =>
  verdict === 'pass' && !reached ? 'undecided' : verdict;

/** Repeatability over several checks of one gauge; undefined where no shim was read twice. */
export function repeatabilityOver(checks: readonly GaugeCheck[]): Repeatability | undefined {
  const own = checks.map(({ repeatability }) => repeatability).filter(({ dof }) => dof < Infinity);
  const pooled = pooledVariance(own.map(({ sd, dof }) => ({ variance: sd ** 2, dof })));
  return pooled === undefined
    ? undefined
    : { sd: micrometres(Math.sqrt(pooled.variance)), dof: pooled.dof };
}

export type Drift = {
  readonly shim: Micrometres;
  readonly change: Micrometres;
  /** Half-width within which a gauge that holds still keeps on all shims together, with 95 % confidence. */
  readonly expanded: Micrometres;
  /** Whether the change is beyond that. */
  readonly proved: boolean;
};

/**
 * How far a gauge moved between two checks on the same shims. The shim's own error cancels; repeatability
 * and the display's step of both remain: a mean that sits at the edge of a step may go to the next one for
 * nothing. Of several shims one is beyond its own 95 % by chance soon enough, so they share the risk
 * (Bonferroni). Shims of one check only are not compared.
 */
export function driftBetween(before: GaugeCheck, after: GaugeCheck): readonly Drift[] {
  const changes = before.shims.flatMap((one) => {
    const other = after.shims.find(({ shim }) => shim === one.shim);
    return other === undefined
      ? []
      : [{ shim: one.shim, change: subtract(ofItsOwn(other), one.error) }];
  });
  return changes.map(({ shim, change }) => {
    const expanded = micrometres(expandedUncertainty(change, 1 - 0.05 / changes.length));
    const proved = Math.abs(change.value) > expanded;
    return { shim, change: change.value, expanded, proved };
  });
}

/** The error with all that is not the shim's as sources of its own check, so that they do not cancel. */
function ofItsOwn({ shim, error }: ShimCheck): Uncertain<'µm'> {
  const sources = [...error.components].map(([source, component]) => [
    source === shimSource(shim) ? source : `${source} after`,
    component,
  ]);
  return uncertain(error.value, Object.fromEntries(sources));
}
