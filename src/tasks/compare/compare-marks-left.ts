/** What may still go where only marks were read: never more than might go before, less what came off. */
import { says, um } from '../../base/sentence.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { Allowance } from '../../film/limits/allowance.ts';
import { bindingLimit, inWords, type Limit, type LimitCode } from '../../film/limits/limit.ts';
import { type Allowed, mightGo } from './compare-overrun.ts';

/** Limits that hang on the film of the whole panel, or on the panels beside it. */
const UNTOLD: readonly LimitCode[] = [
  ...(['readings', 'clear', 'life', 'near-line', 'place', 'sound-panels'] as const),
];

export const isUntold = ({ boundBy }: Pick<Allowance, 'boundBy'>): boolean =>
  UNTOLD.includes(boundBy.code);

/** Without a plan that they were read for, marks say neither go on nor stop, but where nothing may go outright. */
export function unsaidByMarks(allowance: Allowance): Allowance {
  if (!isUntold(allowance) && allowance.budget === 0) return allowance;
  const unsaid = inWords({
    code: 'readings',
    value: micrometres(0),
    said: () => 'marks alone are no survey, and no plan of these panels is named',
  });
  const others = allowance.limits.filter(({ code }) => code !== 'readings');
  return { ...allowance, limits: [unsaid, ...others], budget: unsaid.value, boundBy: unsaid };
}

/** Of marks before the work: the plan read the clear, they do not. */
export const byMarksAlone = ({ limits }: Allowance): Pick<Allowance, 'topcoat' | 'limits'> => ({
  topcoat: null,
  limits: limits.filter(({ code }) => !UNTOLD.includes(code)),
});

export function lessGone(
  { topcoat, limits }: Pick<Allowance, 'topcoat' | 'limits'>,
  allowed: Allowed,
  gone: Micrometres,
): Allowance {
  const all = [restOf(allowed, gone), ...limits];
  const boundBy = bindingLimit(all);
  return { topcoat, limits: all, budget: boundBy.value, boundBy };
}

const restOf = (allowed: Allowed, gone: Micrometres): Limit =>
  inWords({
    code: 'readings',
    value: micrometres(Math.max(0, allowed.most - gone)),
    said: () => says`${mightGo(allowed)}, ${um(gone)} are gone, and marks alone are no survey`,
  });
