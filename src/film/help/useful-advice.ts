/** What is advised for a panel besides what has a figure: nothing that was reckoned to free no film. */
import { remark } from '../../base/remark.ts';
import type { PanelSurvey } from '../survey.ts';
import type { SurveyAdvice } from './survey-advice.ts';
import type { Help } from './what-would-help.ts';

/** Their worth is reckoned wherever there is an estimate of the topcoat: with no figure they are worth nothing. */
const RECKONED: readonly string[] = ['history', 'more-points'];

/** `help` is what has a figure; where nothing at all is of use, that is said. */
export function usefulAdvice(
  { advice, budget, boundBy, topcoat, zones }: PanelSurvey,
  help: readonly Help[],
): readonly SurveyAdvice[] {
  // Nothing that would be learnt of its film makes good what colour on the pad showed.
  if (boundBy.code === 'colour-at-spot') return [];
  if (topcoat === null) return advice;
  const useful = advice.filter(({ code }) => !RECKONED.includes(code));
  const frees = ({ gain, otherwise, elsewhere = [] }: Help): boolean =>
    gain > 0 || (otherwise?.gain ?? 0) > 0 || elsewhere.some((one) => one.gain > 0);
  const isStuck = budget === 0 && zones.length === 0 && !help.some(frees);
  return isStuck && useful.length === 0
    ? [remark('beyond-help', 'nothing that could be learnt frees any film, leave it alone')]
    : useful;
}
