import { describe, expect, test } from 'vitest';
import { askLeastcut } from '../cli/ask-leastcut.ts';

type Panel = {
  readonly panel: string;
  readonly n_points: number;
  readonly zones: readonly unknown[];
  readonly budget_um: number;
  readonly uncertainty: { readonly sources: readonly { readonly share: number }[] } | null;
  readonly why: { readonly readings: readonly unknown[] } | null;
  readonly advice: readonly { readonly code: string; readonly value?: number }[];
};

const cars: readonly (readonly string[])[] = [
  ['samples/sound-saloon/readings.csv', '--job', 'samples/sound-saloon/job.json'],
  ['samples/older-coupe/readings.csv', '--job', 'samples/older-coupe/job.json'],
  ['samples/plastic-bumpers/readings.tsv', '--job', 'samples/plastic-bumpers/job.json'],
];

async function everyPanelOf(car: readonly string[]) {
  const { out } = await askLeastcut(['survey', ...car, '--format', 'json']);
  const { panels } = JSON.parse(out) as { panels: readonly Panel[] };
  return { panels, asked: panels.flatMap(({ panel }) => ['--why', panel]) };
}

describe.each(cars)('each panel of %s taken apart', (...car) => {
  test('says what it is, how sure that is, what limits it and what would help', async () => {
    const { panels, asked } = await everyPanelOf(car);
    const { out } = await askLeastcut(['survey', ...car, ...asked]);
    const pages = out.split(/^Why /m).slice(1);
    expect(pages.length).toBeGreaterThanOrEqual(panels.length);
    for (const page of pages) {
      expect(page).toMatch(/^What it is: /m);
      expect(page).toMatch(/^What limits it/m);
      expect(page).toMatch(/\(binds\)/);
      expect(page).toMatch(/^What would help(;|$)/m);
    }
    const sure = out.match(/^How sure: /gm) ?? [];
    expect(sure).toHaveLength(panels.length);
  });

  test('fits into 80 columns in either unit, and in mil names no µm', async () => {
    const { asked } = await everyPanelOf(car);
    const [um, mil] = await Promise.all(
      ['um', 'mil'].map((unit) =>
        askLeastcut(['survey', ...car, ...asked, '--show-unit', unit]).then((run) => run.out),
      ),
    );
    const lines = `${um}${mil}`.split('\n');
    expect(lines.filter((line) => line.length > 80)).toEqual([]);
    expect(um).toContain('µm');
    expect(mil).not.toContain('µm');
  });

  test('is in the record only where it was asked for', async () => {
    const { panels } = await everyPanelOf(car);
    expect(panels.every(({ why }) => why === null)).toBe(true);
    const read = panels.find(({ n_points }) => n_points > 0)?.panel ?? '';
    const run = await askLeastcut(['survey', ...car, '--why', read, '--format', 'json']);
    const asked = (JSON.parse(run.out) as { panels: readonly Panel[] }).panels;
    expect(asked.filter(({ why }) => why !== null).map(({ panel }) => panel)).toEqual([read]);
  });

  test('has shares of uncertainty that add up to all of it', async () => {
    const { panels } = await everyPanelOf(car);
    const known = panels.flatMap(({ uncertainty }) => uncertainty ?? []);
    expect(known.length).toBeGreaterThan(3);
    for (const { sources } of known) {
      expect(sources.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 5);
    }
  });
});

test('a panel is asked for by any name it goes by, and by none that means no panel', async () => {
  const car = ['samples/sound-saloon/readings.csv'];
  const [own, other] = await Promise.all(
    ['bonnet', 'hood'].map((name) => askLeastcut(['survey', ...car, '--why', name])),
  );
  expect(own?.out).toContain('Why bonnet: original');
  expect(other?.out).toBe(own?.out);
  const none = await askLeastcut(['survey', ...car, '--why', 'bonet']);
  expect(none.code).toBe(2);
  expect(none.err).toContain('--why "bonet" is no panel of the');
});

test('what would help stands in the order of what it frees over the car', async () => {
  const [page, { panels }] = await Promise.all([
    askLeastcut(['survey', ...(cars[1] ?? [])]),
    everyPanelOf(cars[1] ?? []),
  ]);
  const over = (code: string) =>
    panels
      .flatMap(({ advice }) => advice.flatMap((one) => (one.code === code ? (one.value ?? 0) : [])))
      .reduce((sum, gain) => sum + gain, 0);
  const codes = ['history', 'clear', 'test-spot', 'more-points', 'zinc'];
  const gains = codes.map(over);
  expect(gains).toEqual([...gains].sort((a, b) => b - a));
  expect(over('zinc')).toBeLessThan(0);
  const words = ['never worked', 'clear read', 'test spot'];
  const help = page.out.slice(page.out.indexOf('\nWould help'));
  const places = words.map((word) => help.indexOf(word));
  expect(places.every((place) => place > 0)).toBe(true);
  expect(places).toEqual([...places].sort((a, b) => a - b));
});

test('a survey of thirteen panels takes at most 48 lines', async () => {
  const { out } = await askLeastcut(['survey', ...(cars[0] ?? [])]);
  expect(out).toContain('13 panels');
  expect(out.split('\n').length - 1).toBeLessThanOrEqual(48);
});

test('the strict policy is said to allow almost nothing before any figure', async () => {
  const page = await askLeastcut(['survey', ...(cars[0] ?? []), '--policy', 'strict']);
  const [said, table] = ['Strict policy:', 'panel (µm)'].map((text) => page.out.indexOf(text));
  expect(said).toBeGreaterThan(0);
  expect(said).toBeLessThan(table ?? 0);
});

describe.each(cars)('in mil, survey and plan of %s', (...car) => {
  test.each(['survey', 'plan'])('name no thickness in µm: %s', async (command) => {
    const { out } = await askLeastcut([command, ...car, '-v', '--show-unit', 'mil']);
    // How the file gives its readings is quoted as it is; so are ids and values of settings.
    const own = out.slice(0, out.search(/^(Settings that are not built in|Inputs)$/m));
    expect(own).toContain('mil');
    expect(own.split('\n').filter((line) => line.includes('µm'))).toEqual([]);
  });
});
