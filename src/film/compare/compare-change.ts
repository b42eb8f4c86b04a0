/**
 * What came off between two readings of a panel, with its 95 % interval: the mean of the differences at
 * marked points, or the difference of two means where no point was found again.
 *
 * - pairs: Δ̄ ± t·s̃/√n, s̃ the moderated SD of the differences;
 * - means: x̄ − ȳ ± t·√(s̃₁²/n₁ + s̃₂²/n₂), s̃ the moderated SD of the film over the panel, on the degrees
 *   of freedom of Welch (1947, Biometrika 34:28) and Satterthwaite, cut to a whole number (GUM G.4.1).
 *
 * With one gauge its fixed error is the same both times and cancels, and its proportional one acts on the
 * difference alone, a₁·|Δ|/√3 (JCGM 100, F.1.2.3). With two gauges, or one that moved between its checks,
 * what each may be off by counts in full, once before and once after. Calibration is shared by all panels.
 * Where the readings show that people read apart, s_L of one of them (`between-operators.ts`) counts before and
 * after, √2·s_L, shared by all panels, as far as other people read than before, or may have (`who-read.ts`).
 */
import { studentTQuantile } from '../../base/stats/student-t.ts';
import { mean } from '../../base/stats/summary.ts';
import {
  add,
  effectiveDegreesOfFreedom,
  exactly,
  expandedUncertainty,
  multiply,
  rectangular,
  standardUncertainty,
  type Uncertain,
  uncertain,
} from '../../base/uncertainty.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { FilmModel } from '../film-model.ts';
import { calibrationUncertainty } from '../gauge/calibration.ts';
import type { Spread } from '../spread.ts';

/** The gauges that took the readings before and after; `cancels` where it is one that kept its place. */
export type GaugesCompared = {
  readonly cancels: boolean;
  readonly before: FilmModel['measurement'];
  readonly after: FilmModel['measurement'];
  /** SD of one person's readings about what all would read, where they show it; 0 else. */
  readonly betweenOperators?: Micrometres;
  /** How far others read after than before (`who-read.ts`): from 0, all the same, to √2, which holds where it is absent. */
  readonly readByOthers?: number;
};

/** Half of the time a true change of `half` is told from none; of `surely`, in 95 cases of 100. */
export type Detectable = { readonly half: Micrometres; readonly surely: Micrometres };

export type FilmChange = {
  /** Before less after: what came off. */
  readonly removed: Uncertain<'µm'>;
  readonly low: Micrometres;
  readonly high: Micrometres;
  readonly detectable: Detectable;
  /** True where the interval lies above 0: less is no proof that nothing came off. */
  readonly resolved: boolean;
};

const CONFIDENCE = 0.95;

/** Of one or more differences, with the SD that one of them is held to have. */
export function changeOfPairs(
  differences: readonly number[],
  spread: Spread,
  means: { readonly before: number; readonly after: number },
  gauges: GaugesCompared,
): FilmChange {
  const scatter = spread.sd / Math.sqrt(differences.length);
  return changeOf(
    mean(differences),
    { marks: { contribution: scatter, dof: spread.dof } },
    means,
    gauges,
  );
}

/** The mean over a panel at one time: of how many points, and how film varies over them. */
export type PanelMean = {
  readonly mean: Micrometres;
  readonly count: number;
  readonly spread: Spread;
};

export function changeOfMeans(
  before: PanelMean,
  after: PanelMean,
  gauges: GaugesCompared,
): FilmChange {
  const part = ({ count, spread }: PanelMean) => ({
    contribution: spread.sd / Math.sqrt(count),
    dof: spread.dof,
  });
  return changeOf(
    before.mean - after.mean,
    { 'film-before': part(before), 'film-after': part(after) },
    { before: before.mean, after: after.mean },
    gauges,
  );
}

type Sources = Parameters<typeof uncertain>[1];

const changeOf = (
  value: number,
  scatter: Sources,
  means: { readonly before: number; readonly after: number },
  gauges: GaugesCompared,
): FilmChange =>
  withInterval(
    uncertain(micrometres(value), {
      ...scatter,
      ...calibrationSources(value, means, gauges),
      ...operatorSource(gauges),
    }),
  );

const OF_WHO_READ = 'operators';

function operatorSource({
  betweenOperators: sd = micrometres(0),
  readByOthers = Math.SQRT2,
}: GaugesCompared): Sources {
  const contribution = readByOthers * sd;
  return contribution === 0
    ? {}
    : { [OF_WHO_READ]: { contribution, dof: Number.POSITIVE_INFINITY } };
}

/** An error in proportion to the change, of a gauge whose other errors cancel. */
const OF_THE_CHANGE = 'calibration';

/** SD of what a panel's own readings scatter by: what all panels share is left out. */
export const scatterOfChange = ({ removed }: FilmChange): number =>
  standardUncertainty(
    uncertain(
      removed.value,
      Object.fromEntries([...removed.components].filter(([source]) => !isSharedByPanels(source))),
    ),
  );

const isSharedByPanels = (source: string): boolean =>
  source.startsWith(OF_THE_CHANGE) || source === OF_WHO_READ;

function withInterval(removed: Uncertain<'µm'>): FilmChange {
  const reach = expandedUncertainty(removed, CONFIDENCE);
  const low = micrometres(removed.value - reach);
  // An error that grows with the change cannot hide one.
  const hiding = Object.fromEntries(
    [...removed.components].filter(([source]) => source !== OF_THE_CHANGE),
  );
  return {
    removed,
    low,
    high: micrometres(removed.value + reach),
    detectable: detectableOver(uncertain(removed.value, hiding)),
    resolved: low > 0,
  };
}

/**
 * What rises above this noise: t·u, which a true change of that size crosses half of the time, and
 * (t + t₉₅)·u, t at 97.5 %. With u = s·√(2/n) known for certain that is 1.96 and 3.6·s·√(2/n).
 */
function detectableOver(noise: Uncertain<'µm'>): Detectable {
  const half = expandedUncertainty(noise, CONFIDENCE);
  const oneSided = expandedUncertainty(noise, 2 * CONFIDENCE - 1);
  return { half: micrometres(half), surely: micrometres(half + oneSided) };
}

/**
 * Mean of changes of several panels, by weights that sum to 1. What scatters is each panel's own, by its
 * name; what the gauge and who read may be off by is shared by all of them.
 */
export function meanChange(
  parts: readonly { readonly name: string; readonly weight: number; readonly change: FilmChange }[],
): FilmChange {
  const weighted = parts.map(({ name, weight, change: { removed } }) =>
    multiply(named(removed, name), weight),
  );
  return withInterval(weighted.reduce((sum, one) => add(sum, one), exactly(micrometres(0))));
}

const named = ({ value, components }: Uncertain<'µm'>, panel: string): Uncertain<'µm'> => ({
  value,
  components: new Map(
    [...components].map(([source, component]) => [
      isSharedByPanels(source) ? source : `${source} of ${panel}`,
      component,
    ]),
  ),
});

function calibrationSources(
  value: number,
  means: { readonly before: number; readonly after: number },
  { cancels, before, after }: GaugesCompared,
): Sources {
  const dof = Number.POSITIVE_INFINITY;
  if (cancels) {
    return { [OF_THE_CHANGE]: { contribution: rectangular(before.proportional * value), dof } };
  }
  const of = (thickness: number, measurement: FilmModel['measurement']) => ({
    contribution: calibrationUncertainty(micrometres(thickness), measurement),
    dof,
  });
  return {
    'calibration-before': of(means.before, before),
    'calibration-after': of(means.after, after),
  };
}

/** Whether more film is there than before, by more than chance makes of none in `risk` of all cases. */
export function hasGained({ removed }: FilmChange, risk: number): boolean {
  const u = standardUncertainty(removed);
  if (u === 0) return removed.value < 0;
  const dof = Math.max(1, Math.floor(effectiveDegreesOfFreedom(removed) * (1 + 1e-12)));
  return removed.value < -studentTQuantile(1 - risk, dof) * u;
}
