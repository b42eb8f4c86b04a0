/** Why no panel of a plan is worked, in one clause: nothing wants it, nothing may go, or the shop has no way to. */
import type { PanelPlan } from '../../correction/plan/plan.ts';
import { LESS_TAKEN, MORE_CLEARS, SHOP_TOO_MILD } from '../../correction/plan/plan-remarks.ts';
import { NO_TECHNIQUE, NOTHING_FITS, NOTHING_TO_CORRECT } from './keep-off.ts';

/** `parts`: panels, and in place of one in two zones its zones. */
export function nothingWorked(parts: readonly PanelPlan[]): string {
  const read = parts.filter(({ survey }) => survey.points.length > 0);
  const wantsNothing = ({ reasons, local }: PanelPlan): boolean =>
    local.length === 0 && reasons.some(({ code }) => code === NOTHING_TO_CORRECT);
  if (read.length > 0 && read.every(wantsNothing)) return 'nothing to polish';
  const tooHarsh = `the mildest steps take more than may go: ${LESS_TAKEN}`;
  const tooMild = `what the shop has clears hardly a mark: ${MORE_CLEARS}`;
  const why = read.flatMap(({ reasons }) =>
    reasons.flatMap(({ code, text }) => {
      if (code === NO_TECHNIQUE) return [text];
      if (code === NOTHING_FITS) return [tooHarsh];
      return code === SHOP_TOO_MILD ? [tooMild] : [];
    }),
  );
  const each = [...new Set(why)];
  return ['no panel can be worked', ...(each.length === 0 ? [] : [each.join('; ')])].join(': ');
}
