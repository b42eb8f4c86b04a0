/** What the end of a batch says of its jobs is taken from their records as values, whatever the order of their keys. */
import { describe, expect, test } from 'vitest';
import { aboutJob, recordOfLine } from '../../../src/cli/batch/about-job.ts';
import { finished } from '../../../src/cli/batch/run-job.ts';

const result = { command: 'quote', missing_keys: ['prices.currency'], vehicle: 'FH "1"' };
const record = { result, readings_sha256: 'ab', job: 'a "b" \\', diagnostics: [] };

describe('what is told of a job', () => {
  test('does not hang on the order of the keys of its record', () => {
    const about = {
      job: 'a "b" \\',
      vehicle: 'FH "1"',
      readingsSum: 'ab',
      missingKeys: ['prices.currency'],
    };
    expect(aboutJob(record)).toEqual(about);
    expect(aboutJob(JSON.parse(JSON.stringify(record)))).toEqual(about);
  });

  test('is nothing but its name where it has no result', () => {
    expect(aboutJob({ ...record, readings_sha256: null, result: null })).toEqual({
      job: 'a "b" \\',
      ...{ vehicle: null, readingsSum: null, missingKeys: [] },
    });
  });

  test('is the same of a job just done as of its line read again', () => {
    const done = finished({
      ...{ job: 'x', seq: 3, command: 'quote', status: 'done', exit: 0 },
      ...{ settingsSum: 'aa', readingsSum: 'ab', inputs: [], diagnostics: [], result },
    });
    expect(done).toMatchObject(aboutJob(recordOfLine(done.line)));
    expect(done).toMatchObject({ job: 'x', vehicle: 'FH "1"', readingsSum: 'ab' });
  });
});
