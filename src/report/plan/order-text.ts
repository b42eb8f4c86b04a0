/** In which order the panels of the work card are worked: as the days have them, and no panel that is kept off. */
import { shown } from '../../base/rounding.ts';
import type { PanelPlan } from '../../correction/plan/plan.ts';
import { STAGES } from '../../correction/removal/catalogue.ts';
import type { PlanResult } from '../../tasks/plan/plan-vehicle.ts';
import { jobHours } from '../../work/job-time.ts';
import { staged } from '../../work/polishing.ts';
import { polishingRank } from '../../work/polishing-order.ts';
import { joined } from '../facts.ts';
import type { Said } from '../model.ts';

/** As the plan lays the stages: all panels once with each of its steps, as a combination is set up once. */
export function orderText(worked: readonly PanelPlan[], { work }: PlanResult): Said {
  const whole = shown(jobHours(work.time, 0.5), 1);
  const boxes = { text: 'a box for each set', facts: [] };
  const times = [
    `Minutes are ${work.inHand} in hand, ${shown(work.machineMinutes, 0)} in all`,
    `with masking, wipes, pads, set-up and readings half of such corrections take ${whole}\u00a0h at most`,
  ];
  const spots = spotsText(worked);
  const [first = '', ...later] = roundsText(worked);
  const rounds = [...spots, spots.length === 0 ? first : `then ${first}`, ...later];
  return joined([joined([...rounds, boxes], '; ', '.'), joined(times, '; ')], ' ');
}

/** `spots at deep defects before the rest (front left door)`: the days have them so too. */
function spotsText(worked: readonly PanelPlan[]): readonly string[] {
  const parts = worked.filter(({ local }) => local.some(({ steps }) => steps.length > 0));
  return parts.length === 0 || worked.every(({ steps }) => steps.length === 0)
    ? []
    : [
        `spots at deep defects before the rest (${parts.map(({ survey }) => survey.panel.name).join(', ')})`,
      ];
}

function roundsText(worked: readonly PanelPlan[]): readonly string[] {
  const passed = worked.filter(({ steps }) => steps.length > 0);
  const stagesOn = passed.map(({ steps }) => staged(steps).map(({ stage }) => stage));
  const [first, ...later] = STAGES.filter((stage) => stagesOn.flat().includes(stage));
  const order = `as they stand below${heightsText(worked)}`;
  if (first === undefined || later.length === 0) return [order];
  const on = (stage: string, all: string): string =>
    `${stage} ${stagesOn.every((stages) => stages.some((one) => one === stage)) ? all : 'where that stands'}`;
  const rounds = later.map((stage) => `then ${on(stage, 'them all')}`);
  return [
    `${on(first, 'all panels')}, ${order}`,
    'wipe, look, re-read marked points cool',
    `${rounds.join(', ')} in the same order`,
  ];
}

const HEIGHTS = ['the roof', 'what lies flat', 'the sides', 'low parts'] as const;

/** `: the roof, the sides, low parts last`, of those that are worked. */
function heightsText(worked: readonly PanelPlan[]): string {
  const ranks = new Set(worked.map(({ survey }) => polishingRank(survey.panel)));
  const heights = HEIGHTS.filter((_, rank) => ranks.has(rank));
  return heights.length < 2 ? '' : ` (${heights.join(', ')} last)`;
}
