import { otherSideOf } from './condition/other-side.ts';
import { heldToBothSides } from './condition/over-both-sides.ts';
import { settlingAdvice } from './help/settling.ts';
import type { PanelSurvey } from './survey.ts';
import type { SurveyRequest } from './survey-request.ts';

/** What a panel near its line would be otherwise; what may go is then held to both sides of it. */
export function withOtherSide(
  { terms, model }: SurveyRequest,
  survey: Omit<PanelSurvey, 'otherSide'>,
): PanelSurvey {
  const otherSide = otherSideOf(survey, terms, model);
  const held =
    otherSide === null || otherSide.overBoth === null
      ? survey
      : { ...survey, ...heldToBothSides(survey, otherSide.overBoth, otherSide.condition) };
  const judged = { ...held, otherSide };
  const settling = settlingAdvice(judged, {
    mostPoints: model.reading.mostPoints,
    nearRisk: model.conditions.nearRisk,
  });
  return { ...judged, advice: [...survey.advice, ...settling] };
}
