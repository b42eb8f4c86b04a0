import { describe, expect, test } from 'vitest';
import { jobsAmong } from '../../../src/cli/batch/folder-jobs.ts';

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

  test('have all the readings that differ in their ending alone', () => {
    expect(jobsOf('coupe.txt', 'coupe.csv')[0]?.readings).toEqual(['coupe.csv', 'coupe.txt']);
  });
});
