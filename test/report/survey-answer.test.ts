import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { builtInTemplates as templates } from '../../src/formats/data/templates.ts';
import { askLeastcut } from '../cli/ask-leastcut.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';

const CARS: readonly (readonly string[])[] = [
  ['samples/sound-saloon/readings.csv', '--job', 'samples/sound-saloon/job.json'],
  ['samples/older-coupe/readings.csv', '--job', 'samples/older-coupe/job.json'],
  ['samples/plastic-bumpers/readings.tsv', '--job', 'samples/plastic-bumpers/job.json'],
  ['test/cases/survey-near-line/readings.csv'],
  ['samples/sound-saloon/readings.csv', '--finish', 'matte'],
];

type Panel = {
  readonly panel: string;
  readonly n_points: number;
  readonly budget_um: number;
};

type Car = { readonly template: string; readonly panels: readonly Panel[] };

const written = (name: string, text: string): string => {
  const path = join(temporaryFolder(), name);
  writeFileSync(path, text);
  return path;
};

const page = async (words: readonly string[]): Promise<string> =>
  (await askLeastcut(['survey', ...words])).out.replaceAll('\u00a0', ' ').replace(/\n {2,}/g, ' ');

const carOf = async (words: readonly string[]): Promise<Car> =>
  JSON.parse((await askLeastcut(['survey', ...words, '--format', 'json'])).out);

const ANSWER = ['May go', 'Leave', 'Spot first', 'Not yet', 'Settle first', 'Not read'] as const;

/** Each line of the answer by its label; empty where there is none. */
const answerOf = (out: string): Readonly<Record<(typeof ANSWER)[number], string>> => {
  const lineOf = (label: string) =>
    out.split('\n').find((one) => one.startsWith(`${label}: `)) ?? '';
  const [mayGo = '', leave = '', spot = '', notYet = '', settle = '', unread = ''] =
    ANSWER.map(lineOf);
  return {
    'May go': mayGo,
    Leave: leave,
    'Spot first': spot,
    'Not yet': notYet,
    'Settle first': settle,
    'Not read': unread,
  };
};

/** The panels of a line, each side by itself: figures and what stands in brackets are left out. */
const namesIn = (line: string): readonly string[] =>
  line
    .replace(/^[A-Z][a-z ]*: (?:[\d. to]+µm(?: each)?: )?/, '')
    .replace(/ \([^)]*\)/g, '')
    .split(/, | · /)
    .map((one) => one.replace(/: .*$/, ''))
    .flatMap((one) => (one.startsWith('both ') ? sides(one) : [one]))
    .filter((one) => one !== '' && one !== 'nothing');

/** Of `both front doors` front left door and front right door: as the template orders the words. */
const sides = (both: string): readonly string[] => {
  const words = both.replace(/^both /, '').replace(/s$/, '');
  return names.filter((name) => name.replace(/\b(left|right) /, '') === words && name !== words);
};

const names: readonly string[] = [
  ...new Set(templates.flatMap(({ panels }) => panels.map(({ name }) => name))),
];

const namesOf = ({ template, panels }: Car): ReadonlyMap<string, Panel> => {
  const of = templates.find(({ id }) => id === template);
  return new Map(
    (of?.panels ?? []).flatMap(({ id, name }) =>
      panels.filter(({ panel }) => panel === id).map((panel) => [name, panel] as const),
    ),
  );
};

/** With `all 13 panels read but roof` written out by what the record says was read. */
function inFull(out: string, car: Car): string {
  const read = [...namesOf(car)].flatMap(([name, { n_points }]) => (n_points > 0 ? [name] : []));
  return out.replace(/all (\d+) panels read but ([a-z ]+)$/mu, (_, count: string, but: string) => {
    expect(read).toHaveLength(Number(count));
    const others = namesIn(`May go: ${but}`);
    expect(others.length).toBeGreaterThan(0);
    expect(read).toEqual(expect.arrayContaining([...others]));
    return read.filter((name) => !others.includes(name)).join(', ');
  });
}

describe('the answer of a survey', () => {
  test.each(CARS)('names every panel exactly once (%s)', async (...words) => {
    const [out, car] = await Promise.all([page(words), carOf(words)]);
    const told = Object.values(answerOf(inFull(out, car))).flatMap(namesIn);
    expect(told.length).toBeGreaterThan(15);
    expect([...told].sort()).toEqual([...namesOf(car).keys()].sort());
  });

  test.each(CARS)('says what may go as the table does (%s)', async (...words) => {
    const [out, car] = await Promise.all([page(words), carOf(words)]);
    const answer = answerOf(inFull(out, car));
    const panels = namesOf(car);
    const budgetsOf = (line: string) =>
      namesIn(line).flatMap((name) => panels.get(name)?.budget_um ?? []);
    const budgets = budgetsOf(answer['May go']);
    if (answer['May go'] === 'May go: nothing') expect(budgets).toEqual([]);
    else {
      expect(Math.min(...budgets)).toBeGreaterThan(0);
      const [least, most] = [Math.min(...budgets), Math.max(...budgets)].map((x) => x.toFixed(2));
      const range = least === most ? least : `${least} to ${most}`;
      expect(answer['May go']).toContain(`: ${range} µm`);
    }
    for (const label of ['Leave', 'Spot first', 'Not yet', 'Not read'] as const) {
      for (const budget of budgetsOf(answer[label])) expect(budget).toBe(0);
    }
    for (const name of namesIn(answer['Settle first'])) {
      const budget = panels.get(name)?.budget_um ?? Number.NaN;
      const figure =
        budget < 0.005 ? 'nothing may go till then' : `else no more than ${budget.toFixed(2)} µm`;
      expect(answer['Settle first']).toMatch(
        new RegExp(`${name} \\([a-z-]+ or [a-z-]+\\): ${figure}`),
      );
    }
  });

  describe('of a car whose panels may all be worked', () => {
    const ids = ['bonnet', 'roof', 'boot lid', 'left quarter', 'right quarter'];
    const car = (rows: readonly string[] = []): readonly string[] => {
      const sound = ids.flatMap((panel, i) =>
        [119, 121, 120, 122, 118].map((um, k) => `${panel},${k + 1},${um + i}`),
      );
      const text = ['panel,point,reading_um', ...sound, ...rows].join('\n');
      return [written(`all-${rows.length}.csv`, text), '--template', 'saloon'];
    };

    test('counts those that were read in place of naming each', async () => {
      const [out, { panels }] = await Promise.all([page(car()), carOf(car())]);
      expect(answerOf(out)['May go']).toMatch(
        /^May go: \d\.\d\d to \d\.\d\d µm each: all 5 panels read$/,
      );
      const allowed = panels.filter(({ budget_um }) => budget_um > 0);
      expect(allowed.map(({ panel }) => panel).toSorted()).toEqual(
        ['bonnet', 'boot', 'quarter-left', 'quarter-right', 'roof'].toSorted(),
      );
    });

    const soundDoors = ['front left door', 'front right door'].flatMap((panel) =>
      [119, 121, 120, 122, 118].map((um, k) => `${panel},${k + 1},${um}`),
    );
    const fillerOn = (...panels: readonly string[]) =>
      panels.flatMap((panel) => [1, 2, 3].map((point) => `${panel},${point},1250`));

    test('counts them all but the one that is left, or both of a pair', async () => {
      const mayGo = async (...filled: readonly string[]): Promise<string> =>
        answerOf(await page(car([...soundDoors, ...fillerOn(...filled)])))['May go'];
      expect(await mayGo('front left wing')).toMatch(
        /each: all 8 panels read but front left wing$/u,
      );
      expect(await mayGo('front left wing', 'front right wing')).toMatch(
        /each: all 9 panels read but both front wings$/u,
      );
    });

    test('names them where more that were read are left, or one is not asked about', async () => {
      const filler = fillerOn('front left wing', 'rear right door');
      expect(namesIn(answerOf(await page(car(filler)))['May go']).toSorted()).toEqual(
        ids.toSorted(),
      );
      const asked = ['bonnet', 'roof', 'boot lid', 'left quarter'];
      const some = await page([...car(), ...asked.flatMap((panel) => ['--panel', panel])]);
      expect(namesIn(answerOf(some)['May go']).toSorted()).toEqual(asked.toSorted());
    });

    test('names up to three', async () => {
      const few = ids.slice(0, 3);
      const rows = few.flatMap((panel) =>
        [124, 126, 125, 127, 123].map((um, k) => `${panel},${k + 1},${um}`),
      );
      const text = ['panel,point,reading_um', ...rows].join('\n');
      const answer = answerOf(await page([written('three.csv', text), '--template', 'saloon']));
      expect(namesIn(answer['May go']).toSorted()).toEqual(few.toSorted());
    });
  });

  test('parts panels that nothing can help from those with a way out, each with its reason', async () => {
    const coupe = answerOf(await page(CARS[1] ?? []));
    expect(coupe.Leave).toBe(
      'Leave: bonnet (thin, cut-back: nothing that could be learnt frees any film)',
    );
    expect(coupe['Spot first']).toBe(
      'Spot first: right quarter (filler, refinished) · front left wing (refinished)',
    );
    expect(answerOf(await page(CARS[4] ?? [])).Leave).toMatch(
      /^Leave: bonnet, .*, roof \(matte: nothing that could be learnt frees any film\) · /,
    );
    const onePoint = answerOf(await page(['test/cases/survey-why-one-point/readings.csv']));
    expect([onePoint.Leave, onePoint['Not yet']]).toEqual(['', 'Not yet: roof (one reading only)']);
  });

  test('lets a panel go that is near the line of thin film alone, as its plan works it', async () => {
    const few = written(
      'few.csv',
      [
        'panel,point,reading_um',
        ...['bonnet', 'roof', 'boot lid', 'left quarter'].flatMap((panel, i) =>
          [111, 116].map((um, k) => `${panel},${k + 1},${um + i}`),
        ),
      ].join('\n'),
    );
    const car = [few, '--template', 'saloon'];
    const answer = answerOf(await page(car));
    expect(await page([...car, '-v'])).toContain('over the line of thin');
    expect(answer['Settle first']).toBe('');
    expect(answer['May go']).toMatch(/: all 4 panels read$/);
    const plan = (await askLeastcut(['plan', ...car])).out.replace(/\n {2,}/g, ' ');
    expect(plan).toMatch(/Work: 4 panels/);
    expect(plan).toContain('(only 2 points: read 3 more)');
  });

  test('stands over the table, how to read it under it, with air between', async () => {
    const out = await page(CARS[1] ?? []);
    const order = [
      'May go: ',
      'Leave: ',
      'Spot first: ',
      'Not read: ',
      'Assumed, say otherwise: ',
      'panel (µm)',
      'How to read it: ',
      'Baseline: ',
      'How sure: ',
      'bonnet: ',
      'Would help',
      'Stated: ',
      'Built in',
      'Assumed: ',
    ];
    const places = order.map((start) => `\n${out}`.indexOf(`\n${start}`));
    expect(places.every((place) => place >= 0)).toBe(true);
    expect(places).toEqual([...places].sort((a, b) => a - b));
    for (const start of ['May go', 'Assumed, say', 'panel (', 'How to', 'Would help', 'Stated']) {
      expect(out).toContain(`\n\n${start}`);
    }
  });

  test('is heard line by line, and is the same in markdown and ASCII', async () => {
    const saloon = CARS[0] ?? [];
    const told = 'Settle first: front left door (original or cut-back): else no more than 2.60';
    for (const words of [['--plain'], ['--ascii']]) {
      expect(await page([...saloon, ...words])).toContain(told);
    }
    expect(await page([...saloon, '--format', 'md'])).toContain('else no more than 2.60 µm');
  });
});
