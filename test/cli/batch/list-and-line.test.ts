/** What a list says against what is typed, and what a batch tells of jobs that were warned or not begun. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { runLeastcut } from '../run-leastcut.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const readings = readFileSync('samples/sound-saloon/readings.csv', 'utf8');

/** A folder with two files of readings and a list of these rows. */
function listed(...rows: readonly string[]) {
  const folder = temporaryFolder();
  for (const name of ['a.csv', 'b.csv']) writeFileSync(join(folder, name), readings);
  writeFileSync(join(folder, 'bad.csv'), 'panel,reading_um\nbonnet,thick\n');
  const list = join(folder, 'jobs.csv');
  writeFileSync(list, `${rows.join('\n')}\n`);
  const batch = (...more: readonly string[]) =>
    runLeastcut(['batch', list, '--workers', '1', ...more]);
  return { folder, list, batch };
}

type Setting = { readonly name: string; readonly value: unknown; readonly where: string };
type Job = {
  readonly job: string;
  readonly result: {
    readonly options: readonly { readonly aim: string }[];
    readonly settings: readonly Setting[];
  } | null;
};
const jobsOf = (out: string): readonly Job[] =>
  out
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as Job);
const said = (job: Job | undefined, name: string): Setting | undefined =>
  job?.result?.settings.find((one) => one.name === name);

describe('the command line goes before a list, and a list before the environment', () => {
  const rows = ['job,readings,aim,risk_pct', 'a,a.csv,enhance,3', 'b,b.csv,,'];

  test('what is typed holds for every job, and what it stands in place of is told once', async () => {
    const { batch } = listed(...rows);
    const { out, err } = await batch('--aim', 'full');
    const jobs = jobsOf(out);
    for (const job of jobs) expect(job.result?.options.map(({ aim }) => aim)).toEqual(['full']);
    expect(said(jobs[0], 'aim')).toMatchObject({ value: 'full', origin: 'flag', where: '--aim' });
    expect(err).toContain("leastcut: --aim full in place of the list's aim of 1 job\n");
    expect(err).not.toContain('--risk-pct');
  });

  test('what the list says has its file and line, and is not of the environment', async () => {
    const { list } = listed(...rows);
    const { out, err } = await runLeastcut(['batch', list, '--workers', '1'], {
      env: { LEASTCUT_AIM: 'correct' },
    });
    const [a, b] = jobsOf(out);
    const where = `${list}:2`;
    expect(said(a, 'aim')).toMatchObject({ value: 'enhance', origin: 'list', where });
    expect(said(a, 'risk_pct')).toMatchObject({ value: 3, origin: 'list', where });
    expect(said(b, 'aim')).toMatchObject({ value: 'correct', origin: 'environment' });
    expect(err).not.toContain('in place of');
  });

  test('an aim in per cent may have its sign', async () => {
    const { batch } = listed('job,readings,aim', 'a,a.csv,70 %', 'b,b.csv,');
    const aimsOf = (out: string) => jobsOf(out).map(({ result }) => result?.options[0]?.aim);
    expect(aimsOf((await batch()).out)[0]).toBe('70 %');
    expect(aimsOf((await batch('--aim', '55%')).out)).toEqual(['55 %', '55 %']);
  });
});

test.each([
  ['reading_unit', 'um', ''],
  ['nearside', 'right', ''],
  ['panel_names', 'x', 'error[batch-column-unknown]: "panel_names"'],
  ['panel', 'roof', 'error[batch-column-unknown]: "panel"'],
])(
  'a table with job and readings is a list, whatever else it names: %s',
  async (column, cell, told) => {
    const { batch } = listed(`job,readings,${column}`, `a,a.csv,${cell}`);
    const { err } = await batch('--command', 'survey');
    expect(err).toContain(told === '' ? '1 job: 1 done' : told);
  },
);

describe('a batch tells', () => {
  test('how many warnings a job has, on its page and in its rows', async () => {
    const { folder, batch } = listed('job,readings', 'a,a.csv', 'w,w.csv');
    writeFileSync(
      join(folder, 'w.csv'),
      readings.replace(/^(bonnet,[^\n]*?)\d+(\.\d+)?$/m, '$199999'),
    );
    const rows = (
      await batch('--command', 'survey', '--format', 'csv', '--fields', 'job,n_warnings')
    ).out;
    const [, a = '', w = ''] = rows.split('\n');
    expect(a).toBe('a,0');
    expect(w).toMatch(/^w,[1-9]/);
    const page = (await batch('--command', 'survey', '--format', 'text')).out;
    expect(page).toContain(`Remarks: w ${w.slice(2)}: see the record of each, or run it alone`);
  });

  test('what was not begun, and where what is done stands', async () => {
    const { folder, batch } = listed('job,readings', 'bad,bad.csv', 'a,a.csv', 'b,b.csv');
    const words = ['--command', 'survey', '--fail-fast'];
    const page = (await batch(...words, '--format', 'text')).out;
    expect(page).toMatch(/^Surveys: 1 job of 3$/m);
    expect(page).toContain('Not begun: 2 jobs');
    const out = join(folder, 'out.ndjson');
    const { err } = await batch(...words, '-o', out);
    expect(err).toContain(
      `what there is stands in ${JSON.stringify(`${out}.part`)}; the same with --resume goes on from there`,
    );
    expect(existsSync(`${out}.part`)).toBe(true);
  });

  test.each(['--summary', '--reorder'])('that %s takes a file', async (flag) => {
    const { code, err } = await listed('job,readings', 'a,a.csv').batch(flag, '-');
    expect(code).toBe(2);
    expect(err).toContain(`${flag} takes a file, and - is none`);
  });

  test('by its exit what all jobs ended with, where none is done', async () => {
    const { batch } = listed('job,readings', 'a,none.csv', 'b,nothing.csv');
    expect((await batch('--command', 'survey')).code).toBe(66);
    const mixed = listed('job,readings', 'a,none.csv', 'bad,bad.csv');
    expect((await mixed.batch('--command', 'survey')).code).toBe(65);
  });
});

test('a file without a byte is told as empty, with what a list holds', async () => {
  const { list, batch } = listed();
  writeFileSync(list, '');
  const { code, out, err } = await batch();
  expect({ code, out }).toEqual({ code: 65, out: '' });
  expect(err).toContain('error[file-empty]');
  expect(err).toContain('job,readings and a row for each');
});
