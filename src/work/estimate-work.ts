/** Plan → hours and materials of the correction, vibration, and the order of the whole job. */
import { groupBy } from '../base/group-by.ts';
import { minutes } from '../base/units.ts';
import {
  isWorked,
  type PanelPlan,
  type Plan,
  type PlannedStep,
  workedParts,
} from '../correction/plan.ts';
import { type JobTime, jobTime } from './job-time.ts';
import type { JobStage, ThreePoint, WorkModel } from './work-model.ts';

export type Material = {
  readonly material: string;
  readonly quantity: number;
  readonly unit: string;
};

export type WorkEstimate = {
  readonly time: JobTime;
  /** Likely minutes with the machine running, all panels. */
  readonly machineMinutes: number;
  /** Likely minutes of polishing: machine, wiping, pad cleaning and set-up. */
  readonly polishingMinutes: number;
  /** Points of hand–arm vibration of the whole correction; 100 a day is the action value, 400 the limit. */
  readonly vibrationPoints: number;
  readonly materials: readonly Material[];
  readonly order: readonly JobStage[];
};

export function estimateWork(plan: Plan, model: WorkModel): WorkEstimate {
  const worked = workedParts(plan).filter(isWorked);
  const polishing = worked.flatMap((panel) =>
    panel.steps.map((step) => stepTime(panel, step, model)),
  );
  const setUps = combinationsOf(worked).map(() => model.setUp);
  const likely = [...polishing, ...setUps];
  const fixed = worked.length === 0 ? [] : model.stages.flatMap(({ time }) => time ?? []);
  const stages = [...likely.map((minute) => spreadTime(minute, model.polishing)), ...fixed];
  return {
    time: jobTime(stages, model),
    machineMinutes: sum(worked.flatMap(({ steps }) => steps.map((step) => step.machineTime))),
    polishingMinutes: sum(likely),
    vibrationPoints: vibrationPoints(worked, model.vibration),
    materials: materialsOf(worked, model),
    order: model.stages,
  };
}

const sum = (values: readonly number[]): number =>
  values.reduce((total, value) => total + value, 0);

const sectionsOf = ({ survey }: PanelPlan, { section }: WorkModel): number =>
  survey.panel.area / section;

/** Likely minutes of a step on a panel: machine time, then wipe, inspect and clean the pad per section and set. */
export function stepTime(panel: PanelPlan, step: PlannedStep, model: WorkModel): number {
  const { wipe, padCleaning } = model.perSection;
  return step.machineTime + step.sets * sectionsOf(panel, model) * (wipe + padCleaning);
}

const spreadTime = (likely: number, { least, most }: WorkModel['polishing']): ThreePoint => ({
  least: minutes(likely * least),
  likely: minutes(likely),
  most: minutes(likely * most),
});

const combinationsOf = (worked: readonly PanelPlan[]): readonly string[] => [
  ...new Set(worked.flatMap(({ steps }) => steps.map(({ combination }) => combination.id))),
];

/** HSE points: 2a² per hour, adding up (2002/44/EC). */
function vibrationPoints(worked: readonly PanelPlan[], vibration: WorkModel['vibration']): number {
  return sum(
    worked.flatMap(({ steps }) =>
      steps.map(({ combination, machineTime }) => {
        const { motion, vibration: own } = combination.machine;
        const magnitude = own ?? (motion.kind === 'hand' ? 0 : vibration[motion.kind]);
        return (2 * magnitude ** 2 * machineTime) / 60;
      }),
    ),
  );
}

/** What the correction uses up; whole things are rounded up, liquids are not. */
function materialsOf(worked: readonly PanelPlan[], model: WorkModel): readonly Material[] {
  if (worked.length === 0) return [];
  const { materials } = model;
  const uses = worked.flatMap((panel) => panel.steps.map((step) => ({ panel, step })));
  const padsOf = (group: readonly unknown[]): number =>
    Math.ceil(group.length / materials.panelsPerPad);
  const byCombination = [...groupBy(uses, ({ step }) => step.combination.id).values()];
  const products = groupBy(byCombination, ([first]) => first?.step.combination.product.name ?? '');
  const pads = groupBy(byCombination, ([first]) => padName(first?.step));
  const setSections = sum(uses.map(({ panel, step }) => step.sets * sectionsOf(panel, model)));
  return [
    ...[...products].map(([material, groups]) => ({
      material,
      quantity: sum(
        groups.map(
          (group) =>
            padsOf(group) * materials.productFirstLoad +
            sum(
              group.map(
                ({ panel, step }) => step.sets * panel.survey.panel.area * materials.productPerSet,
              ),
            ),
        ),
      ),
      unit: 'ml',
    })),
    ...[...pads].map(([material, groups]) => ({
      material,
      quantity: sum(groups.map(padsOf)),
      unit: 'pieces',
    })),
    {
      material: 'towels',
      quantity: Math.ceil(setSections / materials.sectionsPerTowel),
      unit: 'pieces',
    },
    {
      material: 'masking tape',
      quantity: sum(worked.map(({ survey }) => survey.panel.trimLength)),
      unit: 'm',
    },
    {
      material: 'panel wipe',
      quantity: sum(worked.map(({ survey }) => survey.panel.area)) * materials.panelWipe,
      unit: 'ml',
    },
  ];
}

const padName = (step: PlannedStep | undefined): string =>
  step === undefined
    ? ''
    : `${step.combination.pad.name} pad ${step.combination.machine.padDiameter}\u00a0mm`;
