/** A film record that is typed beside the one that the job names. */
import { copyFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { askLeastcut } from '../ask-leastcut.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const READINGS = 'samples/sound-saloon/readings.csv';
const folder = temporaryFolder();
const at = (name: string): string => join(folder, name);

const surveyed = async (record: string, ...typed: readonly string[]) => {
  const job = { schema: 'leastcut/job/1', template: 'saloon', film_record: record };
  writeFileSync(at('job.json'), JSON.stringify(job));
  const { code, err } = await askLeastcut(['survey', READINGS, '--job', at('job.json'), ...typed]);
  return { code, codes: [...err.matchAll(/\[([a-z-]+)\]/gu)].map(([, one]) => one) };
};

copyFileSync('samples/film-record.json', at('all.json'));
copyFileSync('samples/film-record.json', at('copy.json'));

test('counts without a word where it says the same', async () => {
  expect(await surveyed('all.json', '--film-record', at('copy.json'))).toEqual({
    code: 0,
    codes: [],
  });
});

test('counts without a word where the job’s is not there, which alone is refused', async () => {
  expect(await surveyed('gone.json', '--film-record', at('copy.json'))).toEqual({
    code: 0,
    codes: [],
  });
  expect(await surveyed('gone.json')).toEqual({ code: 66, codes: ['file-missing'] });
});

test('is refused where the job’s cannot be read, for what that holds nobody knows', async () => {
  writeFileSync(at('broken.json'), '{');
  expect(await surveyed('broken.json', '--film-record', at('copy.json'))).toEqual({
    code: 78,
    codes: ['json-syntax'],
  });
});

test('is told where it lacks a visit of the job’s, and that one counts', async () => {
  writeFileSync(at('none.json'), '{ "schema": "leastcut/film-record/1", "visits": [] }');
  expect(await surveyed('all.json', '--film-record', at('none.json'))).toEqual({
    code: 0,
    codes: ['film-record-older'],
  });
});
