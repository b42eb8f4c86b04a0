import { execFileSync } from 'node:child_process';
import { symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { folderJobs, jobsAmong } from '../../../src/cli/batch/folder-jobs.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const columns = ['job', 'readings', 'job_file', 'defects', 'spots'];
const jobsOf = (...names: readonly string[]) =>
  jobsAmong('cars', names, columns).map(({ id, readings, said }) => ({
    id,
    readings: readings.map(({ text }) => text),
    said: Object.fromEntries(
      [...said].map(([key, cells]) => [key, cells.map(({ text }) => text).join(' ')]),
    ),
  }));

describe('the jobs of a folder', () => {
  test('are its files of readings, in the order of their names', () => {
    expect(jobsOf('b.tsv', 'a.csv', 'B.csv').map(({ id }) => id)).toEqual(['B', 'a', 'b']);
  });

  test('take with them what lies beside under the same name', () => {
    expect(jobsOf('coupe.spots.csv', 'coupe.csv', 'coupe.job.json', 'coupe.defects.csv')).toEqual([
      {
        id: 'coupe',
        readings: ['coupe.csv'],
        said: {
          job_file: 'coupe.job.json',
          spots: 'coupe.spots.csv',
          defects: 'coupe.defects.csv',
        },
      },
    ]);
  });

  test('are there by a job file alone: its missing readings are for its record to tell', () => {
    expect(jobsOf('coupe.job.json')).toEqual([
      { id: 'coupe', readings: ['coupe.csv'], said: { job_file: 'coupe.job.json' } },
    ]);
  });

  test('leave out what its command has no use for', () => {
    expect(jobsOf('coupe.csv', 'coupe.gauge.json')).toEqual([
      { id: 'coupe', readings: ['coupe.csv'], said: {} },
    ]);
  });

  test('are no hidden file, no note, and nothing that only belongs to a job', () => {
    expect(jobsOf('.old.csv', 'notes.md', 'shop.json', 'coupe.defects.csv')).toEqual([]);
  });

  test('of a large folder take as long as each of its files is looked at once', () => {
    const filesOf = (jobs: number): readonly string[] =>
      Array.from({ length: jobs }, (_, i) => [`car ${i}.csv`, `car ${i}.job.json`]).flat();
    const secondsFor = (names: readonly string[]): number => {
      const start = process.cpuUsage();
      expect(jobsAmong('cars', names, columns)).toHaveLength(names.length / 2);
      return process.cpuUsage(start).user / 1e6;
    };
    const few = filesOf(2_000);
    const many = filesOf(32_000);
    secondsFor(few);
    // Sixteen times as many: were each job to look through all files, it were 256 times as long.
    expect(secondsFor(many)).toBeLessThan(100 * Math.max(secondsFor(few), 0.005));
  });

  test('have all the readings that differ in their ending alone', () => {
    expect(jobsOf('coupe.txt', 'coupe.csv')[0]?.readings).toEqual(['coupe.csv', 'coupe.txt']);
  });
});

describe('what belongs to a job and is used by none', () => {
  const unusedOf = async (files: Readonly<Record<string, string>>): Promise<readonly string[]> => {
    const folder = temporaryFolder();
    for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
    return (await folderJobs(folder, columns)).passedOver.unused;
  };
  const readings = 'panel,point,reading_um\nroof,1,120\n';
  const job = '{\n  "schema": "leastcut/job/1",\n  "taken_um": 0\n}\n';

  test('is a job file that is called after no readings, whatever it is called', async () => {
    const shop = '{ "schema": "leastcut/shop/1" }';
    const files = { 'coupe.csv': readings, 'coupe.job.json': job, 'shop.json': shop };
    expect(await unusedOf(files)).toEqual([]);
    expect(await unusedOf({ ...files, 'job.json': job, 'coupe-job.json': job })).toEqual([
      'coupe-job.json',
      'job.json',
    ]);
  });

  test('is what lies beside readings that are not there, by a slip of the name too', async () => {
    const defects = 'panel,defect,grade\nroof,swirl marks,3\n';
    const files = { 'coupe.csv': readings, 'coupe.defects.csv': defects };
    expect(await unusedOf(files)).toEqual([]);
    expect(
      await unusedOf({ ...files, 'Coupe.spots.csv': 'spot\n', 'saloon.gauge.json': '{}' }),
    ).toEqual(['Coupe.spots.csv', 'saloon.gauge.json']);
  });
});

test.skipIf(process.platform === 'win32')(
  'a pipe in the folder, or a link to one, is passed over by name and never waited for',
  async () => {
    const folder = temporaryFolder();
    execFileSync('mkfifo', [join(folder, 'pipe.csv')]);
    symlinkSync('pipe.csv', join(folder, 'link.csv'));
    symlinkSync('gone.csv', join(folder, 'gone-link.csv'));
    writeFileSync(join(folder, 'a.csv'), 'panel,point,reading_um\n');
    const { entries, passedOver } = await folderJobs(folder, columns);
    expect(entries.map(({ id }) => id)).toEqual(['a', 'gone-link']);
    expect(passedOver.files).toEqual(['link.csv', 'pipe.csv']);
  },
  5000,
);
