/**
 * Surveys against an independent computation in R (`survey.R`, base R 4.2.2), which shares the formulas and
 * no code. `Rscript test/independent/survey.R` writes `expected.json` anew; the cars are invented.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { runLeastcut } from '../cli/run-leastcut.ts';

type Expected = {
  readonly file: string;
  readonly panels: readonly {
    readonly panel: string;
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
  }[];
};

const folder = new URL('.', import.meta.url);
const cars = JSON.parse(readFileSync(new URL('expected.json', folder), 'utf8')) as Expected[];

async function survey(file: string): Promise<Record<string, unknown>[]> {
  const { out } = await runLeastcut(['survey', `test/independent/${file}`, '--format', 'json']);
  return JSON.parse(out).panels;
}

describe.each(cars)('$file', async ({ file, panels: expected }) => {
  const found = new Map((await survey(file)).map((panel) => [panel['panel'], panel]));
  test.each(expected)('has the numbers of R to 1e-6 on the $panel', (wanted) => {
    const { clear, ...panel } = found.get(wanted.panel) as { clear: Record<string, number> };
    const flat: Record<string, unknown> = {
      ...panel,
      clear_mean_um: clear['mean_um'],
      clear_sd_um: clear['sd_um'],
    };
    const { panel: _, k: __, bound_by, ...numbers } = wanted;
    for (const [key, value] of Object.entries(numbers)) {
      expect.soft(Math.abs(Number(flat[key]) - value), key).toBeLessThan(1.1e-6);
    }
    if (bound_by !== undefined) expect(flat['bound_by']).toBe(bound_by);
  });
});
