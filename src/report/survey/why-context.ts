/** What every part of a panel’s page is told with. */
import { shown } from '../../base/rounding.ts';
import { type Sentence, tell } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { SurveyHelp } from '../../tasks/survey/survey-help.ts';
import type { SurveyResult } from '../../tasks/survey/survey-vehicle.ts';

export type WhyContext = {
  readonly result: SurveyResult;
  readonly helped: SurveyHelp;
  readonly unit: LengthUnit;
};

export const toldIn =
  (unit: LengthUnit) =>
  (said: Sentence): string =>
    tell(said, unit);

/** Degrees of freedom: infinite where nothing limits them. */
export const degrees = (dof: number): string => (Number.isFinite(dof) ? shown(dof, 0) : '∞');
