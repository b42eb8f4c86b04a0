/**
 * How sure a comparison with a line would be if more was measured and read the same on average: what more points or
 * readings average away goes down with their square root, the rest stays.
 */
import { type Component, type Uncertain, uncertain } from '../../base/uncertainty.ts';
import { chanceWith, type LineComparison } from '../condition/line-comparison.ts';
import type { PanelPoint } from '../panel-points.ts';

/** Readings more at a point that decides. */
export const SET_DOWN = 3;

export const isOfOnePoint = ({ compared }: Pick<LineComparison, 'compared'>): boolean =>
  compared === 'largest-point' || compared === 'smallest-point';

/** Chance of the other side then; null where more points change nothing of it. */
export function chanceAfter(
  { compared, difference }: LineComparison,
  points: readonly PanelPoint[],
  { count, checked }: { readonly count: number; readonly checked: boolean },
): number | null {
  const readings = Math.max(...points.map(({ repeats }) => repeats.length));
  const ofOnePoint = isOfOnePoint({ compared });
  // The gap between two points is no mean: points added elsewhere leave it what it is.
  if (compared === 'halves-gap' || (!ofOnePoint && points.length >= count)) return null;
  const factor = ofOnePoint ? 1 + SET_DOWN / readings : count / points.length;
  const more = ofOnePoint ? 0 : count - points.length;
  return chanceWith(
    scaled(difference, (source, { contribution, dof }) => {
      if (checked && source === 'calibration') return { contribution: 0, dof };
      return AVERAGED.includes(source)
        ? { contribution: contribution / Math.sqrt(factor), dof: dof + more }
        : null;
    }),
  );
}

/** The chance with a gauge that errs no more. */
export const chanceWithExactGauge = ({ difference }: LineComparison): number =>
  chanceWith(
    scaled(difference, (source, { dof }) =>
      source === 'calibration' ? { contribution: 0, dof } : null,
    ),
  );

/** Doubts that go down with the square root of points or readings. */
const AVERAGED: readonly string[] = ['film', 'repeatability', 'resolution', 'curvature', 'spread'];

function scaled(
  { value, components }: Uncertain<'µm'>,
  changed: (source: string, component: Component) => Component | null,
): Uncertain<'µm'> {
  const sources = [...components].map(([source, one]) => [source, changed(source, one) ?? one]);
  return uncertain(value, Object.fromEntries(sources));
}
