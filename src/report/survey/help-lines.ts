/** What would help, in words and in figures: of one panel, and of all panels of a car together. */
import { groupBy } from '../../base/group-by.ts';
import { remark, saying } from '../../base/remark.ts';
import { shown } from '../../base/rounding.ts';
import { type Sentence, says, um } from '../../base/sentence.ts';
import type { Minutes } from '../../base/units.ts';
import type { SurveyAdvice } from '../../film/help/survey-advice.ts';
import type { Help, HelpCode } from '../../film/help/what-would-help.ts';
import { type PanelSurvey, partsOf } from '../../film/survey.ts';
import type { SurveyHelp } from '../../tasks/survey/survey-help.ts';
import { machine } from '../envelope.ts';
import { panelNames, whichPanels } from '../panel-list.ts';
import { counted } from '../words.ts';

/** Advice with what it is worth: `value` is the change of the budget in µm. */
export type Advice = SurveyAdvice & { readonly time?: Minutes };

/** By what it gains; what cannot be put in figures comes after. */
export function adviceOf(survey: PanelSurvey, helped: SurveyHelp): readonly Advice[] {
  const help = (helped.get(survey) ?? []).map((one) => adviceFrom(one, survey));
  const said = new Set(help.map(({ code }) => code));
  return [...help, ...survey.advice.filter(({ code }) => !said.has(code))];
}

function adviceFrom(help: Help, { points: read }: PanelSurvey): Advice {
  const { code, gain, time, points, doubtShare } = help;
  const more = points === null ? null : points - read.length;
  const [word, text] = WORDS[code];
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

/** Code of the advice, and what to do. */
const WORDS: Readonly<Record<HelpCode, readonly [string, string]>> = {
  history: ['history', 'find out what was polished off before'],
  clear: ['clear', 'read the clear by itself, with a gauge that resolves layers'],
  'test-spot': ['test-spot', 'make a test spot'],
  zinc: ['zinc', 'find out if the steel is galvanised: a magnetic gauge counts zinc as paint'],
  points: ['more-points', ''],
  gauge: ['gauge-check', ''],
};

const morePoints = (more: number, read: number): string =>
  `read ${counted(more, 'more point')}${read === 1 ? ', one is no basis for machine work' : ''}`;

/** The doubt is mostly elsewhere, and who asks for a checked gauge is told so. */
const checkGauge = (doubtShare: number): string =>
  `check the gauge on shims (${shown(100 * doubtShare, 1)} % of the doubt about what is left)`;

/** `find out what was polished off before: +1.1 µm (10 min)`. */
export const adviceLine = (one: Advice): Sentence => {
  const { value, time } = one;
  const gain = value === undefined ? says`` : says`: ${signed(value, 2)}`;
  return says`${saying(one)}${gain}${time === undefined ? '' : ` (${minutes(time)})`}`;
};

export const adviceRecord = ({ code, text, value, points, time }: Advice) => ({
  code,
  text,
  ...(value === undefined ? {} : { value: machine(value) }),
  ...(points === undefined ? {} : { points }),
  ...(time === undefined ? {} : { minutes: machine(time) }),
});

/** A line for each thing that would help, by what it gains over the car; then what has no figure. */
export function helpLines(
  surveyed: readonly PanelSurvey[],
  helped: SurveyHelp,
): readonly Sentence[] {
  const read = surveyed.filter(({ points }) => points.length > 0).flatMap(partsOf);
  const all = read.flatMap((part) => (helped.get(part) ?? []).map((help) => ({ ...help, part })));
  const groups = [...groupBy(all, ({ code, points }) => `${code} ${points}`).values()]
    .filter((group) => group.some(isWorthShowing))
    .map((group) => ({ group, gain: group.reduce((sum, { gain }) => sum + gain, 0) }))
    .sort((one, other) => other.gain - one.gain);
  const history = groups.some(({ group }) => group.some(({ code }) => code === 'history'));
  return [
    ...groups.map(({ group }) => carLine(group, read)),
    // What is to be asked once for the car is not to be said twice.
    ...withoutFigure(surveyed, helped, history ? ['history'] : []),
    ...beyondHelp(read, helped),
  ];
}

/** Panels of factory film on which nothing may go, whatever else is learnt. */
function beyondHelp(read: readonly PanelSurvey[], helped: SurveyHelp): readonly Sentence[] {
  const beyond = read.filter(
    (part) =>
      part.budget === 0 &&
      part.topcoat !== null &&
      !(helped.get(part) ?? []).some(({ gain }) => gain > 0),
  );
  return beyond.length === 0
    ? []
    : [[`nothing that could be learnt frees any film: ${whichPanels(beyond, read)}`]];
}

/** Less reads as nought; of the gauge just that is worth knowing. */
const LEAST_SHOWN = 0.05;
const isWorthShowing = ({ code, gain }: Help): boolean =>
  code === 'gauge' || Math.abs(gain) >= LEAST_SHOWN;

type Gain = Help & { readonly part: PanelSurvey };

function carLine(group: readonly Gain[], read: readonly PanelSurvey[]): Sentence {
  const most = group.reduce((far, one) => (Math.abs(one.gain) > Math.abs(far.gain) ? one : far));
  const which = whichPanels(
    group.map(({ part }) => part),
    read,
  );
  const upTo = says`up to ${signed(most.gain)}`;
  const { code, points } = most;
  const time = most.time === null ? '' : minutes(most.time);
  const lines: Readonly<Record<HelpCode, Sentence>> = {
    history: says`earlier work known, if there was none: ${upTo}: ${which}`,
    clear: says`the clear itself read: ${upTo}, ${time} each: ${which}`,
    'test-spot': says`a test spot on this paint: ${upTo}, ${time} in all: ${which}`,
    zinc: says`zinc under the paint, if there is any, lowers it: ${upTo}: ${which}`,
    points: says`${points ?? 0} points a panel: ${upTo}, up to ${time} each: ${which}`,
    gauge: gaugeLine(group, most),
  };
  return lines[code];
}

function gaugeLine(group: readonly Gain[], { gain }: Gain): Sentence {
  const share = Math.max(...group.map(({ doubtShare = 0 }) => doubtShare));
  const gained = gain < LEAST_GAUGE_SHOWN ? 'next to nothing' : says`up to ${signed(gain, 2)}`;
  return says`the gauge checked on shims: ${gained}, as it is ${shown(100 * share, 1)} % of the doubt`;
}

const LEAST_GAUGE_SHOWN = 0.005;

/** Advice by what to do, with the panels it is for. */
function withoutFigure(
  surveyed: readonly PanelSurvey[],
  helped: SurveyHelp,
  told: readonly string[],
): readonly Sentence[] {
  const pairs = surveyed.flatMap((panel) =>
    adviceOf(panel, helped)
      .filter(({ code, value }) => value === undefined && !told.includes(code))
      .map(({ text }) => ({ text, panel })),
  );
  return [...groupBy(pairs, ({ text }) => text)].map(([text, group]) => [
    `${text}: ${panelNames(group.map(({ panel }) => panel.panel)).join(', ')}`,
  ]);
}

/** A change of the budget, with its sign. */
const signed = (gain: number, digits = 1): Sentence =>
  says`${gain < 0 ? '−' : '+'}${um(Math.abs(gain), digits)}`;

const minutes = (time: Minutes): string => `${shown(time, 0)} min`;
