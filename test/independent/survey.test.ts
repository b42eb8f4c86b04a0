/**
 * Surveys against an independent computation in R (`survey.R`, base R 4.2.2), which shares the formulas and
 * no code. `Rscript test/independent/survey.R` writes `expected.json` anew; the cars are invented.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { runLeastcut } from '../cli/run-leastcut.ts';

type Part = {
  readonly mean_um: number;
  readonly sd_um: number;
  readonly budget_um: number;
  readonly k?: number;
  readonly moderated_sd_um?: number;
  readonly moderated_dof?: number;
  readonly thinnest_um?: number;
  readonly clear_mean_um?: number;
  readonly clear_sd_um?: number;
  readonly bound_by?: string;
};
type Zone = Part & { readonly zone: string };
type Panel = Part & { readonly panel: string; readonly zones?: readonly Zone[] };
type Expected = { readonly file: string; readonly panels: readonly Panel[] };

type Found = Record<string, unknown> & {
  readonly panel: string;
  readonly clear: Record<string, number>;
  readonly limits: readonly { readonly code: string; readonly value: number }[];
  readonly if_otherwise: { readonly if_word_holds_um: number } | null;
  readonly why: { readonly thinnest: { readonly tolerance_factor: number } | null };
  readonly zones: readonly (Found & { readonly zone: string })[];
};

const folder = new URL('.', import.meta.url);
const cars = JSON.parse(readFileSync(new URL('expected.json', folder), 'utf8')) as Expected[];

async function survey({ file, panels }: Expected): Promise<readonly Found[]> {
  const asked = panels.flatMap(({ panel }) => ['--why', panel]);
  const words = ['survey', `test/independent/${file}`, ...asked, '--format', 'json'];
  return JSON.parse((await runLeastcut(words)).out).panels;
}

/** R takes every panel by its word; what is worked to near a line is no matter of the formulas it shares. */
function byItsWord({ limits, if_otherwise, ...found }: Found) {
  const own = limits.filter(({ code }) => code !== 'near-line');
  const least = own.reduce((one, other) => (other.value < one.value ? other : one));
  return {
    budget_um: if_otherwise?.if_word_holds_um ?? found['budget_um'],
    bound_by: least.code,
  };
}

function expectSame(panel: Found, wanted: Part): void {
  const { clear, why, ...found } = panel;
  const { bound_by, ...numbers } = wanted;
  const flat: Record<string, unknown> = {
    ...found,
    ...byItsWord(panel),
    clear_mean_um: clear['mean_um'],
    clear_sd_um: clear['sd_um'],
    k: why.thinnest?.tolerance_factor,
  };
  for (const [key, value] of Object.entries(numbers)) {
    if (typeof value !== 'number') continue;
    expect.soft(Math.abs(Number(flat[key]) - value), key).toBeLessThan(1.1e-6);
  }
  if (bound_by !== undefined) expect(flat['bound_by']).toBe(bound_by);
}

test('the cars hold panels in two zones and panels that only look like it', () => {
  const mixed = cars.map(({ panels }) => panels.filter(({ zones }) => zones !== undefined).length);
  expect(mixed.filter((count) => count > 0).length).toBeGreaterThanOrEqual(3);
  const roofOf = (file: string) =>
    cars.find((car) => car.file === file)?.panels.find(({ panel }) => panel === 'roof');
  // Halves 32.7 µm apart on a car whose panels vary by more than a quarter of that; two levels of repaint.
  expect(roofOf('uneven-mixed.csv')?.bound_by).toBe('clear');
  expect(roofOf('uneven-mixed.csv')?.zones).toBeUndefined();
  expect(roofOf('cut-through.csv')).toMatchObject({ budget_um: 0 });
  expect(roofOf('cut-through.csv')?.zones).toBeUndefined();
});

describe.each(cars)('$file', async (car) => {
  const found = new Map((await survey(car)).map((panel) => [panel.panel, panel]));
  test.each(car.panels)('has the numbers of R to 1e-6 on the $panel', (wanted) => {
    const panel = found.get(wanted.panel);
    if (panel === undefined) throw new Error(`${wanted.panel} was not surveyed`);
    expectSame(panel, wanted);
    expect(panel.zones.map(({ zone }) => zone)).toEqual(
      (wanted.zones ?? []).map(({ zone }) => zone),
    );
    for (const [i, zone] of panel.zones.entries()) {
      expectSame(zone, wanted.zones?.[i] ?? wanted);
    }
  });
});
