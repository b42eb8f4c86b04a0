/** What of a job's hours and materials is charged: whole minutes by skill, quantities as they are shown. */
import { groupBy } from '../base/group-by.ts';
import { normalCdf } from '../base/stats/normal.ts';
import { type Minutes, minutes } from '../base/units.ts';
import { apportioned } from './apportion.ts';
import type { WorkEstimate } from './estimate-work.ts';
import { type JobTime, jobTimeQuantile } from './job-time.ts';
import type { Material } from './materials.ts';
import type { Chargeable, Labour, Thousandths, UsedMaterial } from './price-job.ts';
import { neededMaterials } from './to-buy.ts';

/** The whole minutes within which a share of such jobs, 0–1, are done. */
export const chargedTime = (time: JobTime, share: number): Minutes =>
  minutes(Math.round(jobTimeQuantile(time, share)));

/** Chance that the job takes longer than this. */
export function overrunChance({ median, logSd }: JobTime, charged: Minutes): number {
  if (charged === 0) return 1;
  const ratio = Math.log(charged / median);
  return logSd === 0 ? Number(ratio < 0) : 1 - normalCdf(ratio / logSd);
}

export const chargeable = (work: WorkEstimate, charged: Minutes): Chargeable => ({
  labour: labourOf(work, charged),
  materials: usedMaterials(work),
});

/** Weights in thousandths of a minute: finer than anybody takes the time. */
const FINE = 1000;

/** The charged minutes over the skills, in proportion to the mean time of their stages. */
function labourOf({ stages }: WorkEstimate, charged: Minutes): readonly Labour[] {
  const bySkill = [...groupBy(stages, ({ stage }) => stage.skill)].map(([skill, group]) => ({
    skill,
    mean: group.reduce((sum, { mean }) => sum + mean, 0),
  }));
  const weightOf = ({ mean }: (typeof bySkill)[number]): bigint => BigInt(Math.round(FINE * mean));
  if (bySkill.every((one) => weightOf(one) === 0n)) return [];
  return apportioned(BigInt(charged), bySkill, weightOf).map(({ of, amount }) => ({
    skill: of.skill,
    minutes: amount,
  }));
}

/**
 * What is gone of each material after the job, shares of a piece too: pads by what is worn of them, and nothing of
 * towels, which are washed. What lies ready and serves the next job as well is not charged to this one.
 */
export const usedMaterials = (work: WorkEstimate): readonly UsedMaterial[] =>
  neededMaterials(work, [])
    .map(({ id, material, unit, usedUp }) => ({
      ...{ id, name: material, unit },
      quantity: inThousandths(usedUp, unit),
    }))
    .filter(({ quantity }) => quantity > 0n);

/** Whole millilitres and metres, hundredths of a piece. */
const inThousandths = (quantity: number, unit: Material['unit']): Thousandths =>
  unit === 'pieces'
    ? 10n * BigInt(Math.round(100 * quantity))
    : 1000n * BigInt(Math.round(quantity));
