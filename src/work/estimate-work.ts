/** Plan and scope → the whole job: its stages in order with their hours and materials, and its days. */
import { groupBy } from '../base/group-by.ts';
import { sum } from '../base/sum.ts';
import { type Minutes, metres, minutes, type SquareMetres, squareMetres } from '../base/units.ts';
import { isWorked, type Plan, workedParts } from '../correction/plan/plan.ts';
import { daysNeeded, planDays, type WorkDay, type WorkPiece } from './day-plan.ts';
import { type JobScope, usualScope } from './job-scope.ts';
import {
  type JobTime,
  jobTime,
  jobTimeQuantile,
  type SpreadShares,
  spreadShares,
} from './job-time.ts';
import { type Material, type PadUse, padUses, TOWELS, totals } from './materials.ts';
import { type Pace, unknownPace } from './pace.ts';
import { type Polishing, polishingOf } from './polishing.ts';
import { orderedStages } from './stage-order.ts';
import { type StageWork, stageWorks } from './stage-work.ts';
import type { JobStage, WorkModel } from './work-model.ts';

export type WorkEstimate = {
  readonly scope: JobScope;
  /** Of the correction alone, one person's hands. */
  readonly time: JobTime;
  /** Likely minutes with the machine running, or the pad rubbing where it is by hand, all panels. */
  readonly machineMinutes: number;
  /** Held meanwhile. */
  readonly inHand: 'machine' | 'pad' | 'machine or pad';
  /** Likely minutes of polishing: machine, wiping, pad cleaning and set-up. */
  readonly polishingMinutes: number;
  /** Points of hand–arm vibration of the whole correction at its likely machine minutes; 100 a day is the action value, 400 the limit. */
  readonly vibrationPoints: number;
  /** What the correction uses up. */
  readonly materials: readonly Material[];
  readonly order: readonly JobStage[];

  /** The whole job, stage by stage. */
  readonly stages: readonly StageWork[];
  /** Of the whole job, one person's hands; and where its spread comes from, the stages in their order. */
  readonly job: { readonly time: JobTime; readonly spread: SpreadShares };
  /** What the middle of the job's time is of the mean of its stages: so long does each take in such a job. */
  readonly medianShare: number;
  /** What the whole job uses up. */
  readonly jobMaterials: readonly Material[];
  readonly pads: readonly PadUse[];
  /** Loads of towels to wash. */
  readonly towelLoads: number;
  /** At the middle of the job's time. */
  readonly days: readonly WorkDay[];
  /** Days if it takes as long as four in five such jobs at most. */
  readonly daysP80: number;
};

export type WorkTerms = {
  readonly scope: JobScope;
  /** Painted area of the whole vehicle, whatever of it is worked. */
  readonly vehicleArea: SquareMetres;
  readonly pace: Pace;
};

export function estimateWork(
  plan: Plan,
  model: WorkModel,
  terms: Partial<WorkTerms> = {},
): WorkEstimate {
  const { scope = usualScope, pace = unknownPace(model.paceLogSd) } = terms;
  const polishing = polishingOf(plan, model);
  const order = orderedStages(scope, model);
  const measures = measuresOf(plan, terms.vehicleArea);
  const stages = stageWorks(order, polishing, { measures, scope, pace, model });
  const jobMaterials = materialsOf(stages);
  const towels = jobMaterials.find(({ id }) => id === TOWELS)?.quantity ?? 0;
  const whole = jobTime(stages, model, pace);
  return {
    scope,
    ...correctionOf(stages, polishing, { model, pace }),
    order,
    stages,
    job: { time: whole, spread: spreadShares(stages, model, pace) },
    medianShare: shareOf(whole.median, stages),
    jobMaterials,
    pads: padUses(polishing, model),
    towelLoads: Math.ceil(towels / model.materials.towelsPerLoad),
    ...daysOf(stages, polishing, whole, { model, scope, pace }),
  };
}

const materialsOf = (stages: readonly StageWork[]): readonly Material[] =>
  totals(
    stages.flatMap(({ materials }) => materials),
    true,
  );

type PacedModel = { readonly model: WorkModel; readonly pace: Pace };

function correctionOf(
  stages: readonly StageWork[],
  polishing: readonly Polishing[],
  { model, pace }: PacedModel,
) {
  const correction = stages.filter(({ stage }) => stage.part === 'correction');
  return {
    time: jobTime(correction, model, pace),
    machineMinutes: sum(polishing.map(({ machineTime }) => machineTime)),
    inHand: inHandOf(polishing),
    polishingMinutes: sum(correction.map(({ polishingTime }) => polishingTime)),
    vibrationPoints: sum(polishing.map(({ points }) => points)),
    materials: materialsOf(correction),
  };
}

function inHandOf(polishing: readonly Polishing[]): WorkEstimate['inHand'] {
  const isByHand = ({ step }: Polishing): boolean =>
    step.combination.machine.motion.kind === 'hand';
  if (!polishing.some(isByHand)) return 'machine';
  return polishing.every(isByHand) ? 'pad' : 'machine or pad';
}

function daysOf(
  stages: readonly StageWork[],
  polishing: readonly Polishing[],
  whole: JobTime,
  { model, scope, pace }: PacedModel & Pick<WorkTerms, 'scope'>,
) {
  const { hands, hoursPerDay } = scope;
  const terms = { hands, hoursPerDay, vibration: model.vibration };
  const byStage = groupBy<string, Polishing>(polishing, ({ stage }) => stage);
  const piecesIn = (time: Minutes): readonly WorkPiece[] =>
    piecesOf(stages, byStage, shareOf(time, stages), pace);
  return {
    days: planDays(piecesIn(whole.median), terms),
    daysP80: daysNeeded(piecesIn(jobTimeQuantile(whole, 0.8)), terms),
  };
}

function measuresOf(plan: Plan, vehicleArea: SquareMetres | undefined) {
  const worked = workedParts(plan).filter(isWorked);
  const area = (panels: Plan['panels']): SquareMetres =>
    squareMetres(sum(panels.map(({ survey }) => survey.panel.area)));
  return {
    vehicleArea: vehicleArea ?? area(plan.panels),
    workedArea: area(worked),
    workedTrim: metres(sum(worked.map(({ survey }) => survey.panel.trimLength))),
  };
}

/** Where no stage takes any time, a minute divided by is none the less a minute. */
const LEAST = 1;

/** What a time of the whole job is of the mean of its stages. */
const shareOf = (time: Minutes, stages: readonly StageWork[]): number =>
  time / Math.max(sum(stages.map(({ mean }) => mean)), LEAST);

/**
 * The work of each stage, of polishing by panel and step, each so many times as long as its mean; the
 * machine runs longer by as much as the work does.
 */
function piecesOf(
  stages: readonly StageWork[],
  polishing: ReadonlyMap<string, readonly Polishing[]>,
  longer: number,
  pace: Pace,
): readonly WorkPiece[] {
  return stages.flatMap(({ stage, mean, likely: usual, wait }): readonly WorkPiece[] => {
    const { id, alone } = stage;
    const own = polishing.get(id) ?? [];
    if (own.length === 0) {
      return [{ stage: id, panel: null, time: minutes(mean * longer), alone, points: 0, wait }];
    }
    const likely = sum(own.map((one) => one.likely));
    const factor = Math.exp(pace.stages.get(id) ?? 0);
    return own.map((one, i) => ({
      stage: id,
      panel: one.panel.id,
      atMarks: one.atMark,
      time: minutes(((mean * one.likely) / likely) * longer),
      alone,
      points: one.points * longer * factor * (mean / usual),
      wait: i === own.length - 1 ? wait : minutes(0),
    }));
  });
}
