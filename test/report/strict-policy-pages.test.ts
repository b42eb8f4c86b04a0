/** What pages say of the strict policy: that it leaves little, or that it changes nothing where no strict floor is known. */
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { askLeastcut } from '../cli/ask-leastcut.ts';

const SALOON = ['samples/sound-saloon/readings.csv', '--template', 'saloon'];
const STRICT = ['--policy', 'strict'];
const NO_FLOOR = 'Strict policy: it changes nothing here: no strict floor of';

const page = async (...words: readonly string[]): Promise<string> =>
  (await askLeastcut(words)).out.replaceAll('\u00a0', ' ').replace(/\n {2,}/g, ' ');

type Survey = {
  readonly panels: readonly { readonly budget_um: number | null }[];
  readonly assumptions: readonly { readonly code: string; readonly text: string }[];
};

const record = async (...words: readonly string[]): Promise<Survey> =>
  JSON.parse((await askLeastcut([...words, '--format', 'json'])).out) as Survey;

const budgets = ({ panels }: Survey) => panels.map(({ budget_um }) => budget_um);

describe('the strict policy on paint without a clear', () => {
  test.each([
    ['single-stage-solid', 'single-stage paint'],
    ['single-stage-metallic', 'single-stage paint'],
    ['lacquer', 'lacquer'],
  ])('of finish %s changes no figure, and every page says so', async (finish, paint) => {
    const car = [...SALOON, '--finish', finish];
    const [strict, standard] = await Promise.all([
      record('survey', ...car, ...STRICT),
      record('survey', ...car),
    ]);
    expect(budgets(strict)).toEqual(budgets(standard));
    for (const words of [['survey'], ['plan'], ['plan', '--card'], ['quote']]) {
      const said = await page(...words, ...car, ...STRICT);
      expect(said, words.join(' ')).toContain(`${NO_FLOOR} ${paint} is known`);
      expect(said, words.join(' ')).not.toContain('allows almost nothing');
    }
    expect(strict.assumptions.find(({ code }) => code === 'strict-policy')?.text).toBe(
      `strict policy changes nothing on ${paint}: no strict floor of it is known`,
    );
  });
});

test('where clear over base may lie, strict says that it leaves almost nothing', async () => {
  for (const finish of ['clear-over-base', 'matte', 'unknown']) {
    const said = await page('survey', ...SALOON, '--finish', finish, ...STRICT);
    expect(said, finish).toContain('it allows almost nothing');
    expect(said, finish).not.toContain('changes nothing');
  }
});

test('on a car of both, the panels are named on which strict changes nothing', async () => {
  const job = join(mkdtempSync(join(tmpdir(), 'leastcut-strict-')), 'job.json');
  const panels = { roof: { finish: 'lacquer' } };
  writeFileSync(job, JSON.stringify({ schema: 'leastcut/job/1', panels }));
  const said = await page('survey', ...SALOON, '--job', job, ...STRICT);
  expect(said).toContain(
    'it allows almost nothing; it changes nothing on roof: no strict floor of lacquer is known',
  );
});
