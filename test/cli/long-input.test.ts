import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { Run } from './run-command.ts';
import { runLeastcut } from './run-leastcut.ts';
import { temporaryFolder } from './temporary-folder.ts';

const panels = ['bonnet', 'roof', 'boot', 'front-left-door', 'front-right-door'];
const note = 'measured in the shade '.repeat(100);
const car = (name: string, more: readonly string[] = []): string =>
  [...panels, ...more]
    .flatMap((panel, k) => [1, 2, 3].map((n) => `${name},${panel},${100 + k + n / 10},${note}`))
    .join('\n');

/** More than the sample of a megabyte, with few cars, for each row has a long note. */
const cars = (more: readonly string[] = []): string => {
  const all = Array.from({ length: 40 }, (_, k) => car(`CAR ${k + 1}`));
  return `vehicle,panel,reading_um,note\n${[...all, ...more].join('\n')}\n`;
};

function written(text: string): { readonly file: string; readonly whole: string } {
  const folder = temporaryFolder();
  const file = join(folder, 'long.csv');
  writeFileSync(file, text);
  return { file, whole: join(folder, 'whole.ndjson') };
}

type Rec = {
  readonly vehicle: string | null;
  readonly readings: unknown;
  readonly diagnostics: [];
};
const records = (ndjson: string): Rec[] =>
  ndjson
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line));

const streamed = (file: string, command = 'read', stdin?: string): Promise<Run> =>
  runLeastcut([command, file, '--format', 'ndjson'], stdin === undefined ? {} : { stdin });

test('a long file gives the same readings of each vehicle in parts as read whole', async () => {
  const { file, whole } = written(cars());
  const { code, out } = await streamed(file);
  await runLeastcut(['read', file, '--format', 'ndjson', '--out', whole]);
  const told = ({ vehicle, readings }: Rec) => ({ vehicle, readings });
  expect(code).toBe(0);
  expect(records(out).map(told)).toEqual(records(readFileSync(whole, 'utf8')).map(told));
});

test('it goes through in parts, which shows in the count of readings that decided', async () => {
  const { file } = written(cars());
  const { out } = await streamed(file);
  expect(out).toMatch(/"\d{2,3} of \d{2,3} readings fit only a decimal point"/u);
  expect(out).not.toContain('of 600 readings');
});

test('a long standard input comes out as the file does', async () => {
  const text = cars();
  const { file } = written(text);
  const [named, piped] = await Promise.all([streamed(file), streamed('-', 'read', text)]);
  const nameless = ({ out }: Run): string =>
    JSON.stringify(records(out).map(({ readings }) => readings)).replaceAll(/"file":"[^"]*"/gu, '');
  expect(records(piped.out)).toHaveLength(40);
  expect(nameless(piped)).toBe(nameless(named));
});

test('a vehicle that comes again is read whole, its rows put together', async () => {
  const { file, whole } = written(cars([`CAR 1,roof,120.5,${note}`]));
  const { out } = await streamed(file);
  await runLeastcut(['read', file, '--format', 'ndjson', '--out', whole]);
  expect(out).toBe(readFileSync(whole, 'utf8'));
  expect(records(out)).toHaveLength(40);
});

test('a cell gone wrong at the end is told before anything is written', async () => {
  const { file } = written(cars([`CAR 99,roof,thick,${note}`]));
  const { code, out, err } = await streamed(file);
  expect(code).toBe(65);
  expect(records(out)).toHaveLength(1);
  expect(err).toContain('error[reading-not-a-number]');
});

test('a vehicle late in the file that cannot be surveyed ends it with a record that says so', async () => {
  const { file } = written(cars([car('VAN 1', ['flux capacitor'])]));
  const { code, out, err } = await streamed(file, 'survey');
  const all = records(out);
  expect(code).toBe(65);
  expect(all.length).toBeGreaterThan(20);
  expect(all[0]).toMatchObject({ vehicle: 'CAR 1', schema: 'leastcut/survey/1' });
  expect(all.at(-1)).toMatchObject({
    vehicle: null,
    diagnostics: expect.arrayContaining([expect.objectContaining({ severity: 'error' })]),
  });
  expect(err).toContain('flux capacitor');
});
