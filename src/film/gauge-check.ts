/**
 * Readings of shims (foils of known thickness) → whether a gauge keeps what its maker states, how well it
 * repeats, and whether it drifted between two checks.
 *
 * The error at a shim is the mean of its readings less its value. Its uncertainty has three sources: the
 * shim's own, the display step, and repeatability pooled over all shims (GUM: JCGM 100:2008). The decision
 * keeps a guard band on either side (JCGM 106:2012): pass where |e| + U ≤ MPE, fail where |e| − U > MPE,
 * undecided between; MPE, the largest error permitted, is the gauge's own statement a₀ + a₁·t.
 */
import { sampleVariance } from '../base/stats/summary.ts';
import {
  expandedUncertainty,
  resolution,
  subtract,
  type Uncertain,
  uncertain,
} from '../base/uncertainty.ts';
import { type Micrometres, micrometres } from '../base/units.ts';

export type ShimReading = {
  readonly shim: Micrometres;
  /** As its certificate states it: expanded, k = 2. */
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
  readonly count: number;
  readonly mean: Micrometres;
  readonly error: Uncertain<'µm'>;
  /** Half-width that holds the error with 95 % confidence. */
  readonly expanded: Micrometres;
  readonly permitted: Micrometres;
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
  const groups = byShim(readings);
  const repeatability = pooledRepeatability(groups, terms.assumedRepeatability);
  const shims = groups.map((group) => checkShim(group, repeatability, terms));
  return { verdict: overall(shims), shims, repeatability };
}

function byShim(readings: readonly ShimReading[]): readonly (readonly ShimReading[])[] {
  if (readings.length === 0) throw new Error('a gauge check has at least one reading');
  const shims = [...new Set(readings.map(({ shim }) => shim))].sort((a, b) => a - b);
  return shims.map((shim) => readings.filter((one) => one.shim === shim));
}

const shownBy = (group: readonly ShimReading[]): readonly number[] =>
  group.map(({ reading }) => reading);

function pooledRepeatability(
  groups: readonly (readonly ShimReading[])[],
  assumed: Micrometres,
): Repeatability {
  const dof = groups.reduce((sum, group) => sum + group.length - 1, 0);
  if (dof === 0) return { sd: assumed, dof: Number.POSITIVE_INFINITY };
  const squares = groups
    .filter((group) => group.length > 1)
    .reduce((sum, group) => sum + (group.length - 1) * sampleVariance(shownBy(group)), 0);
  return { sd: micrometres(Math.sqrt(squares / dof)), dof };
}

function checkShim(
  group: readonly ShimReading[],
  repeatability: Repeatability,
  { permitted: { fixed, proportional }, step }: GaugeTerms,
): ShimCheck {
  const error = shimError(group, repeatability, step);
  const { shim } = first(group);
  const expanded = micrometres(expandedUncertainty(error));
  const permitted = micrometres(fixed + proportional * shim);
  return {
    shim,
    count: group.length,
    mean: micrometres(shim + error.value),
    error,
    expanded,
    permitted,
    verdict: decide(Math.abs(error.value), expanded, permitted),
  };
}

function shimError(
  group: readonly ShimReading[],
  { sd, dof }: Repeatability,
  step: Micrometres,
): Uncertain<'µm'> {
  const { shim, shimUncertainty } = first(group);
  const errors = group.map(({ reading }) => reading - shim);
  const mean = errors.reduce((sum, error) => sum + error, 0) / errors.length;
  return uncertain(micrometres(mean), {
    [`shim ${shim}`]: { contribution: shimUncertainty / 2, dof: Number.POSITIVE_INFINITY },
    resolution: { contribution: resolution(step), dof: Number.POSITIVE_INFINITY },
    repeatability: { contribution: sd / Math.sqrt(group.length), dof },
  });
}

function first(group: readonly ShimReading[]): ShimReading {
  const [one] = group;
  if (one === undefined) throw new Error('a group of readings is never empty');
  return one;
}

const decide = (error: number, expanded: number, permitted: number): GaugeVerdict => {
  if (error + expanded <= permitted) return 'pass';
  return error - expanded > permitted ? 'fail' : 'undecided';
};

/** One shim out of its limits fails the gauge; all within them pass it. */
function overall(shims: readonly ShimCheck[]): GaugeVerdict {
  if (shims.some(({ verdict }) => verdict === 'fail')) return 'fail';
  return shims.every(({ verdict }) => verdict === 'pass') ? 'pass' : 'undecided';
}

export type Drift = {
  readonly shim: Micrometres;
  readonly change: Micrometres;
  readonly expanded: Micrometres;
  /** Whether the change is more than repeatability explains. */
  readonly proved: boolean;
};

/**
 * How far a gauge moved between two checks on the same shims. The shim's own error and the rest that both
 * checks share cancel; repeatability of both remains. Shims of one check only are not compared.
 */
export function driftBetween(before: GaugeCheck, after: GaugeCheck): readonly Drift[] {
  return before.shims.flatMap((one) => {
    const other = after.shims.find(({ shim }) => shim === one.shim);
    if (other === undefined) return [];
    const change = subtract(own(other, 'after'), own(one, 'before'));
    const expanded = micrometres(expandedUncertainty(change));
    return [
      { shim: one.shim, change: change.value, expanded, proved: Math.abs(change.value) > expanded },
    ];
  });
}

/** The error with the repeatability of this check as a source of its own, so that it does not cancel. */
function own({ error }: ShimCheck, check: 'before' | 'after'): Uncertain<'µm'> {
  const { repeatability, ...shared } = Object.fromEntries(error.components);
  return uncertain(error.value, {
    ...shared,
    ...(repeatability === undefined ? {} : { [`repeatability ${check}`]: repeatability }),
  });
}
