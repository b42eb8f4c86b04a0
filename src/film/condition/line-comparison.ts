/**
 * A figure held against a line, and how sure it is on which side of the line the truth lies.
 *
 * The figure estimates something true of the panel (the mean over its face, the film at a point) with a
 * standard uncertainty u on ν degrees of freedom; the chance that the truth lies on the other side of the line is
 * P(T_ν > |figure − line|/u), a conformance probability (JCGM 106:2012, 7) with nothing held of the figure
 * beforehand. It is a half on the line itself, and falls as the figure moves away from it. What figure and
 * line have in common, the gauge above all, cancels before.
 *
 * What the film record is uncertain by only ever speaks against a panel: it makes one beyond its line no less surely
 * so, and being held to be known as well as any it leaves ν as it was without.
 */
import { studentTCdf } from '../../base/stats/student-t.ts';
import {
  effectiveDegreesOfFreedom,
  standardUncertainty,
  subtract,
  type Uncertain,
  uncertainAs,
} from '../../base/uncertainty.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import { isOfRecord } from '../put-back.ts';
import type { Panel } from '../template/template.ts';
import type { Condition } from './condition.ts';

/** What is held against a line. */
export type ComparedFigure =
  | 'largest-point'
  | 'median'
  | 'mean'
  | 'smallest-point'
  | 'thinnest'
  | 'halves-apart'
  | 'halves-gap'
  | 'over-mirror';

export type Side = 'over' | 'under';

export type LineComparison = {
  readonly compared: ComparedFigure;
  readonly figure: Micrometres;
  /** The part of the figure that was not read: it is known to have been taken. */
  readonly putBack: Micrometres;
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
  /** The panel that shows the factory's film, of a line that holds only if the usual film of the car is repaint. */
  readonly shownBy?: string;
  /** Whether it is of the panels of a side together: no more readings of one of them move its chance. */
  readonly together?: PaintedTogether;
  /** Chance that the panel is held to this line at all, where that is not sure: `otherSide` is of both. */
  readonly ifHeld?: number;
};

/** Neighbouring panels of one side that may have been painted again as one. */
export type PaintedTogether = {
  /** In walking order; none that was known to be repaint before. */
  readonly panels: readonly Panel[];
  /** Panels of neither side that read rather as they do: then painted again with them. */
  readonly centre: readonly Panel[];
  /** Their mean difference, held against the mirror line. */
  readonly apart: LineComparison;
  /** By how much their shuts read over those that face them; null where they were not read. */
  readonly shuts: Micrometres | null;
  /** Of both sides, the panels whose shuts would tell; none where they were read or would not tell. */
  readonly shutsWanted: readonly Panel[];
};

type Held = Pick<LineComparison, 'compared' | 'condition' | 'side'> & {
  readonly figure: Uncertain<'µm'>;
  readonly line: Uncertain<'µm'>;
  readonly baseline?: Micrometres | null;
  readonly putBack?: Micrometres;
};

export function compareWithLine({
  compared,
  condition,
  side,
  figure,
  line,
  baseline = null,
  putBack = micrometres(0),
}: Held): LineComparison {
  const apart = subtract(figure, line);
  const isBeyond = side === 'over' ? apart.value > 0 : apart.value < 0;
  const difference = isBeyond ? withoutRecord(apart) : apart;
  const { standard, dof } = doubtOf(difference);
  return {
    compared,
    condition,
    side,
    figure: figure.value,
    putBack,
    line: line.value,
    baseline,
    difference,
    isBeyond,
    standard: standard as Micrometres,
    dof,
    otherSide: chanceOfOtherSide(Math.abs(difference.value), standard, dof),
  };
}

/** Chance that the truth lies beyond the line. */
export const chanceBeyond = ({
  isBeyond,
  otherSide,
}: Pick<LineComparison, 'isBeyond' | 'otherSide'>): number =>
  isBeyond ? 1 - otherSide : otherSide;

/** The chance that there would be if the same difference came out with other doubts. */
export function chanceWith(difference: Uncertain<'µm'>): number {
  const { standard, dof } = doubtOf(difference);
  return chanceOfOtherSide(Math.abs(difference.value), standard, dof);
}

function doubtOf(difference: Uncertain<'µm'>): {
  readonly standard: number;
  readonly dof: number;
} {
  const standard = standardUncertainty(difference);
  const read = withoutRecord(difference);
  return {
    standard,
    dof: effectiveDegreesOfFreedom(read, read === difference ? standard : undefined),
  };
}

/** The same difference where no record bears on it. */
const withoutRecord = (difference: Uncertain<'µm'>): Uncertain<'µm'> =>
  [...difference.components.keys()].some(isOfRecord)
    ? uncertainAs(difference.value, difference, (source, component) =>
        isOfRecord(source) ? null : component,
      )
    : difference;

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
