/**
 * What the mean of a panel is uncertain by, source by source (GUM: JCGM 100:2008).
 *
 * - `film`: how much film varies over the face, beyond what the gauge itself scatters: √(s̃² − u²)/√n, with
 *   s̃ the moderated SD between points and u² what repeatability, display and curvature put into one point;
 * - `repeatability`: SD of a reading set down again, over all readings;
 * - `resolution`: the display's step δ/√12, over all readings;
 * - `curvature`: extra SD at points marked as curved;
 * - `calibration`: the gauge's own error, shared by all points: it does not average down;
 * - `operators`: where two of them were seen to differ, how far one may be off; shared by all points likewise.
 */
import { resolution, type Uncertain, uncertain } from '../../base/uncertainty.ts';
import type { Micrometres } from '../../base/units.ts';
import type { PanelPoint } from '../panel-points.ts';
import type { Spread } from '../spread.ts';

/** How the gauge scatters on one car. */
export type GaugeScatter = {
  readonly repeatability: { readonly sd: Micrometres; readonly dof: number };
  readonly step: Micrometres;
  /** Extra SD at a point marked as curved. */
  readonly curvature: Micrometres;
};

export type PanelSources = {
  readonly mean: Micrometres;
  readonly points: readonly PanelPoint[];
  readonly spread: Spread;
  readonly calibration: Micrometres;
  readonly operators?: Micrometres | undefined;
};

/** Needs one point. */
export function panelMeanUncertainty(
  { mean, points, spread, calibration, operators }: PanelSources,
  { repeatability, step, curvature }: GaugeScatter,
): Uncertain<'µm'> {
  const n = points.length;
  const sumOver = (of: (point: PanelPoint) => number): number =>
    points.reduce((sum, point) => sum + of(point), 0);
  const perReading = sumOver(({ repeats }) => 1 / repeats.length);
  const [repeated, displayed, curved] = [
    repeatability.sd ** 2 * perReading,
    resolution(step) ** 2 * perReading,
    curvature ** 2 * sumOver((point) => (point.curved ? 1 : 0)),
  ];
  const film = Math.max(0, spread.sd ** 2 - (repeated + displayed + curved) / n);
  return uncertain(mean, {
    film: { contribution: Math.sqrt(film / n), dof: spread.dof },
    repeatability: { contribution: Math.sqrt(repeated) / n, dof: repeatability.dof },
    resolution: { contribution: Math.sqrt(displayed) / n, dof: Number.POSITIVE_INFINITY },
    ...(curved === 0
      ? {}
      : {
          curvature: { contribution: Math.sqrt(curved) / n, dof: Number.POSITIVE_INFINITY },
        }),
    calibration: { contribution: calibration, dof: Number.POSITIVE_INFINITY },
    ...(operators === undefined
      ? {}
      : { operators: { contribution: operators, dof: Number.POSITIVE_INFINITY } }),
  });
}
