import { describe, expect, it } from 'vitest';
import { squareMetres } from '../../src/base/units.ts';
import { workModel } from '../../src/formats/models.ts';
import { estimateWork } from '../../src/work/estimate-work.ts';
import { learnPace } from '../../src/work/history.ts';
import { jobTimeQuantile, threePointMoments } from '../../src/work/job-time.ts';
import type { ThreePoint } from '../../src/work/work-model.ts';
import { normal, seededRandom } from '../samples/seeded-random.ts';
import { FINE, MEDIUM, panel, plan, step } from '../work/small-plans.ts';

const random = seededRandom(2026);

/** A draw from the PERT-beta, by rejection under its greatest density. */
function pert({ least, likely, most }: ThreePoint): number {
  const alpha = 4 * ((likely - least) / (most - least));
  const beta = 4 * ((most - likely) / (most - least));
  const density = (x: number): number => x ** alpha * (1 - x) ** beta;
  const greatest = density(alpha / (alpha + beta));
  for (;;) {
    const x = random();
    if (random() * greatest <= density(x)) return least + x * (most - least);
  }
}

/** Half of a stage's variance is its own: its draw is drawn in towards its mean. */
const ownPart = (time: ThreePoint): number => {
  const { mean } = threePointMoments(time);
  return mean + Math.sqrt(workModel.aloneShare) * (pert(time) - mean);
};

/** A factor of mean 1. */
const factor = (logSd: number): number => Math.exp(normal(random) * logSd - logSd ** 2 / 2);

describe('4,000 jobs whose stages, pace and day vary as assumed', () => {
  const roof = panel('roof', 5, [step(MEDIUM, 3, 60), step(FINE, 1, 20)]);
  const work = estimateWork(plan(roof), workModel, { vehicleArea: squareMetres(13.6) });
  const { least, most } = workModel.polishing;
  const { setUp } = workModel;
  const likely = [60 + 15 * 1.75, 20 + 5 * 1.75, setUp, setUp].map(
    (m) => ({ least: m * least, likely: m, most: m * most }) as ThreePoint,
  );
  const scaled = work.stages.flatMap(({ stage, likely: own, polishingTime }) => {
    if (stage.time === null) return [];
    const by = (own - polishingTime) / stage.time.likely;
    const { least: a, likely: m, most: b } = stage.time;
    return [{ least: a * by, likely: m * by, most: b * by } as ThreePoint];
  });
  const times = Array.from({ length: 4000 }, () => {
    const own = [...likely, ...scaled].reduce((sum, time) => sum + ownPart(time), 0);
    return own * factor(workModel.paceLogSd) * factor(workModel.jobLogSd);
  });

  it.each([0.5, 0.8, 0.95])('end within P%s as often as is said', (p) => {
    const within = times.filter((time) => time <= jobTimeQuantile(work.job.time, p)).length;
    // Three standard errors of a share of 4,000.
    expect(Math.abs(within / 4000 - p)).toBeLessThan(3 * Math.sqrt((p * (1 - p)) / 4000));
  });
});

describe('600 shops of unknown pace, eight jobs on record', () => {
  const shops = Array.from({ length: 600 }, () => {
    const pace = normal(random) * workModel.paceLogSd;
    const jobs = Array.from({ length: 9 }, () => pace + normal(random) * workModel.jobLogSd);
    const [next = 0, ...seen] = jobs;
    const learned = learnPace(
      seen.map((log, i) => ({
        job: `${i}`,
        stage: null,
        estimated: 100,
        actual: 100 * Math.exp(log),
      })),
      workModel,
    );
    return { pace, next, learned };
  });

  it('have their pace within its 90 % range nine times of ten', () => {
    const within = shops.filter(({ pace, learned: { factor: range } }) => {
      const own = Math.exp(pace);
      return range.low <= own && own <= range.high;
    }).length;
    expect(Math.abs(within / 600 - 0.9)).toBeLessThan(3 * Math.sqrt(0.09 / 600));
  });

  it('foretell the next job better than its estimate does, by about as much as their own records say', () => {
    const rms = (values: readonly number[]): number =>
      Math.sqrt(values.reduce((sum, value) => sum + value ** 2, 0) / values.length);
    const before = rms(shops.map(({ next }) => next));
    const after = rms(shops.map(({ next, learned }) => next - learned.pace.overall.mean));
    const said = rms(shops.map(({ learned }) => learned.error?.after ?? 0));
    expect(after).toBeLessThan(0.85 * before);
    expect(Math.abs(after / said - 1)).toBeLessThan(0.06);
  });
});
