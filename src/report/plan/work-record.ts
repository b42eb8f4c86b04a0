/** The whole job for machines: hours, stages, days, materials. */
import type { WorkEstimate } from '../../work/estimate-work.ts';
import type { LearnedPace } from '../../work/history.ts';
import { type JobTime, jobHours } from '../../work/job-time.ts';
import type { Material } from '../../work/materials.ts';
import type { MachineRecord } from '../model.ts';
import { recorded } from '../recorded.ts';

/** Keys of a record that has a job in it. */
export const workRecord = (work: WorkEstimate, hours: LearnedPace | null): MachineRecord => ({
  scope: scopeRecord(work),
  job_time: timeRecord(work.job.time),
  stages: work.stages.map(({ stage, mean, variance, wait, materials }, i) => ({
    stage: stage.id,
    text: stage.text,
    part: stage.part,
    skill: stage.skill,
    mean_min: recorded(mean),
    p50_min: recorded(mean * work.medianShare),
    sd_min: recorded(Math.sqrt(variance)),
    wait_min: recorded(wait),
    spread_pct: recorded(100 * (work.job.spread.stages[i] ?? 0)),
    materials: materials.map(materialRecord),
  })),
  time_spread: {
    stages_pct: recorded(100 * work.job.spread.own),
    pace_pct: recorded(100 * work.job.spread.pace),
    job_pct: recorded(100 * work.job.spread.job),
  },
  days: work.days.map(({ day, stages, time, points, a8, actionPassed }) => ({
    day,
    hours_h: recorded(time / 60),
    stages: stages.map((one) => ({
      stage: one.stage,
      clock_min: recorded(one.time),
      panels: [...new Set([...one.atMarks, ...one.panels])],
    })),
    points: points.map(recorded),
    a8_m_per_s2: recorded(a8),
    action_passed: actionPassed,
  })),
  days_p80: work.daysP80,
  job_materials: work.jobMaterials.map(materialRecord),
  pads: work.pads.map(({ id, material, ready, wornOut }) => ({
    id,
    material,
    ready,
    worn_out: recorded(wornOut),
  })),
  towel_loads: work.towelLoads,
  history: hours === null ? null : historyRecord(hours),
});

export const timeRecord = (time: JobTime) => ({
  p50_h: recorded(jobHours(time, 0.5)),
  p80_h: recorded(jobHours(time, 0.8)),
  p95_h: recorded(jobHours(time, 0.95)),
});

export const materialRecord = ({ id, material, quantity, unit }: Material) => ({
  id,
  material,
  quantity: recorded(quantity),
  unit,
});

const scopeRecord = ({ scope }: WorkEstimate) => ({
  wheels: scope.wheels,
  shuts: scope.shuts,
  decontamination: scope.decontamination,
  trim: scope.trim,
  engine_bay: scope.engineBay,
  interior: scope.interior,
  glass: scope.glass,
  protection: scope.protection,
  arrival: scope.soiling,
  hands: scope.hands,
  hours_per_day: recorded(scope.hoursPerDay),
});

const historyRecord = ({ jobs, factor, stages, error }: LearnedPace) => ({
  jobs,
  factor: {
    middle: recorded(factor.middle),
    low: recorded(factor.low),
    high: recorded(factor.high),
  },
  stages: stages.map((one) => ({
    stage: one.stage,
    records: one.records,
    factor: recorded(one.factor),
  })),
  error_before_pct: error === null ? null : recorded(percentOff(error.before)),
  error_after_pct: error === null ? null : recorded(percentOff(error.after)),
});

/** An ln-error as per cent of the estimate. */
export const percentOff = (logError: number): number => 100 * (Math.exp(logError) - 1);
