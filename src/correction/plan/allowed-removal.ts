/**
 * The largest median removal that a panel allows, asked for thousands of candidates whose ln-SDs differ
 * in the third digit.
 *
 * A budget takes a root to find, so it is found at steps of ln-SD and kept. A candidate is held to the
 * step above its own, which never allows more; where all are equally sure, to its own exactly.
 */
import type { Allowance } from '../../film/limits/allowance.ts';
import type { PanelSurvey } from '../../film/survey.ts';

/** At one of the ln-SDs that candidates are held to. */
export type AllowedRemoval = (heldTo: number) => number;

const STEP = 0.005;

/** The ln-SD that a removal is held to; `widest` is the largest of all candidates. */
export const heldTo = (logSd: number, widest: number): number =>
  Math.min(widest, Math.ceil(logSd / STEP) * STEP);

export function allowedRemoval(
  part: PanelSurvey,
  allowanceAt: (part: PanelSurvey, logSd: number) => Pick<Allowance, 'budget'>,
): AllowedRemoval {
  const known = new Map<number, number>();
  return (logSd) => {
    const before = known.get(logSd);
    if (before !== undefined) return before;
    const { budget } = allowanceAt(part, logSd);
    known.set(logSd, budget);
    return budget;
  };
}
