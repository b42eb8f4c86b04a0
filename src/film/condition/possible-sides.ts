/**
 * What else a panel of factory film may be, as far as that moves what may go: each line that decides it lies so near
 * that the truth may be on the other side.
 *
 * Whichever word the panel has, these count: that it is filler or a repaint, for nothing may go then; and that it is
 * cut back where it reads original, or the other way round. The floor of the total is held against the smallest point
 * as it reads, which no other side changes; two zones would have limits of their own each.
 */
import { type Micrometres, plus } from '../../base/units.ts';
import type { Condition } from './condition.ts';
import type { ConditionTest, SideTests } from './condition-tests.ts';
import type { LineComparison } from './line-comparison.ts';

export type PossibleSides = {
  /** Beyond any of these nothing may go; strongest first. */
  readonly lost: readonly LineComparison[];
  /** Where the panel is held against the line of film cut back; null where its other side moves nothing. */
  readonly cutBack: LineComparison | null;
};

export const NO_SIDES: PossibleSides = { lost: [], cutBack: null };

/**
 * The share of the stated risk that a chance must have to be reckoned with. At a 250th of a risk of 5 % what may go
 * moves by under 0.01 µm: risks rise by about 2 % with a micrometre there, and the other side breaks for two of three.
 * At one of 20 % it is under 0.02 µm.
 */
const LEAST_SHARE = 1 / 250;

export function possibleSides(tests: SideTests, risk: number): PossibleSides {
  const linesOf = ({ comparisons }: ConditionTest): readonly LineComparison[] =>
    comparisons.filter(({ otherSide }) => otherSide >= LEAST_SHARE * risk);
  const lost = [...linesOf(tests.filler), ...linesOf(tests.refinished)].filter(
    ({ isBeyond }) => !isBeyond,
  );
  const [cutBack = null] = linesOf(tests.cutBack);
  return lost.length === 0 && cutBack === null ? NO_SIDES : { lost, cutBack };
}

export type ChanceOf = (line: LineComparison) => number;

/** The same with the chance that there would be if more was measured. */
export const withChances = ({ lost, cutBack }: PossibleSides, of: ChanceOf): PossibleSides => {
  // Whether the usual film, or that of a side, is repaint is no matter of one panel's readings.
  const again = (line: LineComparison): LineComparison =>
    line.shownBy === undefined && line.together === undefined
      ? { ...line, otherSide: (line.ifHeld ?? 1) * of(line) }
      : line;
  return { lost: lost.map(again), cutBack: cutBack === null ? null : again(cutBack) };
};

/** The same where as much is put back on the panel as on those that make its baseline. */
export const withLinesUp = (
  { lost, cutBack }: PossibleSides,
  film: Micrometres,
): PossibleSides => ({
  lost,
  cutBack:
    cutBack === null
      ? null
      : {
          ...cutBack,
          line: plus(cutBack.line, film),
          baseline: cutBack.baseline === null ? null : plus(cutBack.baseline, film),
        },
});

/**
 * Chance that nothing at all may go because of each line, the first that holds deciding, and that none of them does.
 * Held to be independent of one another.
 */
export function chancesOfLost({ lost }: PossibleSides): {
  readonly each: readonly { readonly condition: Condition; readonly chance: number }[];
  readonly none: number;
} {
  let none = 1;
  const each = lost.map(({ condition, otherSide }) => {
    const chance = none * otherSide;
    none -= chance;
    return { condition, chance };
  });
  return { each, none };
}
