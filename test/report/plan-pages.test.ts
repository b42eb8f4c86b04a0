/** What a person takes from the page of a plan: the answer first, its risk and its grounds; and why, taken apart. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { shown } from '../../src/base/rounding.ts';
import { isLarge } from '../../src/report/large-assumptions.ts';
import { askLeastcut } from '../cli/ask-leastcut.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';

const saloon = 'samples/sound-saloon/';
const coupe = 'samples/older-coupe/';
const COUPE = [`${coupe}readings.csv`, '--job', `${coupe}job.json`];
const SALOON = [
  ...[`${saloon}readings.csv`, '--job', `${saloon}job.json`],
  ...['--defects', `${saloon}defects.csv`],
];

type Planned = {
  readonly panels: readonly {
    readonly panel: string;
    readonly verdict: string;
    readonly budget_um: number;
    readonly already_prob: number | null;
    readonly risk_prob: number | null;
    readonly removal_um: { readonly median: number };
  }[];
  readonly car: {
    readonly expected_panels_below_floor: number;
    readonly panels_below_floor_already: number;
  };
  readonly time: { readonly p50_h: number };
  readonly assumptions: readonly { readonly code: string }[];
};

const pageOf = async (...words: readonly string[]): Promise<string> =>
  (await askLeastcut(['plan', ...words])).out;

const recordOf = async (...words: readonly string[]): Promise<Planned> =>
  JSON.parse(await pageOf(...words, '--format', 'json')) as Planned;

/** Lines of a page put together again: the label, and what it says. */
const said = (page: string, label: string): string => {
  const [, text = ''] = page.match(new RegExp(`^${label}: ((?:.*\\n)(?:  .*\\n)*)`, 'm')) ?? [];
  return text.replaceAll(/\s+/g, ' ').trim();
};

describe('the page of a plan', () => {
  test('begins with what is worked, what is left and why, and what nobody read', async () => {
    const page = await pageOf(...COUPE);
    const places = ['Work: ', 'Leave: ', 'Not read: ', 'panel (µm)', 'How to read it: '].map(
      (text) => page.indexOf(text),
    );
    expect(places.every((place) => place > 0)).toBe(true);
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(said(page, 'Work')).toMatch(/^6 panels: 1\.5 µm each; the whole job [\d.]+ h, 3 days$/);
    expect(said(page, 'Leave')).toBe('bonnet (thin, cut-back)');
    expect(said(page, 'Spot first')).toBe(
      'right quarter (filler, refinished) · front left wing (refinished)',
    );
  });

  test('tells the risk that the plan adds from the risk that is there without it', async () => {
    const [page, { car, panels }] = await Promise.all([pageOf(...COUPE), recordOf(...COUPE)]);
    const of = (chance: (panel: Planned['panels'][number]) => number | null): number =>
      panels.reduce((sum, panel) => sum + (chance(panel) ?? 0), 0);
    expect(car.panels_below_floor_already).toBeCloseTo(
      of(({ already_prob }) => already_prob),
      4,
    );
    const added = of(({ risk_prob }) => risk_prob) - of(({ already_prob }) => already_prob);
    expect(added).toBeLessThan(0.2);
    expect(car.expected_panels_below_floor).toBeGreaterThan(1);
    const bonnet = panels.find(({ panel }) => panel === 'bonnet');
    expect(said(page, 'Risk')).toContain(
      `; on average ${shown(added, 2)} such panels more; bonnet (${shown(100 * (bonnet?.already_prob ?? 0), 0)} %) is one already.`,
    );
  });

  test('keeps to 52 lines of 80 columns for thirteen panels, to 57 where spots and test spots are told', async () => {
    const linesOf = async (words: readonly string[]) =>
      (await pageOf(...words)).split('\n').length - 1;
    expect(await linesOf(SALOON)).toBeLessThanOrEqual(52);
    expect(await linesOf(COUPE)).toBeLessThanOrEqual(57);
  });

  test('says of the ranges of a removal that the risk counts them in', async () => {
    const page = await pageOf(...SALOON);
    expect(page).toMatch(/^A {4}\d×.* \([\d.]+–[\d.]+\) +\d/m);
    expect(said(page, 'How to read it')).toContain('brackets: 9 jobs of 10, counted in risk.');
  });
});

describe('what nobody stated', () => {
  const folder = temporaryFolder();
  const job = (name: string, facts: Readonly<Record<string, unknown>>): readonly string[] => {
    const file = join(folder, `${name}.json`);
    writeFileSync(file, JSON.stringify({ schema: 'leastcut/job/1', ...facts }));
    return ['--job', file];
  };
  const few = join(folder, 'few.csv');
  const points = ['bonnet', 'roof', 'front left door'].flatMap((panel) =>
    [1, 2, 3].map((point) => `${panel},${point},${112 + point}`),
  );
  writeFileSync(few, ['panel,point,reading_um', ...points, ''].join('\n'));
  const BARE = [`${saloon}readings.csv`];

  const answers = ({ panels, time }: Planned): readonly number[] => [
    panels.reduce((sum, { budget_um }) => sum + budget_um, 0),
    panels.reduce((sum, { removal_um }) => sum + removal_um.median, 0),
    time.p50_h,
  ];
  /** By how much what may go, what is taken or the hours change at most, as shares. */
  const change = async (one: readonly string[], other: readonly string[]): Promise<number> => {
    const [before, after] = (await Promise.all([recordOf(...one), recordOf(...other)])).map(
      answers,
    );
    return Math.max(...(before ?? []).map((was, i) => Math.abs((after?.[i] ?? was) / was - 1)));
  };

  test.each([
    ['defects', BARE, [...BARE, '--defects', `${saloon}defects.csv`]],
    ['history', BARE, [...BARE, ...job('never', { taken_um: 0 })]],
    ['aim', BARE, [...BARE, '--aim', 'enhance']],
    ['finish', BARE, [...BARE, '--finish', 'matte']],
    ['template', [few, '--template', 'coupe'], [few, '--template', 'medium-van']],
  ])(
    'stands at the top where it may change the answer by more than a fifth: %s',
    async (code, one, other) => {
      expect(isLarge({ code })).toBe(true);
      expect(await change(one, other)).toBeGreaterThan(0.2);
    },
  );

  test.each([
    ['galvanised', BARE, [...BARE, ...job('zinc', { galvanised: true })]],
    ['temperature', BARE, [...BARE, ...job('warm', { panel_c: 30, room_c: 30 })]],
  ])('and at the end where it does not: %s', async (code, one, other) => {
    expect(isLarge({ code })).toBe(false);
    expect(await change(one, other)).toBeLessThan(0.2);
  });

  test('is told once, at the top with how to say it otherwise', async () => {
    const page = await pageOf(few);
    const top = said(page, 'Assumed, say otherwise');
    expect(page.indexOf('Assumed, say otherwise')).toBeLessThan(page.indexOf('panel (µm)'));
    expect(top).toContain('swirl marks of grade 3 on every panel (--defects)');
    expect(top).toContain('template coupe, which the panel names fit as well as medium-van');
    expect(top).toContain('clear over base, as nothing says otherwise (--finish)');
    const end = said(page, 'Assumed');
    expect(end).toContain('steel not galvanised');
    expect(end).not.toMatch(/swirl|template \w|clear over base|earlier work|aim correct/);
  });
});

describe('a plan taken apart', () => {
  test('says nothing twice, and no figure finer than a hundredth', async () => {
    const page = await pageOf(...SALOON, '--why', 'front left door');
    const why = page.slice(page.indexOf('Why nothing'), page.indexOf('Local work'));
    const items = why
      .replaceAll(/\n {4}/g, ' ')
      .split('\n')
      .filter((line) => line.startsWith('  '));
    expect(items.length).toBeGreaterThan(6);
    expect(new Set(items).size).toBe(items.length);
    expect(why).toContain('Why nothing stronger or quicker');
    expect(page).not.toMatch(/\d\.\d{3,} µm/);
  });

  test('sets what goes on of a limit deeper in than the next limit', async () => {
    const lines = (await pageOf(...SALOON, '--why', 'front left door')).split('\n');
    const from = lines.findIndex((line) => line.startsWith('What limits it')) + 1;
    const limits = lines.slice(
      from,
      lines.findIndex((line) => line.startsWith('Looked at')),
    );
    const [begun, goesOn] = [/^ {2}(→| ) -?\d/, /^ {6}\S/].map((form) =>
      limits.filter((line) => form.test(line)),
    );
    expect(begun?.length).toBeGreaterThan(2);
    expect(goesOn?.length).toBeGreaterThan(0);
    expect((begun?.length ?? 0) + (goesOn?.length ?? 0)).toBe(limits.length);
  });
});
