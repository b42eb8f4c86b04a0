/**
 * What else a panel of factory film may be, as far as that moves what may go: each line that decides it lies so near
 * that the truth may be on the other side.
 *
 * Whichever word the panel has, these count: that it is filler or a repaint, for nothing may go then; and that it is
 * cut back where it reads original, or the other way round. The floor of the total is held against the smallest point
 * as it reads, which no other side changes; two zones would have limits of their own each.
 */
import type { Condition } from './condition.ts';
import type { ConditionTest } from './condition-tests.ts';
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

export function possibleSides(tests: readonly ConditionTest[], risk: number): PossibleSides {
  const counts = ({ otherSide }: LineComparison): boolean => otherSide >= LEAST_SHARE * risk;
  const linesOf = (condition: Condition): readonly LineComparison[] =>
    tests.flatMap((test) => (test.condition === condition ? test.comparisons.filter(counts) : []));
  const lost = [...linesOf('filler'), ...linesOf('refinished')].filter(({ isBeyond }) => !isBeyond);
  const [cutBack = null] = linesOf('cut-back');
  return lost.length === 0 && cutBack === null ? NO_SIDES : { lost, cutBack };
}

export type ChanceOf = (line: LineComparison) => number;

/** The same with the chance that there would be if more was measured. */
export const withChances = ({ lost, cutBack }: PossibleSides, of: ChanceOf): PossibleSides => {
  const again = (line: LineComparison): LineComparison => ({ ...line, otherSide: of(line) });
  return { lost: lost.map(again), cutBack: cutBack === null ? null : again(cutBack) };
};

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
