/** What each thing still to be learned would free on the panels of a survey. */
import { logSdAfterSpot, spotTakes } from '../../correction/spot/test-spot-forecast.ts';
import { readAgainHelp } from '../../film/help/read-again.ts';
import { type Help, whatWouldHelp } from '../../film/help/what-would-help.ts';
import { budgetWithZinc } from '../../film/help/with-zinc.ts';
import { type PanelSurvey, partsOf } from '../../film/survey.ts';
import type { SurveyedVehicle } from './survey-files.ts';
import type { SurveyResult } from './survey-vehicle.ts';

export type SurveyHelp = ReadonlyMap<PanelSurvey, readonly Help[]>;

/** By panel, and by zone where a panel has two; those that nothing can be said of are not among them. */
export function surveyHelp({ survey, request, settings, facts, trials }: SurveyResult): SurveyHelp {
  const { repeatability } = settings.film.measurement;
  const parts = survey.panels.flatMap(partsOf);
  const takes = spotTakes(settings.correction);
  // Its patch must be somewhere where as much may go.
  const hasPlace = takes !== null && parts.some(({ budget }) => budget >= takes);
  // Once there is a spot on this paint, its own advice says what to try next.
  const afterSpot =
    trials.size > 0 || !hasPlace
      ? settings.terms.logSd
      : logSdAfterSpot(settings.correction, repeatability);
  const readAgain = readAgainHelp(survey, request);
  const withZinc = budgetWithZinc(request);
  const helped = parts.map((part) => {
    const { galvanised } = facts.get(part.panel.id) ?? settings.facts;
    const terms = {
      removal: settings.terms,
      logSdAfterSpot: afterSpot,
      spotTakes: takes,
      withZinc: galvanised.origin === 'built-in' ? withZinc : null,
      gaugeKnown: settings.gauge !== undefined,
      readAgain,
    };
    return [part, whatWouldHelp(part, terms, settings.film)] as const;
  });
  return new Map(helped.filter(([, help]) => help.length > 0));
}

/** All that a page or a record of a survey is written from. */
export type SurveyReport = SurveyedVehicle & { readonly helped: SurveyHelp };

export const withHelp = (vehicle: SurveyedVehicle): SurveyReport => ({
  ...vehicle,
  helped: surveyHelp(vehicle.result),
});
