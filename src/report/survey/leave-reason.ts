/** Why a panel is left alone, in the words in which panels are told from each other in the bay. */
import type { LimitCode } from '../../film/limits/limit.ts';
import type { PanelSurvey } from '../../film/survey.ts';

/** `thin, cut-back`; of film that is sound what stands against work on it. */
export function filmReason({ condition, also, boundBy, otherSide, panel }: PanelSurvey): string {
  if (boundBy.code === 'near-line' && otherSide !== null) return `perhaps ${otherSide.condition}`;
  if (condition === 'original') return REASONS[boundBy.code];
  return condition === 'unread'
    ? `${panel.substrate}, not to be read so`
    : [condition, ...also].join(', ');
}

/** The limit from which nothing may go, without a table beside it. */
const REASONS: Readonly<Record<LimitCode, string>> = {
  clear: 'too little clear',
  life: 'all gone that may go in its life',
  total: 'too thin',
  readings: 'one reading only',
  finish: 'matte',
  covered: 'covered',
  'fresh-paint': 'fresh paint',
  'test-spot': 'test spot first',
  'sound-panels': 'too few sound panels',
  'near-line': 'not settled what it is',
  'no-data': 'not known',
};

/** The same with the way out, where there is one: `filler, refinished: test spot first`. */
export function leaveReason(survey: PanelSurvey): string {
  const reason = filmReason(survey);
  const spot = REASONS['test-spot'];
  return survey.boundBy.code === 'test-spot' && reason !== spot ? `${reason}: ${spot}` : reason;
}
