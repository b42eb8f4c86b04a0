/**
 * Standard uncertainties of the figures that decide what a panel is (GUM: JCGM 100:2008), source by source:
 * what a figure and its line have in common cancels when they are held against each other.
 */
import { scaledDeviation } from '../../base/stats/robust-summary.ts';
import { median as medianOf } from '../../base/stats/summary.ts';
import { moderateVariance, type VariancePrior } from '../../base/stats/variance-prior.ts';
import {
  add,
  type Component,
  rectangular,
  resolution,
  type Uncertain,
  uncertain,
  uncertainAs,
} from '../../base/uncertainty.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { FilmModel } from '../film-model.ts';
import { calibrationUncertainty } from '../gauge/calibration.ts';
import type { GaugeScatter } from '../help/panel-uncertainty.ts';
import type { PanelPoint } from '../panel-points.ts';
import type { Spread } from '../spread.ts';
import type { ThinnestCredible } from '../thinnest-credible.ts';

type Measurement = FilmModel['measurement'];

const known = (contribution: number): Component => ({
  contribution,
  dof: Number.POSITIVE_INFINITY,
});

/** Film at one point: the gauge set down again, its display, a curve, its calibration. */
export function pointUncertainty(
  { thickness, repeats, curved }: PanelPoint,
  { repeatability, step, curvature }: GaugeScatter,
  measurement: Measurement,
): Uncertain<'µm'> {
  const root = Math.sqrt(repeats.length);
  return uncertain(thickness, {
    repeatability: { contribution: repeatability.sd / root, dof: repeatability.dof },
    resolution: known(resolution(step) / root),
    curvature: known(curved ? curvature : 0),
    calibration: known(calibrationUncertainty(thickness, measurement)),
  });
}

/** SD of the median of many normal values against that of their mean: √(π/2). */
const MEDIAN_FACTOR = Math.sqrt(Math.PI / 2);
/** Under three points the median is the mean. */
const LEAST_FOR_MEDIAN = 3;

/** By the gauge and by whoever read it: the same at all points. */
const SHARED: readonly string[] = ['calibration', 'operators'];

/** As of the mean of the same points, all but what they share √(π/2) times as much. */
export function medianUncertainty(
  median: Micrometres,
  count: number,
  ofMean: Uncertain<'µm'>,
): Uncertain<'µm'> {
  const factor = count < LEAST_FOR_MEDIAN ? 1 : MEDIAN_FACTOR;
  return uncertainAs(median, ofMean, (source, { contribution, dof }) => ({
    contribution: SHARED.includes(source) ? contribution : factor * contribution,
    dof,
  }));
}

/**
 * Of the thinnest credible film x̄ − k·s̃: what the mean is uncertain by, and the spread, k·s̃/√(2ν). Its margin
 * for gauge and operators stands for what all points share.
 */
export function boundUncertainty(
  { factor, thinnest }: ThinnestCredible,
  { sd, dof }: Spread,
  ofMean: Uncertain<'µm'>,
): Uncertain<'µm'> {
  const bound = uncertainAs(thinnest, ofMean, (source, component) =>
    SHARED.includes(source) ? null : component,
  );
  const spread = uncertain(micrometres(0), {
    spread: { contribution: (factor * sd) / Math.sqrt(2 * dof), dof },
  });
  return add(bound, spread);
}

/** Between two parts of a panel, `inSds` SDs of film uncertain; the gauge errs on the difference alone. */
export const differenceUncertainty = (
  difference: number,
  inSds: number,
  { sd, dof }: Spread,
  { proportional }: Measurement,
): Uncertain<'µm'> =>
  uncertain(micrometres(difference), {
    film: { contribution: inSds * sd, dof },
    calibration: known(rectangular(proportional * difference)),
  });

/** A line of so many SDs of film, SD/√(2ν) uncertain each, unless a fixed one lies higher. */
export const lineOfSds = (line: number, sds: number, { sd, dof }: Spread): Uncertain<'µm'> =>
  uncertain(micrometres(line), {
    line: { contribution: sds * sd < line ? 0 : line / Math.sqrt(2 * dof), dof },
  });

/**
 * Of the baseline, the middle of the medians of N panels: √(π/2)·s̃/√N, s̃ their robust spread moderated by what is
 * known of panels `about` their car, and what `records` put back on them are uncertain by. Few panels that happen to
 * agree are no proof of an even car, and one that moves does not free the others. Null where it would be one panel's own.
 */
export function baselineUncertainty(
  medians: readonly Micrometres[],
  about: VariancePrior,
  records: Readonly<Record<string, Component>>,
  measurement: Measurement,
): Uncertain<'µm'> | null {
  const count = medians.length;
  if (count < 2) return null;
  const baseline = micrometres(medianOf(medians));
  const { sd, dof } = scaledDeviation(medians);
  const variance = moderateVariance(sd ** 2, dof, about);
  return uncertain(baseline, {
    baseline: {
      contribution: MEDIAN_FACTOR * Math.sqrt(variance / count),
      dof: about.dof + dof,
    },
    calibration: known(calibrationUncertainty(baseline, measurement)),
    ...records,
  });
}
