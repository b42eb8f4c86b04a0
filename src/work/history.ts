/**
 * A shop's own hours → its pace. What a job took over its estimate is lognormal about the shop's pace;
 * the pace, and what a stage takes beyond it, are updated as conjugate normals on the logarithm.
 */

import { groupBy } from '../base/group-by.ts';
import { type NormalKnowledge, updatedNormal } from '../base/stats/conjugate-normal.ts';
import { normalQuantile } from '../base/stats/normal.ts';
import { rootMeanSquare } from '../base/stats/summary.ts';
import type { Pace } from './pace.ts';
import type { WorkModel } from './work-model.ts';

export type HoursRecord = {
  readonly job: string;
  /** Null for a whole job. */
  readonly stage: string | null;
  /** Minutes. */
  readonly estimated: number;
  readonly actual: number;
};

export type StageFactor = {
  readonly stage: string;
  readonly records: number;
  /** Time over the estimate beyond the shop's pace. */
  readonly factor: number;
};

export type LearnedPace = {
  readonly pace: Pace;
  readonly jobs: number;
  /** What jobs take over their estimates, with its 90 % range. */
  readonly factor: { readonly middle: number; readonly low: number; readonly high: number };
  readonly stages: readonly StageFactor[];
  /**
   * Root mean square of ln(actual/estimated): as estimated, and with the pace learned from all the other
   * jobs. Null with fewer than two jobs.
   */
  readonly error: { readonly before: number; readonly after: number } | null;
};

export function learnPace(records: readonly HoursRecord[], model: WorkModel): LearnedPace {
  const jobs = [...groupBy(records, ({ job }) => job).values()].map(jobLog);
  const overall = overallPace(jobs, model);
  const stages = stageFactors(records, overall, model);
  const at = (p: number): number => Math.exp(overall.mean + normalQuantile(p) * overall.sd);
  return {
    pace: {
      overall,
      stages: new Map(stages.map(({ stage, factor }) => [stage, Math.log(factor)])),
    },
    jobs: jobs.length,
    factor: { middle: at(0.5), low: at(0.05), high: at(0.95) },
    stages,
    error: predictionError(jobs, model),
  };
}

/** ln of a job's time over its estimate: of its total where that is recorded, else of its stages together. */
function jobLog(records: readonly HoursRecord[]): number {
  const whole = records.filter(({ stage }) => stage === null);
  return logRatio(whole.length > 0 ? whole : records);
}

const logRatio = (records: readonly HoursRecord[]): number => {
  const total = (of: (record: HoursRecord) => number): number =>
    records.reduce((sum, record) => sum + of(record), 0);
  return Math.log(total(({ actual }) => actual) / total(({ estimated }) => estimated));
};

const overallPace = (
  jobs: readonly number[],
  { paceLogSd, jobLogSd }: Pick<WorkModel, 'paceLogSd' | 'jobLogSd'>,
): NormalKnowledge =>
  updatedNormal(
    { mean: 0, sd: paceLogSd },
    jobs.map((value) => ({ value, sd: jobLogSd })),
  );

/** Of stages with records enough; each job's rows of a stage are one record. */
function stageFactors(
  records: readonly HoursRecord[],
  overall: NormalKnowledge,
  { history, jobLogSd }: Pick<WorkModel, 'history' | 'jobLogSd'>,
): readonly StageFactor[] {
  const { stageLogSd, stageNoiseLogSd, leastRecords } = history;
  const ofStages = records.flatMap(({ stage, ...row }) =>
    stage === null ? [] : [{ ...row, stage }],
  );
  return [...groupBy(ofStages, ({ stage }) => stage)].flatMap(([stage, rows]) => {
    const jobs = [...groupBy(rows, ({ job }) => job).values()];
    if (jobs.length < leastRecords) return [];
    const { mean } = updatedNormal(
      { mean: 0, sd: stageLogSd },
      jobs.map((own) => ({
        value: logRatio(own) - overall.mean,
        sd: Math.hypot(jobLogSd, stageNoiseLogSd),
      })),
    );
    return [{ stage, records: jobs.length, factor: Math.exp(mean) }];
  });
}

/** How far off the estimates were, and how far off they would have been by the other jobs' pace. */
function predictionError(jobs: readonly number[], model: WorkModel): LearnedPace['error'] {
  if (jobs.length < 2) return null;
  const after = jobs.map((one, i) => {
    const others = jobs.filter((_, other) => other !== i);
    return one - overallPace(others, model).mean;
  });
  return { before: rootMeanSquare(jobs), after: rootMeanSquare(after) };
}
