/** What a survey comes to, in a few lines that stand before anything else on its page; each panel stands in one. */

import { groupBy } from '../../base/group-by.ts';
import { LEAST_TOLD, rangeShown } from '../../base/rounding.ts';
import { thicknessText, unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { LimitCode } from '../../film/limits/limit.ts';
import { type PanelSurvey, partsOf } from '../../film/survey.ts';
import { asksToReadAgain } from '../../tasks/survey/read-again.ts';
import type { SurveyHelp } from '../../tasks/survey/survey-help.ts';
import type { SurveyResult } from '../../tasks/survey/survey-vehicle.ts';
import { joined } from '../facts.ts';
import { type Block, paragraph } from '../model.ts';
import { partNames } from '../panel-list.ts';
import { coatName } from './coat-name.ts';
import { adviceOf } from './help-lines.ts';
import { filmReason } from './leave-reason.ts';
import { isOpen, settleFirst } from './settle-first.ts';
import { readAgainFirst } from './slip-lines.ts';
import { unreadLine } from './unread-lines.ts';

/** `surveyed` are the panels asked for, read or not. */
export function answerBlocks(
  surveyed: readonly PanelSurvey[],
  helped: SurveyHelp,
  result: Pick<SurveyResult, 'leftOut' | 'survey'>,
  unit: LengthUnit,
): readonly Block[] {
  const parts = surveyed
    .filter((survey) => survey.points.length > 0 && !asksToReadAgain(survey, result.leftOut))
    .flatMap(partsOf);
  const open = parts.filter(isOpen);
  const rest = parts.filter((part) => !isOpen(part));
  const worked = rest.filter(({ budget }) => budget >= LEAST_TOLD);
  const left = rest.filter(({ budget }) => budget < LEAST_TOLD);
  const ways = groupBy(left, (part) => wayOf(part, helped));
  return [
    ...readAgainFirst(surveyed, result, unit),
    paragraph(
      'May go',
      worked.length === 0 ? nothingMore(open) : mayGo(worked, surveyed, result, unit),
    ),
    ...WAYS.flatMap((way) => line(way, leftAlone(ways.get(way) ?? [], helped))),
    ...settleFirst(open, unit),
    ...unreadLine(surveyed, unit),
  ];
}

const line = (label: string, told: readonly string[]): readonly Block[] =>
  told.length === 0 ? [] : [paragraph(label, joined(told, ' · '))];

function nothingMore(open: readonly PanelSurvey[]): string {
  if (open.length === 0) return 'nothing';
  return open.some(({ budget }) => budget >= LEAST_TOLD)
    ? 'no more than stands under Settle first'
    : 'nothing till panels are settled';
}

/** Those of one reason together. */
function leftAlone(parts: readonly PanelSurvey[], helped: SurveyHelp): readonly string[] {
  const told = groupBy(parts, (part) => `(${filmReason(part)}${outlook(part, helped)})`);
  return [...told].map(([reason, group]) => `${partNames(group)} ${reason}`);
}

/** What is to be done first, or that nothing is of use. */
function outlook(part: PanelSurvey, helped: SurveyHelp): string {
  const advised = adviceOf(part, helped);
  if (advised.some(({ code, value = 0 }) => code === 'read-again' && value >= LEAST_TOLD)) {
    const names = [...part.lowPoints, ...part.highPoints];
    return `: read ${names.length === 1 ? 'point' : 'points'} ${names.join(', ')} again first`;
  }
  const first = advised.find(({ after }) => after !== undefined)?.after;
  if (first !== undefined) return `: no more than on ${first.name}, which is not settled`;
  if (isSpent(part)) {
    return ': as much as may go there at most is gone already, and no test spot frees more';
  }
  if (part.boundBy.code === 'sound-panels') {
    return ': no more than on the original panels, and no test spot frees more';
  }
  const clear = (helped.get(part) ?? []).find(({ otherwise }) => otherwise?.asPainted);
  if (clear !== undefined && (clear.otherwise?.gain ?? 0) >= LEAST_TOLD) {
    return `: by the ${coatName([part])} of other panels, read its own`;
  }
  return advised.some(({ code }) => code === 'beyond-help')
    ? ': nothing that could be learnt frees any film'
    : '';
}

/** Whether it waits for a test spot that could free nothing, as so much of it is gone. */
const isSpent = ({ boundBy, advice }: PanelSurvey): boolean =>
  boundBy.code === 'test-spot' && advice.some(({ code }) => code === 'beyond-help');

/** Whether anything can be done for panels from which nothing may go. */
const WAYS = ['Leave', 'Spot first', 'Not yet'] as const;

function wayOf(part: PanelSurvey, helped: SurveyHelp): (typeof WAYS)[number] {
  const advised = adviceOf(part, helped);
  if (part.boundBy.code === 'test-spot' && advised.some(({ code }) => code === 'test-spot')) {
    return 'Spot first';
  }
  const canPass =
    CAN_PASS.includes(part.boundBy.code) ||
    (helped.get(part) ?? []).some(({ otherwise }) => (otherwise?.gain ?? 0) >= LEAST_TOLD) ||
    advised.some(({ code, value = 0 }) => code === 'sound-panel-first' || value >= LEAST_TOLD);
  return canPass ? 'Not yet' : 'Leave';
}

/** Limits that something other than a gain in figures does away with. */
const CAN_PASS: readonly LimitCode[] = ['readings', 'covered', 'fresh-paint', 'spot-depth'];

/** From the least to the most, and from which panels. */
function mayGo(
  parts: readonly PanelSurvey[],
  surveyed: readonly PanelSurvey[],
  result: Pick<SurveyResult, 'survey'>,
  unit: LengthUnit,
): string {
  const budgets = parts.map(({ budget }) => budget);
  const range = rangeShown(budgets, (one) => thicknessText(one, unit, 2), ' to ');
  const each = parts.length === 1 ? '' : ' each';
  return `${range} ${unitName(unit)}${each}: ${ofAllRead(parts, surveyed, result)}`;
}

/** `all 13 panels read`, or `all 13 panels read but roof`: where no more than one name is out, which another line has. */
function ofAllRead(
  parts: readonly PanelSurvey[],
  surveyed: readonly PanelSurvey[],
  { survey }: Pick<SurveyResult, 'survey'>,
): string {
  const read = survey.panels.filter(({ points }) => points.length > 0);
  const isAsked = read.every((panel) => surveyed.includes(panel));
  const named = partNames(parts);
  if (!isAsked || read.length <= MOST_NAMED) return named;
  const others = read.flatMap(partsOf).filter((part) => !parts.includes(part));
  if (others.length === 0) return `all ${read.length} panels read`;
  const out = partNames(others);
  const counted = `all ${read.length} panels read but ${out}`;
  return !out.includes(',') && counted.length < named.length ? counted : named;
}

/** More are counted. */
const MOST_NAMED = 3;
