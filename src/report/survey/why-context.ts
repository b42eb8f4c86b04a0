/** What every part of a panel’s page is told with. */
import { shown } from '../../base/rounding.ts';
import type { Sentence } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { SurveyHelp } from '../../tasks/survey/survey-help.ts';
import type { SurveyResult } from '../../tasks/survey/survey-vehicle.ts';
import { toldFacts } from '../facts.ts';
import type { Facts } from '../model.ts';

export type WhyContext = {
  readonly result: SurveyResult;
  readonly helped: SurveyHelp;
  readonly unit: LengthUnit;
};

export const toldIn =
  (unit: LengthUnit) =>
  (said: Sentence): Facts =>
    toldFacts(said, unit);

/** Degrees of freedom: infinite where nothing limits them. */
export const degrees = (dof: number): string => (Number.isFinite(dof) ? shown(dof, 0) : '∞');
