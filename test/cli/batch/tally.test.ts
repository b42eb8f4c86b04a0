import { expect, test } from 'vitest';
import { createTally } from '../../../src/cli/batch/tally.ts';

const refused = (job: string, reason: string) => ({
  ...{ job, status: 'refused' as const, exit: 65, reason },
  told: `${job}.csv:1: error[column-missing]: ${reason}\n`,
});
const toldOf = (...jobs: readonly ReturnType<typeof refused>[]): readonly string[] => {
  const tally = createTally();
  for (const one of jobs) tally.add(one);
  return tally.summary(jobs.length, 0);
};
const jobs = (count: number, reason: (i: number) => string) =>
  Array.from({ length: count }, (_, i) => refused(`c${i + 1}`, reason(i)));

test('what several jobs are refused for is told once, with their names', () => {
  expect(toldOf(...jobs(3, () => 'no "Teil"'))).toEqual([
    'jobs "c1", "c2" and "c3" refused alike\nc1.csv:1: error[column-missing]: no "Teil"',
    '3 jobs: 0 done, 3 refused',
  ]);
});

test('of many names the first are told and the others counted', () => {
  const [alike] = toldOf(...jobs(12, () => 'no "Teil"'));
  expect(alike).toMatch(/^jobs "c1", "c2", "c3", "c4", "c5" and 7 more refused alike\n/);
});

test('what is of one job alone is told beside it', () => {
  const told = toldOf(...jobs(3, (i) => (i === 1 ? 'no unit' : 'no "Teil"')));
  expect(told.map((text) => text.split('\n')[0])).toEqual([
    'jobs "c1" and "c3" refused alike',
    'job "c2" refused',
    '3 jobs: 0 done, 3 refused',
  ]);
});

test('of many reasons the first five are told, and the jobs that have others are counted', () => {
  const told = toldOf(...jobs(9, (i) => `reason ${i % 8}`));
  expect(told).toHaveLength(7);
  expect(told[0]).toContain('jobs "c1" and "c9" refused alike');
  expect(told[5]).toBe('and 3 more jobs not done');
});

test('a job that is refused and one that failed are not alike', () => {
  const failed = { ...refused('b', 'the same'), status: 'failed' as const };
  expect(toldOf(refused('a', 'the same'), failed as never)).toHaveLength(3);
});

test('a batch of which no job is done ends with the code that all share, else with 65', () => {
  const exitOf = (...exits: readonly number[]): number => {
    const tally = createTally();
    exits.forEach((exit, i) => {
      tally.add({ ...refused(`c${i}`, 'a reason'), exit });
    });
    return tally.exit();
  };
  expect(exitOf(66, 66)).toBe(66);
  expect(exitOf(78)).toBe(78);
  expect(exitOf(66, 78)).toBe(65);
  const some = createTally();
  some.add({ ...refused('a', 'a reason'), exit: 66 });
  some.add({ ...refused('b', ''), status: 'done' as never, exit: 0 });
  expect(some.exit()).toBe(3);
});
