/** What would help a panel, in words and in figures. */
import { remark, saying } from '../../base/remark.ts';
import { shown } from '../../base/rounding.ts';
import { type Sentence, says, um } from '../../base/sentence.ts';
import type { Minutes } from '../../base/units.ts';
import type { SurveyAdvice } from '../../film/help/survey-advice.ts';
import { usefulAdvice } from '../../film/help/useful-advice.ts';
import type { Help, HelpCode } from '../../film/help/what-would-help.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import type { SurveyHelp } from '../../tasks/survey/survey-help.ts';
import { machine } from '../envelope.ts';
import { counted } from '../words.ts';

/** Advice with what it is worth: `value` is the change of the budget in µm. */
export type Advice = SurveyAdvice;

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
  gauge: ['gauge-check', ''],
};

/** Its patch would lose more than may go from this panel. */
const SPOT_ELSEWHERE = [
  'test-spot',
  'make a test spot, on another panel (its patch loses more than may go here): polish a patch, read its film before and after; one does for all original paint',
] as const;

function adviceFrom(help: Help, { points: read }: PanelSurvey): Advice {
  const { code, gain, time, points, doubtShare, isElsewhere = false } = help;
  const more = points === null ? null : points - read.length;
  const [word, text] = isElsewhere ? SPOT_ELSEWHERE : WORDS[code];
  const said = [
    text,
    ...(more === null ? [] : [morePoints(more, read.length)]),
    ...(doubtShare === undefined ? [] : [checkGauge(doubtShare)]),
  ];
  return {
    ...remark(word, said.join(''), gain),
    ...(more === null ? {} : { points: more }),
    ...(time === null ? {} : { time }),
  };
}

const morePoints = (more: number, read: number): string =>
  `read ${counted(more, 'more point')}${read === 1 ? ', one is no basis for machine work' : ''}`;

/** The doubt is mostly elsewhere, and who asks for a checked gauge is told so. */
const checkGauge = (doubtShare: number): string =>
  `check the gauge on shims (${ofDoubt(doubtShare)})`;

/** `0.6 % of the doubt about the clear`. */
export const ofDoubt = (share: number): string =>
  `${shown(100 * share, 1)} % of the doubt about the clear`;

/** `find out what was polished off before; if nothing was: +1.1 µm`; with the time it takes. */
export const adviceLine = (one: Advice): Sentence => {
  const { value, time } = one;
  const gain = value === undefined ? says`` : says`: ${signed(value)}`;
  return says`${saying(one)}${gain}${time === undefined ? '' : ` (${minutes(time)})`}`;
};

export const adviceRecord = ({ code, text, value, points, time }: Advice) => ({
  code,
  text,
  ...(value === undefined ? {} : { value: machine(value) }),
  ...(points === undefined ? {} : { points }),
  ...(time === undefined ? {} : { minutes: machine(time) }),
});

/** A change of the budget with its sign, in hundredths as the budget itself. */
export const signed = (gain: number): Sentence =>
  says`${gain < 0 ? '−' : '+'}${um(Math.abs(gain), 2)}`;

export const minutes = (time: Minutes): string => `${shown(time, 0)} min`;

/** What the gains of a page are, said once. */
export const NOT_TO_ADD = 'each alone, not to be added; may turn out less';
