/**
 * What might go were the steel of the car galvanised. All panels are judged once more: a magnetic gauge reads the zinc
 * as film, so it is less paint that they have, and panels of another metal are compared with them by as much more.
 */
import type { Micrometres } from '../../base/units.ts';
import { budgetIn } from '../car-budgets.ts';
import { gatherCar } from '../gathered-car.ts';
import type { PanelSurvey } from '../survey.ts';
import type { SurveyRequest } from '../survey-request.ts';

export function budgetWithZinc(request: SurveyRequest): (part: PanelSurvey) => Micrometres {
  const galvanised: SurveyRequest = {
    ...request,
    factsOf: (id) => ({ ...request.factsOf(id), galvanised: true }),
  };
  return (part) => budgetIn(gatherCar(galvanised), part, galvanised);
}
