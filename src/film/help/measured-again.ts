/**
 * How sure a comparison with a line would be if more was measured and read the same on average: what more points or
 * readings average away goes down with their square root, the rest stays.
 */
import { uncertainAs } from '../../base/uncertainty.ts';
import { chanceWith, type LineComparison } from '../condition/line-comparison.ts';
import type { PanelPoint } from '../panel-points.ts';

/** Readings more at a point that decides. */
export const SET_DOWN = 3;

export const isOfOnePoint = ({ compared }: Pick<LineComparison, 'compared'>): boolean =>
  compared === 'largest-point' || compared === 'smallest-point';

type MeasuredAgain = { readonly count: number; readonly checked: boolean };

/** Chance of the other side then; null where more points change nothing of it. */
export function chanceAfter(
  line: LineComparison,
  points: readonly PanelPoint[],
  again: MeasuredAgain,
): number | null {
  // The gap between two points is no mean: points added elsewhere leave it what it is.
  const isSettled =
    line.compared === 'halves-gap' || (!isOfOnePoint(line) && points.length >= again.count);
  return isSettled ? null : chanceOfMore(line, points, again);
}

/** The same of a line that more points do change. */
export function chanceOfMore(
  { compared, difference }: LineComparison,
  points: readonly PanelPoint[],
  { count, checked }: MeasuredAgain,
): number {
  const readings = Math.max(...points.map(({ repeats }) => repeats.length));
  const ofOnePoint = isOfOnePoint({ compared });
  const factor = ofOnePoint ? 1 + SET_DOWN / readings : count / points.length;
  const more = ofOnePoint ? 0 : count - points.length;
  return chanceWith(
    uncertainAs(difference.value, difference, (source, component) => {
      const { contribution, dof } = component;
      if (checked && source === 'calibration') return { contribution: 0, dof };
      return AVERAGED.includes(source)
        ? { contribution: contribution / Math.sqrt(factor), dof: dof + more }
        : component;
    }),
  );
}

/** The chance with a gauge that errs no more. */
export const chanceWithExactGauge = ({ difference }: LineComparison): number =>
  chanceWith(
    uncertainAs(difference.value, difference, (source, component) =>
      source === 'calibration' ? { contribution: 0, dof: component.dof } : component,
    ),
  );

/** Doubts that go down with the square root of points or readings. */
const AVERAGED: readonly string[] = ['film', 'repeatability', 'resolution', 'curvature', 'spread'];
