/** What a plan comes to, in three lines that stand before anything else on its page. */

import { counted } from '../../base/counted.ts';
import { rangeShown, shown } from '../../base/rounding.ts';
import { thicknessText, unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import { isTouched, isWorked, type PanelPlan, workedParts } from '../../correction/plan/plan.ts';
import type { CorrectionModel } from '../../correction/removal/catalogue.ts';
import { isZone, type PanelSurvey, partName } from '../../film/survey.ts';
import type { PlanResult } from '../../tasks/plan/plan-vehicle.ts';
import { jobHours } from '../../work/job-time.ts';
import { joined } from '../facts.ts';
import { type Block, paragraph, type Said } from '../model.ts';
import { hasWarning } from '../survey/note-blocks.ts';
import { isOpen, settleFirst } from '../survey/settle-first.ts';
import { readAgainFirst } from '../survey/slip-lines.ts';
import { unreadLine } from '../survey/unread-lines.ts';
import { NOTHING_TO_CORRECT, withReasons } from './keep-off.ts';
import { nothingWorked } from './nothing-worked.ts';
import { isToReadAgain } from './read-again-ticks.ts';
import { readMoreFirst } from './read-more-first.ts';

export function answerBlocks(
  result: PlanResult,
  plans: readonly PanelPlan[],
  unit: LengthUnit,
): readonly Block[] {
  const parts = workedParts({ panels: plans });
  const left = plans.flatMap(leftOf);
  const spotFirst = left.filter(isFreedBySpot);
  const open = openOf(parts, plans);
  // What stands under Settle first is told there why it is left.
  const others = left.filter((part) => !isFreedBySpot(part) && !open.includes(part.survey));
  return [
    ...readAgainFirst(
      plans.map(({ survey }) => survey),
      result,
      unit,
    ),
    paragraph('Work', workText(parts, plans, unit, result)),
    ...readMoreFirst(parts.filter((part) => !isToReadAgain(part, result))),
    ...leftLine('Leave', others),
    ...leftLine('Spot first', spotFirst),
    ...settleFirst(open, unit),
    ...unreadLine(
      plans.map(({ survey }) => survey),
      unit,
    ),
  ];
}

/** Of the parts worked, and of those left for nothing else, those that a reading or a word would settle. */
export const openOf = (
  worked: readonly PanelPlan[],
  plans: readonly PanelPlan[],
): readonly PanelSurvey[] =>
  [...worked.filter(isTouched), ...plans.flatMap(leftOf).filter(isLeftUnsettled)].flatMap(
    ({ survey }) => (isOpen(survey) ? [survey] : []),
  );

const isLeftUnsettled = ({ survey, verdict, reasons }: PanelPlan): boolean =>
  survey.boundBy.code === 'near-line' &&
  verdict === 'leave' &&
  !reasons.some(({ code }) => code === NOTHING_TO_CORRECT);

/** A panel, or each zone of it, on which nothing is done. */
function leftOf(plan: PanelPlan): readonly PanelPlan[] {
  if (plan.zones.length === 0 || isTouched({ ...plan, steps: [], zones: [] })) {
    return plan.survey.points.length > 0 && !isTouched(plan) ? [plan] : [];
  }
  return plan.zones.filter((zone) => !isTouched(zone));
}

/** What a test spot of its own is to free. */
const isFreedBySpot = ({ survey: { boundBy, advice } }: PanelPlan): boolean =>
  boundBy.code === 'test-spot' && advice.some(({ code }) => code === 'test-spot');

const leftLine = (label: string, parts: readonly PanelPlan[]): readonly Block[] =>
  parts.length === 0 ? [] : [paragraph(label, joined(withReasons(parts), ' · '))];

function workText(
  parts: readonly PanelPlan[],
  plans: readonly PanelPlan[],
  unit: LengthUnit,
  result: PlanResult,
): Said {
  const { survey, settings, work } = result;
  const { job, days } = work;
  const isAsked = (part: PanelPlan): boolean => isToReadAgain(part, result);
  const [asked, sure] = [parts.filter(isAsked), parts.filter((part) => !isAsked(part))];
  const waysOf = (some: readonly PanelPlan[]): readonly string[] =>
    waysIn(settings.correction.correction).flatMap(([way, isSo]) => {
      const of = some.filter((part) => isWorked(part) && isSo(part));
      return of.length === 0 ? [] : [`${namesOf(of)}${way}: ${taken(of, unit)}`];
    });
  const told = [
    ...waysOf(sure),
    ...spotsOnly(plans),
    ...waysOf(asked).map((text) => `once read again, ${text}`),
  ];
  if (told.length === 0) return nothingWorked(plans.flatMap(leftOf));
  const hours = shown(jobHours(job.time, 0.5), 1);
  const first = hasWarning(survey) ? ['only once that is settled'] : [];
  return joined(
    [...first, ...told, `the whole job ${hours} h, ${counted(days.length, 'day')}`],
    '; ',
  );
}

type Way = readonly [way: string, isSo: (part: PanelPlan) => boolean];

/** By hand an aim may be reached or not; a machine's verdict says so itself. */
function waysIn({ choice: { equalShortfall } }: CorrectionModel['correction']): readonly Way[] {
  const isShort = ({ aimed, expected }: PanelPlan): boolean => expected < aimed - equalShortfall;
  const byHand = (short: boolean) => (part: PanelPlan) =>
    part.verdict === 'hand' && isShort(part) === short;
  return [
    ['', ({ verdict }) => verdict === 'polish'],
    [' short of the aim', ({ verdict }) => verdict === 'lighter'],
    [' by hand', byHand(false)],
    [' by hand, short of the aim', byHand(true)],
  ];
}

/** A few are named, more are counted, but for zones: half of a panel is no panel. */
function namesOf(parts: readonly PanelPlan[]): string {
  const names = (some: readonly PanelPlan[]): readonly string[] =>
    some.map(({ survey }) => partName(survey));
  if (parts.length <= FEW) return names(parts).join(', ');
  const whole = parts.filter(({ survey }) => !isZone(survey));
  const zones = names(parts.filter(({ survey }) => isZone(survey)));
  return [...(whole.length === 0 ? [] : [counted(whole.length, 'panel')]), ...zones].join(', ');
}

const FEW = 3;

/** What comes off in the middle, of one or from the least to the most. */
function taken(parts: readonly PanelPlan[], unit: LengthUnit): string {
  const medians = parts.map(({ removal }) => removal.median);
  const range = rangeShown(medians, (one) => thicknessText(one, unit), ' to ');
  const each = parts.length === 1 ? '' : ' each';
  return `${range} ${unitName(unit)}${each}`;
}

function spotsOnly(plans: readonly PanelPlan[]): readonly string[] {
  const spots = plans.filter((plan) => isTouched(plan) && !isWorked(plan));
  return spots.length === 0 ? [] : [`spots only: ${namesOf(spots)}`];
}
