/**
 * A survey without the panels that have a reading in another unit, or with its decimal mark in the wrong place: beside
 * others of the class such values lie near to each other for that, and not because anybody copied.
 */
import type { GradedSurvey } from './graded-survey.ts';
import { keyingFactors } from './keying-factors.ts';
import type { Reference } from './reference.ts';
import type { TrainingModel } from './training-model.ts';

export function keyedLeftOut(
  graded: GradedSurvey,
  reference: Reference,
  slips: TrainingModel['slips'],
): GradedSurvey {
  const { panels } = keyingFactors(graded, reference, slips);
  return {
    ...graded,
    survey: {
      ...graded.survey,
      panels: graded.survey.panels.filter(({ panel }) => !panels.has(panel.id)),
    },
    readings: graded.readings.filter(({ panel }) => !panels.has(panel)),
  };
}
