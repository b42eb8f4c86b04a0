import { describe, expect, test } from 'vitest';
import { shown } from '../../src/base/rounding.ts';
import { askLeastcut } from '../cli/ask-leastcut.ts';

type PanelRecord = {
  readonly panel: string;
  readonly n_points: number;
  readonly mean_um: number | null;
  readonly sd_um: number | null;
  readonly min_um: number | null;
  readonly thinnest_um: number | null;
  readonly budget_um: number;
};

const cars = [
  ['samples/sound-saloon/readings.csv'],
  ['samples/older-coupe/readings.csv', '--job', 'samples/older-coupe/job.json'],
  ['samples/plastic-bumpers/readings.tsv', '--job', 'samples/plastic-bumpers/job.json'],
];

const digits = (value: number | null, places: number): string =>
  value === null ? '–' : shown(value, places);

describe.concurrent.each(cars)('the survey of %s', (...words: readonly string[]) => {
  test('has the same numbers on the page as in the record', async () => {
    const [text, json] = await Promise.all([
      askLeastcut(['survey', ...words]),
      askLeastcut(['survey', ...words, '--format', 'json']),
    ]);
    const panels = (JSON.parse(json.out) as { panels: readonly PanelRecord[] }).panels;
    const read = panels.filter(({ n_points }) => n_points > 0);
    const lines = text.out.split('\n');
    const head = lines.findIndex((line) => line.startsWith('panel (µm)'));
    const rows = lines.slice(head + 1, head + 1 + read.length);
    const numbers = rows.map((row) =>
      row.match(/ (\d+) +(\S+ ± \S+) +(\S+) +(\S+) +(\S+)/)?.slice(1),
    );
    expect(numbers).toEqual(
      read.map(({ n_points, mean_um, sd_um, min_um, thinnest_um, budget_um }) => [
        String(n_points),
        `${digits(mean_um, 1)} ± ${digits(sd_um, 1)}`,
        digits(min_um, 1),
        digits(thinnest_um, 1),
        digits(budget_um, 2),
      ]),
    );
  });

  test.each(['survey', 'plan', 'read'])('and %s hold no value that is none', async (command) => {
    const own = command === 'read' ? words.slice(0, 1) : words;
    const [text, json] = await Promise.all([
      askLeastcut([command, ...own, '-v']),
      askLeastcut([command, ...own, '--format', 'json']),
    ]);
    expect(text.out).not.toMatch(/NaN|Infinity|undefined|\[object|null/);
    expect(json.out).not.toMatch(/NaN|Infinity|undefined|\[object|-0[,\n]/);
  });
});
