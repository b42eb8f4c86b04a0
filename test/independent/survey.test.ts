/**
 * Surveys against an independent computation in R (`survey.R`, base R 4.2.2), which shares the formulas and
 * no code. `Rscript test/independent/survey.R` writes `expected.json` anew; the cars are invented.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { askLeastcut } from '../cli/ask-leastcut.ts';

type Part = {
  readonly mean_um: number;
  readonly sd_um: number;
  readonly budget_um?: number;
  readonly k?: number;
  readonly moderated_sd_um?: number;
  readonly moderated_dof?: number;
  readonly thinnest_um?: number;
  readonly clear_mean_um?: number;
  readonly clear_sd_um?: number;
  readonly bound_by?: string;
  readonly other_side_prob?: number;
  readonly repaint_prob?: number;
};
type Zone = Part & { readonly zone: string };
type Panel = Part & { readonly panel: string; readonly zones?: readonly Zone[] };
type Expected = { readonly file: string; readonly panels: readonly Panel[] };

type Found = Record<string, unknown> & {
  readonly panel: string;
  readonly clear: Record<string, number>;
  readonly may_be: readonly { readonly condition: string; readonly condition_prob: number }[];
  readonly why: { readonly thinnest: { readonly tolerance_factor: number } | null };
  readonly zones: readonly (Found & { readonly zone: string })[];
};

const folder = new URL('.', import.meta.url);
const cars = JSON.parse(readFileSync(new URL('expected.json', folder), 'utf8')) as Expected[];

async function survey({ file, panels }: Expected): Promise<readonly Found[]> {
  const asked = panels.flatMap(({ panel }) => ['--why', panel]);
  const words = ['survey', `test/independent/${file}`, ...asked, '--format', 'json'];
  return JSON.parse((await askLeastcut(words)).out).panels;
}

/** What R calls the clear, over all that a panel may be, is told as its line where that is near. */
const asInR = (code: unknown): unknown => (code === 'near-line' ? 'clear' : code);

/** Given that it is no repaint, as R has it. */
function chanceOf({ may_be }: Found, conditions: readonly string[]): number {
  const prob = (some: readonly string[]): number =>
    may_be.reduce((sum, one) => (some.includes(one.condition) ? sum + one.condition_prob : sum), 0);
  return conditions.includes('refinished')
    ? prob(conditions)
    : prob(conditions) / (1 - prob(['refinished']));
}

function expectSame(panel: Found, wanted: Part): void {
  const { clear, why, ...found } = panel;
  const { bound_by, ...numbers } = wanted;
  const flat: Record<string, unknown> = {
    ...found,
    bound_by: asInR(panel['bound_by']),
    other_side_prob: chanceOf(panel, ['cut-back', 'original']),
    repaint_prob: chanceOf(panel, ['refinished']),
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
