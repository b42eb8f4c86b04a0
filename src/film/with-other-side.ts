import { otherSideOf } from './condition/other-side.ts';
import { settlingAdvice } from './help/settling.ts';
import type { PanelSurvey } from './survey.ts';
import type { SurveyRequest } from './survey-request.ts';

/** What a panel near its line would be otherwise, and what settles which it is. */
export function withOtherSide(
  { terms, model }: SurveyRequest,
  survey: Omit<PanelSurvey, 'otherSide'>,
): PanelSurvey {
  const judged = { ...survey, otherSide: otherSideOf(survey, terms, model) };
  const settling = settlingAdvice(judged, {
    mostPoints: model.reading.mostPoints,
    nearRisk: model.conditions.nearRisk,
  });
  return { ...judged, advice: [...survey.advice, ...settling] };
}
