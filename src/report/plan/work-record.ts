/** The whole job for machines: hours, stages, days, materials. */
import type { WorkEstimate } from '../../work/estimate-work.ts';
import type { LearnedPace } from '../../work/history.ts';
import { type JobTime, jobTimeQuantile } from '../../work/job-time.ts';
import type { Material } from '../../work/materials.ts';
import { machine } from '../envelope.ts';
import type { MachineRecord } from '../model.ts';

/** Keys of a record that has a job in it. */
export const workRecord = (work: WorkEstimate, hours: LearnedPace | null): MachineRecord => ({
  scope: scopeRecord(work),
  job_time: timeRecord(work.job.time),
  stages: work.stages.map(({ stage, mean, variance, wait, materials }, i) => ({
    stage: stage.id,
    text: stage.text,
    part: stage.part,
    skill: stage.skill,
    mean_min: machine(mean),
    sd_min: machine(Math.sqrt(variance)),
    wait_min: machine(wait),
    spread_pct: machine(100 * (work.job.spread.stages[i] ?? 0)),
    materials: materials.map(materialRecord),
  })),
  time_spread: {
    stages_pct: machine(100 * work.job.spread.own),
    pace_pct: machine(100 * work.job.spread.pace),
    job_pct: machine(100 * work.job.spread.job),
  },
  days: work.days.map(({ day, stages, time, points, a8, actionPassed }) => ({
    day,
    hours_h: machine(time / 60),
    stages: stages.map((one) => ({
      stage: one.stage,
      clock_min: machine(one.time),
      panels: one.panels,
    })),
    points: points.map(machine),
    a8_m_per_s2: machine(a8),
    action_passed: actionPassed,
  })),
  days_p80: work.daysP80,
  job_materials: work.jobMaterials.map(materialRecord),
  pads: work.pads.map(({ id, material, ready, wornOut }) => ({
    id,
    material,
    ready,
    worn_out: machine(wornOut),
  })),
  towel_loads: work.towelLoads,
  history: hours === null ? null : historyRecord(hours),
});

export const timeRecord = (time: JobTime) => ({
  p50_h: machine(jobTimeQuantile(time, 0.5) / 60),
  p80_h: machine(jobTimeQuantile(time, 0.8) / 60),
  p95_h: machine(jobTimeQuantile(time, 0.95) / 60),
});

const materialRecord = ({ id, material, quantity, unit }: Material) => ({
  id,
  material,
  quantity: machine(quantity),
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
  hours_per_day: machine(scope.hoursPerDay),
});

const historyRecord = ({ jobs, factor, stages, error }: LearnedPace) => ({
  jobs,
  factor: {
    middle: machine(factor.middle),
    low: machine(factor.low),
    high: machine(factor.high),
  },
  stages: stages.map((one) => ({
    stage: one.stage,
    records: one.records,
    factor: machine(one.factor),
  })),
  error_before_pct: error === null ? null : machine(percentOff(error.before)),
  error_after_pct: error === null ? null : machine(percentOff(error.after)),
});

/** An ln-error as per cent of the estimate. */
export const percentOff = (logError: number): number => 100 * (Math.exp(logError) - 1);
