import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { workModel } from '../../src/formats/models.ts';
import { type HoursRecord, learnPace } from '../../src/work/history.ts';

const whole = (job: string, estimated: number, actual: number): HoursRecord => ({
  job,
  stage: null,
  estimated,
  actual,
});
const of = (job: string, stage: string, estimated: number, actual: number): HoursRecord => ({
  job,
  stage,
  estimated,
  actual,
});

describe('the pace that a shop’s hours teach', () => {
  it('is the conjugate update of N(0, .15²) by the logs of its jobs, each of SD .15', () => {
    // ln 1.2 = .18232 and ln 1.1 = .09531: with equal SDs the prior weighs as one job more.
    const { pace, factor, jobs } = learnPace(
      [whole('A', 100, 120), whole('B', 200, 220)],
      workModel,
    );
    expect(pace.overall.mean).toBeCloseTo((0.18232 + 0.09531) / 3, 5);
    expect(pace.overall.sd).toBeCloseTo(0.15 / Math.sqrt(3), 12);
    expect(factor.middle).toBeCloseTo(Math.exp(0.0925434), 5);
    // ± 1.6449 · .0866 on the log.
    expect(factor.low).toBeCloseTo(Math.exp(0.0925434 - 1.644854 * 0.0866025), 5);
    expect(factor.high).toBeCloseTo(Math.exp(0.0925434 + 1.644854 * 0.0866025), 5);
    expect(jobs).toBe(2);
  });

  it('takes a job’s stages together where its total is not recorded', () => {
    const parts = [of('A', 'wash', 40, 60), of('A', 'cut', 60, 60)];
    expect(learnPace(parts, workModel).pace.overall).toEqual(
      learnPace([whole('A', 100, 120)], workModel).pace.overall,
    );
  });

  it('goes by the total where both are recorded', () => {
    const both = [whole('A', 100, 120), of('A', 'wash', 40, 20)];
    expect(learnPace(both, workModel).pace.overall).toEqual(
      learnPace([whole('A', 100, 120)], workModel).pace.overall,
    );
  });

  it('is as it was without any hours', () => {
    const { pace, error, jobs } = learnPace([], workModel);
    expect(pace.overall).toEqual({ mean: 0, sd: 0.15 });
    expect([error, jobs]).toEqual([null, 0]);
  });
});

describe('a stage’s own factor', () => {
  const jobs = (count: number) =>
    Array.from({ length: count }, (_, i) => [
      whole(`J${i}`, 100, 100),
      of(`J${i}`, 'clay', 40, 60),
    ]).flat();

  it('comes with five records of it, and no sooner', () => {
    expect(learnPace(jobs(4), workModel).stages).toEqual([]);
    const [clay] = learnPace(jobs(5), workModel).stages;
    expect(clay).toMatchObject({ stage: 'clay', records: 5 });
  });

  it('is the conjugate update of N(0, .25²) by what it takes beyond the pace', () => {
    // The jobs as a whole took what was estimated: the pace stays 0, and each record says ln 1.5 = .405465
    // with an SD of √(.15² + .3²) = .335410. Precisions 16 and 5/.1125 = 44.4444.
    const [clay] = learnPace(jobs(5), workModel).stages;
    expect(Math.log(clay?.factor ?? 0)).toBeCloseTo((0.405465 * 44.4444) / 60.4444, 5);
    expect(learnPace(jobs(5), workModel).pace.stages.get('clay')).toBeCloseTo(0.298135, 5);
  });

  it('counts several rows of one job as one record', () => {
    const twice = [of('A', 'clay', 20, 30), of('A', 'clay', 20, 30)];
    expect(learnPace([...jobs(4), ...twice], workModel).stages[0]?.records).toBe(5);
  });
});

describe('how far off estimates were', () => {
  it('is the root mean square of the logs, and of what the other jobs do not foretell', () => {
    // Both jobs at ln 1.2: each is foretold by the other with half of it, as the prior weighs the same.
    const { error } = learnPace([whole('A', 100, 120), whole('B', 50, 60)], workModel);
    expect(error?.before).toBeCloseTo(Math.log(1.2), 12);
    expect(error?.after).toBeCloseTo(Math.log(1.2) / 2, 12);
  });

  it('is by the others alone: a job says nothing of itself', () => {
    const [a, b] = [Math.log(1.2), Math.log(0.9)];
    const { error } = learnPace([whole('A', 100, 120), whole('B', 100, 90)], workModel);
    expect(error?.before).toBeCloseTo(Math.sqrt((a ** 2 + b ** 2) / 2), 12);
    expect(error?.after).toBeCloseTo(Math.sqrt(((a - b / 2) ** 2 + (b - a / 2) ** 2) / 2), 12);
  });

  it('is not known of a single job', () => {
    expect(learnPace([whole('A', 100, 120)], workModel).error).toBeNull();
  });

  it('does not depend on the order of the records', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 30, max: 900 }), fc.integer({ min: 30, max: 900 })), {
          minLength: 2,
          maxLength: 8,
        }),
        (times) => {
          const records = times.map(([a, b], i) => whole(`J${i}`, a, b));
          const one = learnPace(records, workModel);
          const other = learnPace([...records].reverse(), workModel);
          expect(other.factor.middle).toBeCloseTo(one.factor.middle, 9);
          expect(other.error?.after).toBeCloseTo(one.error?.after ?? 0, 9);
        },
      ),
    );
  });
});
