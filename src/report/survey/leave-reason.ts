/** Why a panel is left alone, in the words in which panels are told from each other in the bay. */
import { LEAST_TOLD } from '../../base/rounding.ts';
import { needsUltrasound } from '../../film/condition/condition.ts';
import type { LineComparison } from '../../film/condition/line-comparison.ts';
import { wordThatTakes } from '../../film/condition/other-side.ts';
import { coloursAt } from '../../film/limits/colour-at-spot.ts';
import type { LimitCode } from '../../film/limits/limit.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import { coatName } from './coat-name.ts';

/** `filler, refinished?`; of film that is sound what stands against work on it. */
export function filmReason(survey: PanelSurvey): string {
  const { condition, also, boundBy, panel } = survey;
  const other = wordThatTakes(survey);
  if (boundBy.code === 'near-line' && other !== null) {
    // That sound film may be cut keeps off it; that cut film may be sound does not.
    return condition === 'original' ? `perhaps ${other}` : `${condition}?`;
  }
  if (condition === 'original') {
    if (isColourElsewhere(survey)) return ELSEWHERE;
    return boundBy.code === 'clear' ? `too little ${coatName([survey])}` : REASONS[boundBy.code];
  }
  if (condition === 'unread') {
    return `${panel.substrate}${needsUltrasound(panel) ? '; if metal, state that in the job' : ''}`;
  }
  const words = also.map((word) => (isDoubtedBeside(survey, word) ? `${word}?` : word));
  const colour =
    boundBy.code === 'colour-at-spot'
      ? [isColourElsewhere(survey) ? ELSEWHERE : REASONS[boundBy.code]]
      : [];
  return [condition, ...words, ...colour, ...whyHeld(boundBy)].join(', ');
}

/** A spot that passed frees nothing where repaint gets nothing more: unsaid, it looks as if the spot had been missed. */
function whyHeld({ ofRepaint, value }: PanelSurvey['boundBy']): readonly string[] {
  if (ofRepaint === undefined || value >= LEAST_TOLD) return [];
  const passed = 'no colour at its test spot';
  return ofRepaint.cap < LEAST_TOLD
    ? [`${passed}, but nothing may go from an original panel either`]
    : [`${passed}, but all is gone that repaint gets`];
}

/** Whether a word beside the first is less than sure. */
const isDoubtedBeside = ({ sureness }: PanelSurvey, word: string): boolean =>
  sureness?.beside.some((one) => one.condition === word && isDoubtfulWord(one)) ?? false;

export const hasDoubtedWord = (survey: PanelSurvey): boolean =>
  survey.also.some((word) => isDoubtedBeside(survey, word));

export const isDoubtfulWord = ({ otherSide }: LineComparison): boolean => otherSide > SURE_ENOUGH;

/** Chance of the other side that asks for no ?. */
const SURE_ENOUGH = 0.05;

/** Whether nothing may go for what a test spot of another panel showed: that is told of the car. */
export const isColourElsewhere = ({ boundBy, facts }: PanelSurvey): boolean =>
  boundBy.code === 'colour-at-spot' && coloursAt(facts).length === 0;

const ELSEWHERE = 'clear in doubt: colour at another’s test spot';

/** The limit from which nothing may go, without a table beside it. */
const REASONS: Readonly<Record<Exclude<LimitCode, 'clear'>, string>> = {
  life: 'all gone that may go in its life',
  total: 'too thin',
  readings: 'one reading only',
  finish: 'matte',
  covered: 'covered',
  'fresh-paint': 'fresh paint',
  'clear-coat-failure': 'clear coat failed',
  'colour-at-spot': 'colour on the pad at its test spot',
  'test-spot': 'test spot first',
  'sound-panels': 'too few sound panels',
  'spot-depth': 'as deep as its test spot went',
  'near-line': 'not settled what it is',
  place: 'a place of it was worked deeper',
  'as-compared': 'nothing more after the visit on record',
  'no-data': 'not known',
};
