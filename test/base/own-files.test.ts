import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { kindSaid, ownJson, ownTable, ownTables, takenAs } from '../../src/base/own-files.ts';
import { jobColumns } from '../../src/cli/batch/job-columns.ts';
import { commands } from '../../src/cli/commands.ts';
import { optionSpecs } from '../../src/cli/options.ts';
import { csvTables } from '../../src/formats/csv-columns.ts';
import { fileKinds } from '../../src/formats/file-kinds.ts';
import { projectRoot } from '../cli/run-leastcut.ts';

const loaded = await Promise.all(commands.map(({ load }) => load()));

test('a settings file of every kind is known by what it says it is', () => {
  for (const { kind, schemaName } of fileKinds) {
    expect(kindSaid(schemaName)?.kind, kind).toBe(kind.replace('-', ' '));
  }
  expect(kindSaid('leastcut/job/10')?.kind).toBe('job');
  expect(kindSaid('leastcut/jobs/1')).toBeUndefined();
  expect(kindSaid('job')).toBeUndefined();
});

test('each command that is said to take a file has the option that is named for it', () => {
  const takers = [
    ...fileKinds.map(({ schemaName }) => kindSaid(schemaName)),
    kindSaid('leastcut/survey/1'),
    ...ownTables,
  ];
  for (const taker of takers) {
    expect(taker).toBeDefined();
    for (const name of taker?.commands ?? []) {
      const command = loaded.find((one) => one.name === name.split(' ')[0]);
      expect(command, name).toBeDefined();
      const { option } = taker ?? {};
      if (option === undefined) continue;
      const flags = command?.options.map((own) => optionSpecs[own].flags.split(' ')[0]);
      expect(flags, `${name} ${option}`).toContain(option);
    }
  }
});

test('a table of ours is known by the columns that it needs', () => {
  const needed = csvTables.map(({ columns }) =>
    columns.filter(({ required }) => required).map(({ name }) => name),
  );
  const { needed: ofList } = jobColumns({ options: [] });
  expect(ownTables.map(({ columns }) => columns)).toEqual([...needed, ofList]);
  for (const columns of needed) expect(ownTable(['note', ...columns])?.columns).toEqual(columns);
  expect(ownTable([' Job ', 'Readings', 'Aim'])?.called).toBe('a list of jobs');
  // A table of test spots may name a defect as well, and one of defects needs no more.
  expect(ownTable(['spot', 'panel', 'defect', 'machine', 'pad', 'product', 'sets'])?.called).toBe(
    'a table of test spots',
  );
  expect(ownTable(['Panel', 'Point', 'Reading'])).toBeUndefined();
});

test('what takes a file is said with its option, or without where it is the first word', () => {
  expect(takenAs({ commands: ['compare'], option: '--plan' })).toBe(
    'compare takes it as --plan FILE',
  );
  expect(takenAs({ commands: ['plan', 'quote'], option: '--defects' })).toBe(
    'plan, quote take it as --defects FILE',
  );
  expect(takenAs({ commands: ['batch'] })).toBe('leastcut batch FILE takes it');
});

const sample = (name: string): string => readFileSync(join(projectRoot, 'samples', name), 'utf8');

test.each([
  ['a settings file', sample('sound-saloon/job.json'), 'a job file'],
  ['a settings file with a byte order mark', `\ufeff${sample('shop.json')}`, 'a shop file'],
  ['a settings file with a slip in it', '{ "schema": "leastcut/gauge/1",, }', 'a gauge file'],
  ['a record', '{\n  "schema": "leastcut/survey/1"', 'a survey file'],
  [
    'records, one a line',
    '{"schema":"leastcut/plan/1"}\n{"schema":"leastcut/plan/1"}',
    'a plan file',
  ],
  [
    'a record that no command reads',
    '{"schema":"leastcut/quote/1"}',
    'a file that calls itself leastcut/quote/1',
  ],
  ['a list of jobs', '[\n{ "job": "a", "readings": "a.csv" }]', 'a list of jobs'],
])('%s is told for what it is', (_, text, called) => {
  expect(ownJson(text)?.called).toBe(called);
});

test.each([
  ['a table', 'panel,reading_um\nroof,120\n'],
  ['a table with one of ours in its notes', 'panel,note\nroof,"schema":"leastcut/job/1"\n'],
  ['a heading in brackets', '[Measurement]\nroof 120\n'],
  ['a brace that opens no object of names', '{roof} 120\n'],
  ['an empty text', ''],
  ['JSON of somebody else', '[{"panel": "roof", "reading": 120}]'],
  ['readings as an object in each line', '{"panel": "roof", "reading": 120}\n'],
  ['JSON of another program', '{"schema": "other/job/1"}'],
])('%s is no file of ours', (_, text) => {
  expect(ownJson(text)).toBeUndefined();
});
