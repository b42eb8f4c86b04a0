/**
 * The largest median removal that a panel allows, asked for thousands of candidates whose ln-SDs differ
 * in the third digit.
 *
 * A budget takes a root to find, so it is found at steps of ln-SD and kept. A candidate is held to the
 * step above its own, which never allows more; where all are equally sure, to its own exactly.
 */
import type { Allowance } from '../film/allowance.ts';
import type { PanelSurvey } from '../film/survey.ts';

/** `widest` is the largest ln-SD that is asked about. */
export type AllowedRemoval = (logSd: number, widest: number) => number;

const STEP = 0.005;

export function allowedRemoval(
  part: PanelSurvey,
  allowanceAt: (part: PanelSurvey, logSd: number) => Pick<Allowance, 'budget'>,
): AllowedRemoval {
  const known = new Map<number, number>();
  return (logSd, widest) => {
    const at = Math.min(widest, Math.ceil(logSd / STEP) * STEP);
    const before = known.get(at);
    if (before !== undefined) return before;
    const { budget } = allowanceAt(part, at);
    known.set(at, budget);
    return budget;
  };
}
