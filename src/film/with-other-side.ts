import { otherSideOf } from './condition/other-side.ts';
import { settlingAdvice } from './help/settling.ts';
import type { SurveyAdvice } from './help/survey-advice.ts';
import type { PanelSurvey } from './survey.ts';
import type { SurveyRequest } from './survey-request.ts';

/** What a panel near its line would be otherwise, and what settles which it is. */
export function withOtherSide(
  { terms, model }: SurveyRequest,
  survey: Omit<PanelSurvey, 'otherSide' | 'advice'>,
  advice: readonly SurveyAdvice[],
): PanelSurvey {
  const { sureness, points, facts } = survey;
  const otherSide = otherSideOf(survey, terms, model);
  const settling = settlingAdvice(
    { sureness, otherSide, points, facts },
    { mostPoints: model.reading.mostPoints, nearRisk: model.conditions.nearRisk },
  );
  return { ...survey, otherSide, advice: [...advice, ...settling] };
}
