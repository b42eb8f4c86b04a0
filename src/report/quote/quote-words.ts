/** Sentences and figures that the page for the shop and the one for the customer share. */

import { groupBy } from '../../base/group-by.ts';
import { shown } from '../../base/rounding.ts';
import { thicknessText, unitName } from '../../base/sentence.ts';
import { inLengthUnit, type LengthUnit } from '../../base/units.ts';
import type { PanelPlan } from '../../correction/plan/plan.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import type { QuoteResult } from '../../tasks/quote/quote-vehicle.ts';
import type { Exclusion, ExclusionCode } from '../../work/exclusions.ts';
import { jobHours } from '../../work/job-time.ts';
import type { QuoteAim, QuoteOption } from '../../work/quote-option.ts';
import type { Block, Curve } from '../model.ts';
import { namesAnd } from '../words.ts';

export const percentText = (share: number, digits = 0): string => shown(100 * share, digits);

/** As the tables have it: what they show as one is not told apart. */
export const shownPercent = (share: number): number => Number(percentText(share));

/** `A enhance`: the sign of its point on the curve before its name. */
export const aimTitle = ({ name }: QuoteAim, index: number): string =>
  `${aimSign(index)}\u00a0${name}`;

export const aimSign = (index: number): string => String.fromCharCode(65 + index);

const hoursText = ({ work }: QuoteOption, p: number): string =>
  shown(jobHours(work.job.time, p), 1);

/** From the middle to what four in five such jobs keep within. */
export const hoursRange = (option: QuoteOption): string =>
  option.charged === null ? '–' : `${hoursText(option, 0.5)}–${hoursText(option, 0.8)}`;

export const daysText = ({ work, charged }: QuoteOption): string => {
  if (charged === null) return '–';
  const middle = work.days.length;
  return middle === work.daysP80 ? String(middle) : `${middle}–${work.daysP80}`;
};

export const filmText = (value: number | null, unit: LengthUnit, digits = 1): string =>
  value === null ? '–' : thicknessText(value, unit, digits);

const SHORT_WORDS: Readonly<Record<ExclusionCode, string>> = {
  'not-measured': 'not measured',
  'under-film': 'under film or wrap',
  'clear-failed': 'clear failed',
  'matte-paint': 'matte',
  'risk-unknown': 'risk not known',
  'colour-came': 'colour on the pad, left as found',
  'finish-doubted': 'finish in doubt, left as found',
  'clear-shown': 'no colour on the pad against the stated finish',
  'filler-found': 'filler',
  'painted-again': 'painted again',
  'thin-paint': 'thin',
  'worked-before': 'thinner, as if worked before',
  'edges-apart': 'edges read apart, left as they are',
  'deep-marks': 'deep marks',
  'not-by-polishing': 'faults not for polishing',
  'left-alone': 'left as found',
  'left-at-aim': 'left as found',
  'history-unknown': 'earlier work unknown',
  'no-trial-yet': 'no test spot yet',
};

/** For the shop, which knows what is meant, and finds the reasons with each aim. */
export const shortExclusions = (exclusions: readonly Exclusion[]): readonly string[] =>
  [...groupBy(exclusions, shortWords)].map(([what, group]) => {
    const panels = group.flatMap((one) => one.panels);
    return panels.length === 0 ? what : `${what}: ${panels.join(', ')}`;
  });

const shortWords = ({ code, aims = [] }: Exclusion): string =>
  aims.length === 0 ? SHORT_WORDS[code] : `${SHORT_WORDS[code]} at ${namesAnd(aims)}`;

/** `bonnet, roof and 3 more` is of no use to whoever signs: every panel is named. */
export const exclusionText = ({ text, panels }: Exclusion): string =>
  panels.length === 0 ? text : `${panels.join(', ')}: ${text}`;

/** For the aims that are not had everywhere, where and how far: in full, or as it differs from the aim before. */
export function shortTexts(
  options: readonly QuoteOption[],
  nameOf: (part: PanelSurvey) => string,
): readonly string[] {
  const all = options
    .filter(({ short }) => short.length > 0)
    .map(({ aim, short }) => ({
      aim: aim.name,
      reaches: new Map(short.map((part) => [nameOf(part.survey), reachText(part)])),
    }));
  const alike = [...groupBy(all, ({ reaches }) => reachesText(reaches)).values()];
  return alike.map(([first, ...others], i) => {
    const before = alike[i - 1]?.[0];
    const aims = namesAnd([first, ...others].map(({ aim }) => aim));
    const text =
      before === undefined ? reachesText(first.reaches) : againstTold(first.reaches, before);
    return `${aims}: ${text}`;
  });
}

/** What each part gets that falls short of the aim, by its name. */
type Reaches = ReadonlyMap<string, string>;
type Told = { readonly aim: string; readonly reaches: Reaches };

/** `as enhance, but nothing on roof`: only where each part that is not named again is as it was. */
function againstTold(reaches: Reaches, before: Told): string {
  const isAsBefore = ([name, reach]: readonly [string, string]): boolean =>
    before.reaches.get(name) === reach;
  const isShortNoMore = [...before.reaches.keys()].some((name) => !reaches.has(name));
  if (isShortNoMore || ![...reaches].some(isAsBefore)) return reachesText(reaches);
  const news = new Map([...reaches].filter((one) => !isAsBefore(one)));
  const isSaidOtherwise = [...news.keys()].some((name) => before.reaches.has(name));
  return `as ${before.aim}, ${isSaidOtherwise ? 'but' : 'and'} ${reachesText(news)}`;
}

const reachesText = (reaches: Reaches): string =>
  [...groupBy(reaches, ([, reach]) => reach)]
    .map(([reach, parts]) => `${reach} on ${namesAnd(parts.map(([name]) => name))}`)
    .join(', ');

/** Then there is nothing to choose from, and nothing to pay for. */
export const isNothingWorked = (options: readonly QuoteOption[]): boolean =>
  options.every(({ charged }) => charged === null);

/** Without a price nothing is offered, and nothing holds until a day. */
export const isPriced = (options: readonly QuoteOption[]): boolean =>
  options.some(({ priced }) => priced !== null);

/** Nothing is worked because nothing wants it, and not because the paint allows nothing. */
export const areWithoutMarks = (options: readonly QuoteOption[]): boolean =>
  options.every(({ spent }) => spent === null);

/** Row by row, the name of an earlier one that gets and costs the same; undefined where there is none. */
export const sameAs = (
  options: readonly QuoteOption[],
  option: QuoteOption,
): QuoteOption | undefined =>
  options
    .slice(0, options.indexOf(option))
    .find(
      (before) =>
        before.spent !== null &&
        shownOutcome(before) === shownOutcome(option) &&
        before.priced?.total === option.priced?.total,
    );

/** What both pages print of it. */
const shownOutcome = (option: QuoteOption): string =>
  [
    percentText(option.expected),
    filmText(option.spent, 'um', 2),
    filmText(option.left, 'um'),
    hoursRange(option),
    daysText(option),
  ].join(' ');

const reachText = ({ expected }: PanelPlan): string =>
  expected === 0 ? 'nothing' : `${percentText(expected)}\u00a0%`;

/** Correction against film; none where no aim takes any. */
export function curveBlocks(
  { options, curve }: QuoteResult,
  label: string,
  titles: { readonly across: string; readonly up: string },
  unit: LengthUnit,
): readonly Block[] {
  const all = [...curve, ...options].flatMap((option) => pointOf(option, unit) ?? []);
  const most = Math.max(0, ...all.map(({ x }) => x));
  if (most === 0) return [];
  const least = Math.min(...all.map(({ y }) => y));
  const drawn: Curve = {
    across: { title: titles.across, unit: unitName(unit), from: 0, to: roundUp(most) },
    up: { title: titles.up, unit: '%', from: Math.min(80, 10 * Math.floor(least / 10)), to: 100 },
    line: [...curve, ...options]
      .flatMap((option) => pointOf(option, unit) ?? [])
      .sort((a, b) => a.x - b.x || a.y - b.y)
      .filter((point, i, all) => point.x !== all[i - 1]?.x || point.y !== all[i - 1]?.y),
    marks: options.flatMap((option, i) => {
      const point = pointOf(option, unit);
      return point === undefined || sameAs(options, option) !== undefined
        ? []
        : [{ ...point, sign: aimSign(i), name: option.aim.name }];
    }),
  };
  return [{ kind: 'curve', label, curve: drawn }];
}

const pointOf = ({ spent, expected }: Pick<QuoteOption, 'spent' | 'expected'>, unit: LengthUnit) =>
  spent === null || spent === 0 ? undefined : { x: inLengthUnit(spent, unit), y: 100 * expected };

/** The next of 1, 2, 4, 5, 6, 8, 10 and their tens: ends that four parts divide well. */
function roundUp(value: number): number {
  const power = 10 ** Math.floor(Math.log10(value));
  const step = [1, 2, 4, 5, 6, 8, 10].find((one) => one * power >= value) ?? 10;
  return Number((step * power).toPrecision(6));
}
