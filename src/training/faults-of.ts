/** What a survey is told its shortcomings by. */
import type { Micrometres } from '../base/units.ts';
import type { CarBias } from './car-bias.ts';
import type { GradedSurvey } from './graded-survey.ts';
import type { Judged } from './mark.ts';
import type { MarksPattern } from './marks-pattern.ts';
import type { Reason } from './reasons.ts';
import type { Reference } from './reference.ts';
import type { ScoreLimits } from './scores.ts';

export type FaultsOf = {
  readonly trainee: GradedSurvey;
  readonly reference: Reference;
  readonly judged: Judged;
  /** Told in place of how well the readings repeat, which nobody knows then. */
  readonly repeatsAlike: Reason | null;
  readonly bias: CarBias | null;
  /** Panels that a blunder speaks of already. */
  readonly explained: ReadonlySet<string>;
  /** A blunder of the whole survey: no word of its panels one by one. */
  readonly wholeSurvey: boolean;
  readonly pattern: MarksPattern;
  /** What the checks of the trainee’s gauge prove that it moved by. */
  readonly gaugeMoved: Micrometres | undefined;
  /** Points by `pointKey` whose readings are keyed wrongly. */
  readonly keyed: ReadonlySet<string>;
  readonly limits: ScoreLimits;
};
