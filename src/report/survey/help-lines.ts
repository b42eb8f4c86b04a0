/** What would help a panel, in words and in figures. */

import { counted } from '../../base/counted.ts';
import { remark, saying } from '../../base/remark.ts';
import { LEAST_TOLD, shown } from '../../base/rounding.ts';
import { type Sentence, says, um } from '../../base/sentence.ts';
import type { Minutes } from '../../base/units.ts';
import { wordThatTakes } from '../../film/condition/other-side.ts';
import type { SurveyAdvice } from '../../film/help/survey-advice.ts';
import { usefulAdvice } from '../../film/help/useful-advice.ts';
import type { Help, HelpCode } from '../../film/help/what-would-help.ts';
import { isOnRecord } from '../../film/limits/earlier-work.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import type { SurveyHelp } from '../../tasks/survey/survey-help.ts';
import { recorded, recordedOrNull } from '../recorded.ts';
import { coatName } from './coat-name.ts';

/** Advice with what it is worth: `value` is the change of the budget in µm; `otherwise` that where it comes out the other way. */
export type Advice = SurveyAdvice & {
  readonly otherwise?: { readonly said: Sentence; readonly value: number };
};

/** By what it gains; what cannot be put in figures comes after. */
export function adviceOf(survey: PanelSurvey, helped: SurveyHelp): readonly Advice[] {
  const help = helped.get(survey) ?? [];
  const figured = help.map((one) => adviceFrom(one, survey));
  const said = new Set(figured.map(({ code }) => code));
  return [...figured, ...usefulAdvice(survey, help).filter(({ code }) => !said.has(code))];
}

/** What it is as advice for a panel, and what to do. */
const WORDS: Readonly<Record<HelpCode, readonly [string, string]>> = {
  history: [
    'history',
    'find out what was polished off before (taken_um in the job); if nothing was',
  ],
  clear: ['clear', 'read the clear by itself, with an ultrasonic gauge that tells layers apart'],
  'test-spot': [
    'test-spot',
    'make a test spot: polish a patch, read its film before and after; one does for all original paint',
  ],
  zinc: [
    'zinc',
    'find out if the steel is galvanised: a magnetic gauge counts zinc as paint; if so',
  ],
  points: ['more-points', ''],
  'read-again': ['read-again', ''],
  'edge-point': ['edge-point', ''],
  gauge: ['gauge-check', ''],
};

/** What a record holds is known. */
const HISTORY_BESIDES =
  'find out what was polished off besides what is on record (taken_um in the job); if nothing was';

/** Its patch would lose more than may go from this panel. */
const SPOT_ELSEWHERE = [
  'test-spot',
  'make a test spot, on another panel (its patch loses more than may go here): polish a patch, read its film before and after; one does for all original paint',
] as const;

function adviceFrom(help: Help, survey: PanelSurvey): Advice {
  const { points: read } = survey;
  const { code, gain, time, points, doubtShare, otherwise, isElsewhere = false } = help;
  const more = points === null ? null : points - read.length;
  const [word, worded] = isElsewhere ? SPOT_ELSEWHERE : WORDS[code];
  const text = worded.replace('the clear', `the ${coatName([survey])}`);
  const said = [
    code === 'history' && isOnRecord(survey.facts) ? HISTORY_BESIDES : text,
    ...(code === 'clear' && otherwise !== undefined
      ? [`; if it reads as ${otherwise.asPainted ? 'on the others' : survey.condition}`]
      : []),
    ...(code === 'read-again' ? [againText(survey)] : []),
    ...(code === 'edge-point' ? [edgeText(survey)] : []),
    ...(more === null ? [] : [morePoints(more, read.length)]),
    ...(doubtShare === undefined ? [] : [checkGauge(doubtShare, coatName([survey]))]),
  ];
  return {
    ...remark(word, said.join(''), gain),
    ...(more === null ? {} : { points: more }),
    ...(time === null ? {} : { time }),
    ...(otherwise === undefined
      ? {}
      : { otherwise: { said: otherwiseText(help, otherwise, survey), value: otherwise.gain } }),
  };
}

/** A doubtful reading from which nothing may go, or which weighs on the whole car. */
export const isAskedFirst = (
  { code, gain, elsewhere = [] }: Help,
  { budget }: PanelSurvey,
): boolean =>
  code === 'read-again' &&
  ((budget < LEAST_TOLD && gain >= LEAST_TOLD) ||
    elsewhere.some((one) => one.gain >= WEIGHS_ON_OTHERS));

/** µm that a doubtful reading takes from another panel. */
const WEIGHS_ON_OTHERS = 0.5;

/** `read point 1 again; if it reads as the others`. */
function againText({ lowPoints, highPoints }: PanelSurvey): string {
  const names = [...lowPoints, ...highPoints];
  const [word, reads] = names.length === 1 ? ['point', 'it reads'] : ['points', 'they read'];
  return `read ${word} ${names.join(', ')} again; if ${reads} as the others`;
}

/** `if point 5 lies near an edge or on a body line, write edge in the column place`. */
export function edgeText({ lowPoints }: PanelSurvey): string {
  const [word, lies] = lowPoints.length === 1 ? ['point', 'lies'] : ['points', 'lie'];
  return `if ${word} ${lowPoints.join(', ')} ${lies} near an edge or on a body line, write edge in the column place`;
}

/** `if 4 µm were`, of history; `as cut-back` or `as factories paint`, of a clear that is read; `if it reads the same`, of a point. */
function otherwiseText(
  { code }: Help,
  { taken, asPainted }: NonNullable<Help['otherwise']>,
  survey: PanelSurvey,
): Sentence {
  if (asPainted) return says`as factories paint`;
  if (taken !== undefined) return says`if ${um(taken, null)} were`;
  if (code !== 'read-again') return says`as ${wordThatTakes(survey) ?? 'not'}`;
  return survey.lowPoints.length + survey.highPoints.length === 1
    ? says`if it reads the same`
    : says`if they read the same`;
}

const morePoints = (more: number, read: number): string =>
  `read ${counted(more, 'more point')}${read === 1 ? ', one is no basis for machine work' : ''}`;

/** The doubt is mostly elsewhere, and who asks for a checked gauge is told so. */
const checkGauge = (doubtShare: number, coat: string): string =>
  `check the gauge on shims (${ofDoubt(doubtShare, coat)})`;

/** `0.6 % of the doubt about the clear`. */
export const ofDoubt = (share: number, coat: string): string =>
  `${shown(100 * share, 1)} % of the doubt about the ${coat}`;

/** `find out what was polished off before; if nothing was: +1.1 µm`; with the time it takes. */
export const adviceLine = (one: Advice): Sentence => {
  const { value, time, otherwise } = one;
  const gain = value === undefined ? says`` : says`: ${signed(value)}`;
  const or =
    otherwise === undefined ? says`` : says`, ${signed(otherwise.value)} ${otherwise.said}`;
  return says`${saying(one)}${gain}${or}${time === undefined ? '' : ` (${minutes(time)})`}`;
};

export const adviceRecord = ({ code, text, value, otherwise, points, time }: Advice) => ({
  code,
  text,
  ...(value === undefined ? {} : { value: recorded(value) }),
  value_otherwise: recordedOrNull(otherwise?.value),
  points: points ?? null,
  time_min: recordedOrNull(time),
});

/** A change of the budget with its sign, in hundredths as the budget itself. */
export const signed = (gain: number): Sentence =>
  Math.abs(gain) < LEAST_TOLD ? says`nothing` : says`${plusOf(gain)}${um(gain, 2)}`;

/** A loss brings its own sign; what shows as nothing has none. */
export const plusOf = (gain: number): string => (gain >= LEAST_TOLD ? '+' : '');

export const minutes = (time: Minutes): string => `${shown(time, 0)} min`;

/** What the gains of a page are, said once. */
export const NOT_TO_ADD = 'each by itself, if it comes out as reckoned';
