/** A plan's steps as work: each step on each panel with its minutes, its sections and its vibration. */
import { type Minutes, minutes, type SquareMetres } from '../base/units.ts';
import {
  type PanelPlan,
  type Plan,
  type PlannedStep,
  workedParts,
} from '../correction/plan/plan.ts';
import { type Machine, STAGES, type Stage } from '../correction/removal/catalogue.ts';
import { stagesOf } from '../correction/removal/combination.ts';
import type { Panel } from '../film/template/template.ts';
import { inPolishingOrder } from './polishing-order.ts';
import type { WorkModel } from './work-model.ts';

export type Polishing = {
  readonly panel: Panel;
  readonly step: PlannedStep;
  readonly stage: Stage;
  /** At a deep mark, and not over the whole panel. */
  readonly atMark: boolean;
  /** Gone over in one set. */
  readonly area: SquareMetres;
  /** With the machine running. */
  readonly machineTime: Minutes;
  /** Likely minutes with wiping, inspecting and cleaning the pad. */
  readonly likely: Minutes;
  /** Sections worked, each counted once a set. */
  readonly sections: number;
  /** Exposure points of hand–arm vibration. */
  readonly points: number;
};

/**
 * Every step on every worked panel or zone, in the order in which panels are polished; spots at deep
 * defects first, as the panel's own steps pass over them afterwards.
 */
export const polishingOf = (plan: Pick<Plan, 'panels'>, model: WorkModel): readonly Polishing[] => [
  ...inPolishingOrder(plan.panels.filter(({ local }) => local.length > 0)).flatMap((panel) =>
    spotsOf(panel, model),
  ),
  ...inPolishingOrder(workedParts(plan).filter(({ steps }) => steps.length > 0)).flatMap((part) =>
    stepsOf(part, model),
  ),
];

const stepsOf = ({ steps, survey: { panel } }: PanelPlan, model: WorkModel): readonly Polishing[] =>
  staged(steps).map(({ step, stage }) => {
    const sections = (step.sets * panel.area) / model.section;
    return polishing(panel, step, { stage, atMark: false, area: panel.area, sections }, model);
  });

/** A spot is wiped, and its pad cleaned, once a set as a section is. */
const spotsOf = ({ local, survey: { panel } }: PanelPlan, model: WorkModel): readonly Polishing[] =>
  local.flatMap(({ steps }) =>
    steps.map((step) => polishing(panel, step, spotWork(step, model), model)),
  );

const spotWork = ({ sets }: PlannedStep, { localSection }: WorkModel) =>
  ({ stage: 'cut', atMark: true, area: localSection, sections: sets }) as const;

const polishing = (
  panel: Panel,
  step: PlannedStep,
  work: Pick<Polishing, 'stage' | 'atMark' | 'area' | 'sections'>,
  model: WorkModel,
): Polishing => ({
  panel,
  step,
  ...work,
  machineTime: step.machineTime,
  likely: minutes(
    step.machineTime + work.sections * (model.perSection.wipe + model.perSection.padCleaning),
  ),
  points: pointsOf(step.combination.machine, step.machineTime, model.vibration),
});

/**
 * Each step of a sequence with the stage that it stands for: the earliest that its pad and product are
 * for and that comes after the step before; the finish, where there is none.
 */
export function staged(
  steps: readonly PlannedStep[],
): readonly { readonly step: PlannedStep; readonly stage: Stage }[] {
  let left: readonly Stage[] = STAGES;
  return steps.map((step) => {
    const own = stagesOf(step.combination);
    const stage = left.find((one) => own.includes(one)) ?? 'finish';
    left = left.slice(left.indexOf(stage) + 1);
    return { step, stage };
  });
}

/** Points of hand–arm vibration: 2a² an hour, adding up (HSE, after 2002/44/EC). */
export function pointsOf(
  { motion, vibration: own }: Pick<Machine, 'motion' | 'vibration'>,
  time: Minutes,
  { rotary, orbital }: WorkModel['vibration'],
): number {
  const byMotion = { rotary, orbital, hand: 0 };
  return (2 * (own ?? byMotion[motion.kind]) ** 2 * time) / 60;
}
