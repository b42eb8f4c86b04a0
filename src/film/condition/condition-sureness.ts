/**
 * How sure the word for a panel is: which comparison it hangs on, and how near its line that came.
 *
 * The word is the first condition whose test holds, so it would be another if the test of the word itself came out
 * otherwise, or one of a condition that goes before it. A test of several comparisons hangs
 * - where one of them is enough (thin, refinished): while it holds, on the firmest of those that speak for it, as
 *   all of them would have to fail; while it does not, on the nearest;
 * - where all are needed (two zones): while it holds, on the nearest; while it does not, on the firmest of those
 *   that speak against it.
 * Of all tests the nearest decides. The word is `near` its line where the chance that the truth lies on the
 * other side of it (see `line-comparison.ts`) is over `nearRisk`, and `clear` where it is not. So moving a
 * panel's film away from its line never makes the word less sure. What the job declares (covered, painted again)
 * or nobody read is no matter of a line.
 */
import type { Micrometres } from '../../base/units.ts';
import type { Limit } from '../limits/limit.ts';
import { type Condition, PRECEDENCE } from './condition.ts';
import type { ConditionTest } from './condition-tests.ts';
import { firmest, type LineComparison, nearest } from './line-comparison.ts';

export type ConditionSureness = {
  readonly sure: 'clear' | 'near';
  /** What the word hangs on: the nearest of the comparisons that could have made it another. */
  readonly deciding: LineComparison;
  /** All of those, nearest first. */
  readonly comparisons: readonly LineComparison[];
  /** What the words beside the first hang on. */
  readonly beside: readonly LineComparison[];
};

/** What a panel near its line would be on the other side of it. */
export type OtherSide = {
  readonly condition: Condition;
  /** What might go then; null of a panel that would be in two zones, or no more in two: each has limits of its own. */
  readonly budget: Micrometres | null;
  /** The limit that allows as much then; null where there is no one budget. */
  readonly boundBy: Limit | null;
  /** What might go if its word holds for certain. */
  readonly ifWordHolds: Micrometres;
};

/** The first word for a panel, and those beside it. */
type PanelWords = { readonly condition: Condition; readonly also: readonly Condition[] };

/** Null for a condition that no figure decides. `tests` are those the panel was put to. */
export function conditionSureness(
  { condition: word, also }: PanelWords,
  tests: readonly ConditionTest[],
  nearRisk: number,
): ConditionSureness | null {
  const comparisons = allHangOn(tests.filter(({ condition }) => precedes(condition, word))).sort(
    (one, other) => other.otherSide - one.otherSide,
  );
  const [deciding] = comparisons;
  if (deciding === undefined) return null;
  const beside = allHangOn(
    tests.filter(({ condition }) => also.includes(condition) && !precedes(condition, word)),
  );
  const sure = deciding.otherSide > nearRisk ? 'near' : 'clear';
  return { sure, deciding, comparisons, beside };
}

/** Whether a condition, if it held, would be the word in the place of `word`, or is that word. */
const precedes = (condition: Condition, word: Condition): boolean =>
  word !== 'unread' &&
  word !== 'covered' &&
  PRECEDENCE.indexOf(condition) <= PRECEDENCE.indexOf(word);

/** Nothing of a test that the panel could not be put to. */
const allHangOn = (tests: readonly ConditionTest[]): LineComparison[] =>
  tests.flatMap((test) => hangsOn(test) ?? []);

function hangsOn({ needs, comparisons }: ConditionTest): LineComparison | undefined {
  const beyond = comparisons.filter(({ isBeyond }) => isBeyond);
  const within = comparisons.filter(({ isBeyond }) => !isBeyond);
  const [speaking, others] = needs === 'one' ? [beyond, within] : [within, beyond];
  return speaking.length === 0 ? nearest(others) : firmest(speaking);
}
