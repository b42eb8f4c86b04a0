/** What would help, in words and in figures: of one panel, and of all panels of a car together. */
import { groupBy } from '../base/group-by.ts';
import { remark, saying } from '../base/remark.ts';
import { shown } from '../base/rounding.ts';
import { type Sentence, says, um } from '../base/sentence.ts';
import type { Minutes } from '../base/units.ts';
import { type PanelSurvey, partsOf } from '../film/survey.ts';
import type { SurveyAdvice } from '../film/survey-advice.ts';
import type { Help, HelpCode } from '../film/what-would-help.ts';
import type { SurveyHelp } from '../tasks/survey-help.ts';
import { machine } from './envelope.ts';
import { counted } from './words.ts';

/** Advice with what it is worth: `value` is the change of the budget in µm. */
export type Advice = SurveyAdvice & { readonly time?: Minutes };

/** By what it gains; what cannot be put in figures comes after. */
export function adviceOf(survey: PanelSurvey, helped: SurveyHelp): readonly Advice[] {
  const help = (helped.get(survey) ?? []).map((one) => adviceFrom(one, survey));
  const said = new Set(help.map(({ code }) => code));
  return [...help, ...survey.advice.filter(({ code }) => !said.has(code))];
}

function adviceFrom({ code, gain, time, points }: Help, { points: read }: PanelSurvey): Advice {
  const more = points === null ? null : points - read.length;
  const [word, text] = WORDS[code];
  return {
    ...remark(word, more === null ? text : morePoints(more, read.length), gain),
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
};

const morePoints = (more: number, read: number): string =>
  `read ${counted(more, 'more point')}${read === 1 ? ', one is no basis for machine work' : ''}`;

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
  const all = surveyed
    .flatMap(partsOf)
    .flatMap((part) => (helped.get(part) ?? []).map((help) => ({ ...help, id: part.panel.id })));
  const groups = [...groupBy(all, ({ code, points }) => `${code} ${points}`).values()]
    .filter((group) => group.some(({ gain }) => Math.abs(gain) >= LEAST_SHOWN))
    .map((group) => ({ group, gain: group.reduce((sum, { gain }) => sum + gain, 0) }))
    .sort((one, other) => other.gain - one.gain);
  const history = groups.some(({ group }) => group.some(({ code }) => code === 'history'));
  return [
    ...groups.map(({ group }) => carLine(group)),
    // What is to be asked once for the car is not to be said twice.
    ...withoutFigure(surveyed, helped, history ? ['history'] : []),
  ];
}

/** Less reads as nought. */
const LEAST_SHOWN = 0.05;

type Gain = Help & { readonly id: string };

function carLine(group: readonly Gain[]): Sentence {
  const most = group.reduce((far, one) => (Math.abs(one.gain) > Math.abs(far.gain) ? one : far));
  const panels = counted(new Set(group.map(({ id }) => id)).size, 'panel');
  const upTo = says`up to ${signed(most.gain)} a panel`;
  const { code, points } = most;
  const time = most.time === null ? '' : minutes(most.time);
  const lines: Readonly<Record<HelpCode, Sentence>> = {
    history: says`earlier work known, if there was none: ${upTo} (${panels})`,
    clear: says`the clear itself read: ${upTo} (${panels}, ${time} each)`,
    'test-spot': says`a test spot on this paint: ${upTo} (${panels}; ${time} in all)`,
    zinc: says`zinc under the paint, if there is any, lowers it: ${upTo} (${panels})`,
    points: says`${points ?? 0} points a panel: ${upTo} (${panels}, up to ${time} each)`,
  };
  return lines[code];
}

/** Advice by what to do, with the panels it is for. */
function withoutFigure(
  surveyed: readonly PanelSurvey[],
  helped: SurveyHelp,
  told: readonly string[],
): readonly Sentence[] {
  const read = surveyed.filter(({ points }) => points.length > 0);
  const pairs = read.flatMap((panel) =>
    adviceOf(panel, helped)
      .filter(({ code, value }) => value === undefined && !told.includes(code))
      .map(({ text }) => ({ text, name: panel.panel.name })),
  );
  return [...groupBy(pairs, ({ text }) => text)].map(([text, group]) =>
    group.length === read.length
      ? [text]
      : [`${text}: ${group.map(({ name }) => name).join(', ')}`],
  );
}

/** A change of the budget, with its sign. */
const signed = (gain: number, digits = 1): Sentence =>
  says`${gain < 0 ? '−' : '+'}${um(Math.abs(gain), digits)}`;

const minutes = (time: Minutes): string => `${shown(time, 0)} min`;
