import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { runLeastcut } from './run-leastcut.ts';
import { temporaryFolder } from './temporary-folder.ts';

const saloon = 'samples/sound-saloon/readings.csv';
const coupe = ['samples/older-coupe/readings.csv', '--job', 'samples/older-coupe/job.json'];

test('0: the work is done', async () => {
  const { code, out, err } = await runLeastcut(['survey', saloon]);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(out).toContain('bonnet');
});

test('1: the plan is done and no panel can be worked', async () => {
  const { code, out } = await runLeastcut(['plan', ...coupe, '--panel', 'bonnet']);
  expect(code).toBe(1);
  expect(out).toContain('Leave: bonnet');
});

test('0: one of the panels asked for can be worked', async () => {
  const words = ['plan', ...coupe, '--panel', 'bonnet', '--panel', 'roof'];
  expect((await runLeastcut(words)).code).toBe(0);
});

test('2: the command line is wrong', async () => {
  expect((await runLeastcut(['survey', saloon, '--format', 'pdf'])).code).toBe(2);
});

test('2: nothing was asked for, and the help goes to standard error', async () => {
  const { code, out, err } = await runLeastcut([]);
  expect({ code, out }).toEqual({ code: 2, out: '' });
  expect(err).toContain('Usage: leastcut <command>');
});

test('65: the data cannot be read without guessing', async () => {
  const stdin = 'panel,point,reading\nbonnet,1,120\n';
  expect((await runLeastcut(['survey', '-'], { stdin })).code).toBe(65);
});

test('66: a named file is missing', async () => {
  const { code, err } = await runLeastcut(['survey', 'no-such-file.csv']);
  expect(code).toBe(66);
  expect(err).toContain('no-such-file.csv: error[file-missing]');
});

test('66: a job, shop or defects file is missing, and all of them are named', async () => {
  const words = ['plan', saloon, '--job', 'a.json', '--shop', 'b.json', '--defects', 'c.csv'];
  const { code, err } = await runLeastcut(words);
  expect(code).toBe(66);
  for (const name of ['a.json', 'b.json', 'c.csv']) expect(err).toContain(`no file "${name}"`);
});

const wide = temporaryFolder();
writeFileSync(join(wide, 'readings.csv'), 'panel,point,reading_um\n車,1,101.5\n');

test('70: a fault of the program itself asks for a report, and says nothing on standard output', async () => {
  const env = { NODE_OPTIONS: '--import=data:text/javascript,Intl.Segmenter=undefined' };
  // The point of this file has a name in letters of two columns, which are counted by what is taken away here.
  const words = ['read', join(wide, 'readings.csv')];
  const { code, out, err } = await runLeastcut(words, { env });
  expect({ code, out }).toEqual({ code: 70, out: '' });
  expect(err).toContain('a bug of ours, please report it');
});

test('73: the output cannot be written', async () => {
  const words = ['survey', saloon, '--out', join(temporaryFolder(), 'no-folder', 'survey.txt')];
  expect((await runLeastcut(words)).code).toBe(73);
});

test('78: the settings are invalid', async () => {
  const { code, err } = await runLeastcut(['plan', saloon, '--job', 'samples/shop.json']);
  expect(code).toBe(78);
  expect(err).toContain('samples/shop.json:2:13: error[settings-schema]');
});
