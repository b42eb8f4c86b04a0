import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { askLeastcut } from './ask-leastcut.ts';
import { temporaryFolder } from './temporary-folder.ts';

const car = 'samples/sound-saloon';
const visits = ['compare', `${car}/readings.csv`, `${car}/after.csv`, '--marked'];
const job = ['--job', `${car}/job.json`];
const folder = temporaryFolder();
const at = (name: string): string => join(folder, name);

const plan = at('plan.json');
beforeAll(async () => {
  const { out, code } = await askLeastcut([
    'plan',
    `${car}/readings.csv`,
    ...job,
    '--format',
    'json',
  ]);
  expect(code).toBe(0);
  writeFileSync(plan, out);
});

describe('the loop of a visit', () => {
  test('goes from a plan to a film record, and the next survey knows what came off', async () => {
    const record = at('record.json');
    const run = await askLeastcut([
      ...visits,
      ...job,
      '--plan',
      plan,
      '--record',
      record,
      '--date',
      '2026-11-25',
    ]);
    expect(run.code).toBe(0);
    expect(run.out).toContain('Against the plan');
    expect(run.err).toContain(
      `leastcut: film record written; "film_record": ${JSON.stringify(record)} in the job file hands it to the next survey and plan\n`,
    );
    const life = async (...words: readonly string[]): Promise<number> => {
      const { out } = await askLeastcut([
        'survey',
        `${car}/after.csv`,
        ...job,
        ...words,
        '--format',
        'json',
      ]);
      const { panels } = JSON.parse(out) as {
        panels: readonly { panel: string; limits: readonly { code: string; value: number }[] }[];
      };
      const roof = panels.find(({ panel }) => panel === 'roof');
      return roof?.limits.find(({ code }) => code === 'life')?.value ?? 0;
    };
    expect(await life('--film-record', record)).toBeLessThan((await life()) - 1);
  });

  test('says nothing of the record with -q', async () => {
    const words = [...visits, ...job, '--date', '2026-11-25', '--record', at('quiet.json'), '-q'];
    const { code, err } = await askLeastcut(words);
    expect([code, err]).toEqual([0, '']);
  });

  test('adds a visit to an earlier record and leaves that one as it was', async () => {
    const first = at('first.json');
    const text = readFileSync('samples/film-record.json', 'utf8');
    writeFileSync(first, text);
    const more = [...visits, ...job, '--film-record', first, '--date', '2026-11-25', '--record'];
    expect((await askLeastcut([...more, at('second.json')])).code).toBe(0);
    const { visits: kept } = JSON.parse(readFileSync(at('second.json'), 'utf8')) as {
      visits: readonly { date: string }[];
    };
    expect(kept.map(({ date }) => date)).toEqual(['2023-04-11', '2025-09-02', '2026-11-25']);
    const over = await askLeastcut([...more, first, '--force']);
    expect([over.code, readFileSync(first, 'utf8')]).toEqual([73, text]);
  });

  test('never writes over the record that the job names', async () => {
    const named = at('job.json');
    writeFileSync(
      named,
      JSON.stringify({ schema: 'leastcut/job/1', film_record: 'kept.json', template: 'saloon' }),
    );
    const kept = readFileSync('samples/film-record.json', 'utf8');
    writeFileSync(at('kept.json'), kept);
    const { code, err } = await askLeastcut([
      ...visits,
      '--job',
      named,
      '--record',
      at('kept.json'),
      '--date',
      '2026-11-25',
      '--force',
    ]);
    expect(err).toContain('[output-is-input]');
    expect([code, readFileSync(at('kept.json'), 'utf8')]).toEqual([73, kept]);
  });

  test('needs a day for a record', async () => {
    const { code, err } = await askLeastcut([...visits, '--record', at('undated.json')]);
    expect(code).toBe(2);
    expect(err).toContain('--record needs the day of the visit');
  });

  test('keeps what the planned steps took for the shop’s rates, and only with the plan', async () => {
    const out = at('rates.json');
    const words = [...visits, ...job, '--date', '2026-11-25', '--rates-out', out];
    const without = await askLeastcut(words);
    expect([without.code, without.err]).toEqual([2, expect.stringContaining('needs the plan')]);
    expect((await askLeastcut([...words, '--plan', plan])).code).toBe(0);
    const { observations } = JSON.parse(readFileSync(out, 'utf8')) as {
      observations: readonly { panel: string; vehicle: string; steps: readonly object[] }[];
    };
    expect(observations).toHaveLength(12);
    expect(observations[0]).toMatchObject({ vehicle: 'FH-1042', date: '2026-11-25' });
    const next = await askLeastcut(['plan', `${car}/readings.csv`, '--rates', out]);
    expect(next.code).toBe(0);
    expect(next.out.replaceAll(/\s+/g, ' ')).toContain('rates from 12 observations of 1 vehicle');
  });
});

describe('the exit code', () => {
  const stop = ['compare', 'before.csv', 'after.csv', '--marked', '--template', 'saloon'];
  const inFolder = 'test/cases/compare-check-stop';
  const words = stop.map((word) => (word.endsWith('.csv') ? `${inFolder}/${word}` : word));

  test('is 1 for a panel to stop at only where --check asks for it', async () => {
    expect((await askLeastcut(words)).code).toBe(0);
    expect((await askLeastcut([...words, '--check'])).code).toBe(1);
    expect((await askLeastcut([...words, '--check', '--panel', 'bonnet'])).code).toBe(0);
  });
});

describe('what is wrong with files that both gauges share', () => {
  test('is told once, and like mistakes in two places are told twice', async () => {
    const misspelt = at('misspelt.json');
    writeFileSync(
      misspelt,
      '{ "schema": "leastcut/job/1",\n"panels": {\n"bonnet": { "finsh": "matte" },\n"roof": { "finsh": "matte" } } }',
    );
    const gauge = at('gauge.json');
    const check = ['gauge', 'samples/gauge-checks.csv', '--gauge-out', gauge];
    expect((await askLeastcut(check)).code).toBe(0);
    for (const more of [[], ['--gauge-after', gauge]]) {
      const { err, code } = await askLeastcut([...visits, '--job', misspelt, ...more]);
      expect(code).toBe(78);
      const places = [...err.matchAll(/misspelt\.json:(\d+):\d+: error/g)].map(([, line]) => line);
      expect(places).toEqual(['3', '4']);
    }
  });
});
