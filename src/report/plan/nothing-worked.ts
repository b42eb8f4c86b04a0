/** Why no panel of a plan is worked, in one clause: nothing wants it, nothing may go, or the shop has no way to. */
import type { PanelPlan } from '../../correction/plan/plan.ts';
import { NO_TECHNIQUE, NOTHING_TO_CORRECT } from './keep-off.ts';

/** `parts`: panels, and in place of one in two zones its zones. */
export function nothingWorked(parts: readonly PanelPlan[]): string {
  const read = parts.filter(({ survey }) => survey.points.length > 0);
  const wantsNothing = ({ reasons, local }: PanelPlan): boolean =>
    local.length === 0 && reasons.some(({ code }) => code === NOTHING_TO_CORRECT);
  if (read.length > 0 && read.every(wantsNothing)) return 'nothing to polish';
  const why = read.flatMap(({ reasons }) => reasons.filter(({ code }) => code === NO_TECHNIQUE));
  const each = [...new Set(why.map(({ text }) => text))];
  return ['no panel can be worked', ...(each.length === 0 ? [] : [each.join('; ')])].join(': ');
}
