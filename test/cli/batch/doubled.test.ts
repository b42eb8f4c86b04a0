import { cpSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { createDoubled } from '../../../src/cli/batch/doubled.ts';
import { projectRoot, runLeastcut } from '../run-leastcut.ts';
import { temporaryFolder } from '../temporary-folder.ts';

type Said = { readonly vehicle?: string | null; readonly sum?: string };

const about = (job: string, { vehicle = null, sum }: Said) => ({
  ...{ job, vehicle },
  readingsSum: sum ?? null,
});

function toldOf(...jobs: readonly ReturnType<typeof about>[]): readonly string[] {
  const doubled = createDoubled();
  for (const one of jobs) doubled.add(one);
  return doubled.told();
}

describe('jobs that are likely one are told', () => {
  test('by the vehicle, however it is written', () => {
    const told = toldOf(
      about('a', { vehicle: 'FH 1' }),
      about('b', { vehicle: 'fh  1 ' }),
      about('c', { vehicle: 'FH 2' }),
    );
    expect(told).toEqual(['jobs "a" and "b" are of one vehicle, "fh  1 ": is that one job twice?']);
  });

  test('by the same readings, and once where the vehicle says so too', () => {
    expect(
      toldOf(about('a', { sum: 'ab' }), about('b', { sum: 'ab' }), about('c', { sum: 'ac' })),
    ).toEqual(['jobs "a" and "b" have the same readings: is that one job twice?']);
    const both = { vehicle: 'X', sum: 'ab' };
    expect(toldOf(about('a', both), about('b', both))).toHaveLength(1);
  });

  test('and several vehicles of one file are not', () => {
    const [x, y] = [
      { vehicle: 'X', sum: 'ab' },
      { vehicle: 'Y', sum: 'ac' },
    ];
    expect(toldOf(about('a', x), about('b', y))).toEqual([]);
    expect(toldOf(about('a', {}), about('b', {}))).toEqual([]);
  });

  test('in a few lines, however many there are', () => {
    const jobs = Array.from({ length: 40 }, (_, i) => about(`j${i}`, { vehicle: `V${i % 8}` }));
    const told = toldOf(...jobs);
    expect(told).toHaveLength(6);
    expect(told.at(-1)).toBe('and 3 more such groups of jobs');
    const many = toldOf(...Array.from({ length: 9 }, (_, i) => about(`j${i}`, { vehicle: 'V' })));
    expect(many[0]).toContain('"j4" and 4 more are of one vehicle');
  });
});

test('a batch says so at its end and on its page, and does both jobs', async () => {
  const folder = temporaryFolder();
  const saloon = join(projectRoot, 'samples/sound-saloon/readings.csv');
  for (const name of ['monday.csv', 'tuesday.csv']) cpSync(saloon, join(folder, name));
  const words = ['batch', folder, '--command', 'survey', '--workers', '1'];
  const { code, out, err } = await runLeastcut([...words, '--format', 'text']);
  const said = 'jobs "monday" and "tuesday" have the same readings: is that one job twice?';
  expect(code).toBe(0);
  expect(out.replaceAll(/\s+/g, ' ')).toContain(`Perhaps twice ${said}`);
  expect(err.replaceAll(/\s+/g, ' ')).toContain(`leastcut: ${said}`);
});

test('whatever the form of the files, and only of jobs that are done', async () => {
  const folder = temporaryFolder();
  const rows = (cut: string, ends: string): string =>
    ['panel,point,reading_um', 'roof,1,120', 'roof,2,122', 'roof,3,119', '']
      .join(ends)
      .replaceAll(',', cut);
  writeFileSync(join(folder, 'a.csv'), rows(',', '\n'));
  writeFileSync(join(folder, 'b.csv'), rows(';', '\r\n'));
  writeFileSync(join(folder, 'c.csv'), rows(',', '\n').replace('119', '118'));
  for (const name of ['d.csv', 'e.csv']) writeFileSync(join(folder, name), 'no readings at all\n');
  const { err } = await runLeastcut(['batch', folder, '--command', 'survey', '--workers', '1']);
  const said = err.split('\n').filter((one) => one.includes('twice?'));
  expect(said).toEqual([
    'leastcut: jobs "a" and "b" have the same readings: is that one job twice?',
  ]);
});

test('a file that is not there is told where the list names it', async () => {
  const folder = temporaryFolder();
  const list = join(folder, 'list.csv');
  writeFileSync(list, 'job,readings,defects\na,nowhere.csv,\nb,r.csv,no-defects.csv\n');
  writeFileSync(
    join(folder, 'r.csv'),
    'panel,point,reading_um\nroof,1,120\nroof,2,121\nroof,3,119\n',
  );
  const { out, err } = await runLeastcut(['batch', list, '--command', 'plan', '--workers', '1']);
  const [a, b] = out
    .trimEnd()
    .split('\n')
    .map((one) => JSON.parse(one));
  expect(a.diagnostics[0]).toMatchObject({
    code: 'file-missing',
    message: `there is no file "${join(folder, 'nowhere.csv')}"`,
    at: { file: list, line: 2, column: 3, line_text: 'a,nowhere.csv,' },
  });
  expect(
    b.diagnostics.find((one: { code: string }) => one.code === 'file-missing').at,
  ).toMatchObject({
    file: list,
    line: 3,
    column: 9,
  });
  expect(err).toContain(`${list}:2:3: error[file-missing]`);
});
