/** What a plan comes to, in three lines that stand before anything else on its page. */

import { counted } from '../../base/counted.ts';
import { rangeShown, shown } from '../../base/rounding.ts';
import { thicknessText, unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import {
  isTouched,
  isWorked,
  type PanelPlan,
  type Verdict,
  workedParts,
} from '../../correction/plan/plan.ts';
import { partName } from '../../film/survey.ts';
import type { PlanResult } from '../../tasks/plan/plan-vehicle.ts';
import { jobHours } from '../../work/job-time.ts';
import { joined } from '../facts.ts';
import { type Block, paragraph, type Said } from '../model.ts';
import { readAgainFirst } from '../survey/slip-lines.ts';
import { unreadLine } from '../survey/unread-lines.ts';
import { withReasons } from './keep-off.ts';

export function answerBlocks(
  result: PlanResult,
  plans: readonly PanelPlan[],
  unit: LengthUnit,
): readonly Block[] {
  const parts = workedParts({ panels: plans });
  const left = plans.filter((plan) => plan.survey.points.length > 0 && !isTouched(plan));
  return [
    ...readAgainFirst(
      plans.map(({ survey }) => survey),
      result,
      unit,
    ),
    paragraph('Work', workText(parts, plans, unit, result.work)),
    ...(left.length === 0 ? [] : [paragraph('Leave', joined(withReasons(left), ' · '))]),
    ...unreadLine(
      plans.map(({ survey }) => survey),
      unit,
    ),
  ];
}

function workText(
  parts: readonly PanelPlan[],
  plans: readonly PanelPlan[],
  unit: LengthUnit,
  { job, days }: PlanResult['work'],
): Said {
  const told = [
    ...WAYS.flatMap(([verdict, way]) => {
      const of = parts.filter((part) => isWorked(part) && part.verdict === verdict);
      return of.length === 0 ? [] : [`${namesOf(of)}${way}: ${taken(of, unit)}`];
    }),
    ...spotsOnly(plans),
  ];
  if (told.length === 0) return 'nothing to polish';
  const hours = shown(jobHours(job.time, 0.5), 1);
  return joined([...told, `the whole job ${hours} h, ${counted(days.length, 'day')}`], '; ');
}

const WAYS: readonly (readonly [Verdict, string])[] = [
  ['polish', ''],
  ['lighter', ' lighter than asked'],
  ['hand', ' by hand'],
];

/** A few are named, more are counted. */
const namesOf = (parts: readonly PanelPlan[]): string =>
  parts.length <= FEW
    ? parts.map(({ survey }) => partName(survey)).join(', ')
    : counted(parts.length, 'panel');

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
