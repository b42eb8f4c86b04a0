/**
 * A figure held against a line, and how sure it is on which side of the line the truth lies.
 *
 * The figure estimates something true of the panel (the mean over its face, the film at a point) with a
 * standard uncertainty u on ν degrees of freedom; the chance that the truth lies on the other side of the line is
 * P(T_ν > |figure − line|/u), a conformance probability (JCGM 106:2012, 7) with nothing held of the figure
 * beforehand. It is a half on the line itself, and falls as the figure moves away from it. What figure and
 * line have in common, the gauge above all, cancels before.
 */
import { studentTCdf } from '../../base/stats/student-t.ts';
import {
  effectiveDegreesOfFreedom,
  standardUncertainty,
  subtract,
  type Uncertain,
} from '../../base/uncertainty.ts';
import type { Micrometres } from '../../base/units.ts';
import type { Condition } from './condition.ts';

/** What is held against a line. */
export type ComparedFigure =
  | 'largest-point'
  | 'median'
  | 'mean'
  | 'smallest-point'
  | 'thinnest'
  | 'halves-apart'
  | 'halves-gap';

export type Side = 'over' | 'under';

export type LineComparison = {
  readonly compared: ComparedFigure;
  readonly figure: Micrometres;
  readonly line: Micrometres;
  /** What the panel is beyond the line, and on which side of it that is. */
  readonly condition: Condition;
  readonly side: Side;
  /** The car's usual film where the line is drawn from that. */
  readonly baseline: Micrometres | null;
  readonly isBeyond: boolean;
  /** Figure less line, with what that is uncertain by. */
  readonly difference: Uncertain<'µm'>;
  /** Its standard uncertainty, on `dof` degrees of freedom. */
  readonly standard: Micrometres;
  readonly dof: number;
  /** Chance that the truth lies on the other side. */
  readonly otherSide: number;
};

type Held = Pick<LineComparison, 'compared' | 'condition' | 'side'> & {
  readonly figure: Uncertain<'µm'>;
  readonly line: Uncertain<'µm'>;
  readonly baseline?: Micrometres | null;
};

export function compareWithLine({
  compared,
  condition,
  side,
  figure,
  line,
  baseline = null,
}: Held): LineComparison {
  const difference = subtract(figure, line);
  const standard = standardUncertainty(difference);
  const dof = effectiveDegreesOfFreedom(difference, standard);
  return {
    compared,
    condition,
    side,
    figure: figure.value,
    line: line.value,
    baseline,
    difference,
    isBeyond: side === 'over' ? difference.value > 0 : difference.value < 0,
    standard: standard as Micrometres,
    dof,
    otherSide: chanceOfOtherSide(Math.abs(difference.value), standard, dof),
  };
}

/** The chance that there would be if the same difference came out with other doubts. */
export function chanceWith(difference: Uncertain<'µm'>): number {
  const standard = standardUncertainty(difference);
  const dof = effectiveDegreesOfFreedom(difference, standard);
  return chanceOfOtherSide(Math.abs(difference.value), standard, dof);
}

function chanceOfOtherSide(margin: number, standard: number, dof: number): number {
  if (standard === 0) return margin === 0 ? 0.5 : 0;
  return studentTCdf(-margin / standard, dof);
}

/** How far the figure is from the line. */
export const marginOf = ({ figure, line }: LineComparison): number => Math.abs(figure - line);

/** The one whose truth most easily lies on the other side. */
export const nearest = (all: readonly LineComparison[]): LineComparison | undefined =>
  [...all].sort((one, other) => other.otherSide - one.otherSide)[0];

/** The one whose truth lies there least easily. */
export const firmest = (all: readonly LineComparison[]): LineComparison | undefined =>
  [...all].sort((one, other) => one.otherSide - other.otherSide)[0];
