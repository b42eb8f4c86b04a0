/** Whatever a survey warns of or takes for granted is told by every page and record that rests on it. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { askLeastcut } from '../cli/ask-leastcut.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';

type Remark = { readonly code: string; readonly text: string };
type Recorded = {
  readonly assumptions: readonly Remark[];
  readonly notes: readonly Remark[];
};

const STEPS = [-1.3, -0.4, 0.2, 0.6, 0.9];
const rowsOf = (panel: string, mean: number): readonly string[] =>
  STEPS.map((step, i) => `${panel},${i + 1},${(mean + step).toFixed(1)},`);

/** As thick all over as a car under a film, or painted again; two doors that differ; a layer read; work stated. */
const THICK = [
  'panel,point,reading_um,layer',
  ...rowsOf('bonnet', 164),
  ...rowsOf('roof', 166),
  ...rowsOf('boot lid', 165),
  ...rowsOf('front left wing', 165),
  ...rowsOf('front right wing', 166),
  ...rowsOf('front left door', 154),
  ...rowsOf('front right door', 180),
  'roof,1,41,clear',
  '',
].join('\n');
const THICK_JOB = {
  schema: 'leastcut/job/1',
  template: 'saloon',
  finish: 'clear-over-base',
  taken_um: 0,
  panels: { bonnet: { substrate: 'aluminium', taken_um: 2 } },
};

let files: readonly string[] = [];
beforeAll(() => {
  const folder = temporaryFolder();
  files = ['readings.csv', '--job', 'job.json'].map((word) =>
    word.includes('.') ? join(folder, word) : word,
  );
  writeFileSync(join(folder, 'readings.csv'), THICK);
  writeFileSync(join(folder, 'job.json'), JSON.stringify(THICK_JOB));
});

const pageOf = async (command: string, ...words: readonly string[]): Promise<string> =>
  (await askLeastcut([command, ...files, ...words])).out
    .replaceAll(/<[^>]*>/g, ' ')
    .replaceAll(/\s+/g, ' ');

const recordOf = async (command: string): Promise<Recorded> =>
  JSON.parse((await askLeastcut([command, ...files, '--format', 'json'])).out) as Recorded;

const codes = (remarks: readonly Remark[]): readonly string[] => remarks.map(({ code }) => code);

test('the car of these tests makes every note that a survey has', async () => {
  expect(codes((await recordOf('survey')).notes).toSorted()).toEqual([
    'layer-readings',
    'mirror-difference',
    'record-put-back',
    'thick-baseline',
  ]);
});

describe.each([
  { page: 'the plan', words: ['plan'] },
  { page: 'the plan with -v', words: ['plan', '-v'] },
  { page: 'the card', words: ['plan', '--card'] },
  // How the survey came about is no doubt: a quote tells it with -v.
  { page: 'the quote', words: ['quote'], but: ['layer-readings', 'record-put-back'] },
  { page: 'the quote with -v', words: ['quote', '-v'] },
  { page: 'the survey', words: ['survey'] },
])('$page', ({ words: [command = '', ...words], but = [] }) => {
  test('tells every note of the survey', async () => {
    const [{ notes }, page] = await Promise.all([recordOf('survey'), pageOf(command, ...words)]);
    const untold = notes.filter(({ text }) => !page.includes(text.replaceAll(/\s+/g, ' ')));
    expect(codes(untold).toSorted()).toEqual(but);
  });

  test('begins with what puts the whole car in doubt', async () => {
    const page = await pageOf(command, ...words);
    const first = page.indexOf('Before any work: the panels agree, but their usual film of');
    expect(first).toBeGreaterThan(0);
    const answers = [' Work: ', ' May go: ', ' Keep off', 'aim clears', 'No price: '].map((word) =>
      page.indexOf(word),
    );
    expect(answers.filter((at) => at >= 0 && at < first)).toEqual([]);
    expect(answers.some((at) => at > first)).toBe(true);
  });
});

test('the page for the owner of the car says it in its own words before any choice', async () => {
  const page = await pageOf('quote', '--format', 'html');
  const first = page.indexOf('All that was measured is thick, about 1');
  expect(first).toBeGreaterThan(0);
  expect(page.indexOf('What to know')).toBeGreaterThan(first);
  expect(page).toContain('painted again all over reads so, and so does one under a film or a wrap');
});

describe.each(['plan', 'quote'])('the record of a %s', (command) => {
  test('holds all notes of the survey', async () => {
    const [survey, record] = await Promise.all([recordOf('survey'), recordOf(command)]);
    expect(record.notes).toEqual(survey.notes);
  });

  test('holds all assumptions of the survey', async () => {
    const [survey, record] = await Promise.all([recordOf('survey'), recordOf(command)]);
    expect(survey.assumptions.length).toBeGreaterThan(3);
    expect(record.assumptions).toEqual(expect.arrayContaining([...survey.assumptions]));
  });
});

describe('that a panel of aluminium was read by eddy currents', () => {
  const words = 'bonnet (aluminium) read by the eddy-current side of the gauge';
  test.each([
    { page: 'the survey', asked: ['survey'] },
    { page: 'the plan', asked: ['plan'] },
    { page: 'the card', asked: ['plan', '--card'] },
    { page: 'the quote', asked: ['quote'] },
  ])('is told by $page', async ({ asked: [command = '', ...more] }) => {
    const job = join(temporaryFolder(), 'thick-by-its-maker.json');
    writeFileSync(job, JSON.stringify({ ...THICK_JOB, clear_um: 60, under_um: 105 }));
    const { out } = await askLeastcut([command, files[0] ?? '', '--job', job, ...more]);
    expect(out.replaceAll(/\s+/g, ' ')).toContain(words);
  });

  test('is an assumption of every record, as is what the template says of the others', async () => {
    const records = await Promise.all(['survey', 'plan', 'quote'].map(recordOf));
    for (const { assumptions } of records) {
      expect(codes(assumptions)).toEqual(expect.arrayContaining(['eddy-current', 'materials']));
      const told = assumptions.find(({ code }) => code === 'eddy-current');
      expect(told?.text.startsWith(words)).toBe(true);
    }
  });
});

describe('a thick car with one thin panel', () => {
  const readings = (): string => {
    const file = join(temporaryFolder(), 'thin.csv');
    const thick = ['roof', 'boot lid', 'front left wing', 'front right wing', 'front left door'];
    const rows = [...rowsOf('bonnet', 122), ...thick.flatMap((panel) => rowsOf(panel, 152))];
    writeFileSync(file, ['panel,point,reading_um,layer', ...rows, ''].join('\n'));
    return file;
  };
  const page = async (...words: readonly string[]): Promise<string> =>
    (await askLeastcut([...words, readings(), '--job', files.at(-1) ?? ''])).out.replaceAll(
      /\s+/g,
      ' ',
    );

  test.each([['survey'], ['plan'], ['quote'], ['plan', '--card']])(
    'is told in both readings before %s %s answers',
    async (...words) => {
      const said = await page(...words.filter((word) => word !== undefined));
      const first = said.indexOf('Before any work: most panels agree on');
      expect(first).toBeGreaterThan(0);
      const answer = [' May go: ', ' Work: ', ' Keep off', 'aim clears'].map((word) =>
        said.indexOf(word),
      );
      expect(answer.filter((at) => at >= 0 && at < first)).toEqual([]);
    },
  );

  test('has what all the others hang on told once, and a clear read by what it frees', async () => {
    const said = await page('survey');
    expect(said.match(/if bonnet shows the factory’s film/g)).toHaveLength(1);
    expect(said).toMatch(
      /0\.00 may go if cut-back, [\d.]+ µm if original; the clear of bonnet read/,
    );
  });
});
