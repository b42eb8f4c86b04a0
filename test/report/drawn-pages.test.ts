/** What is drawn on the pages in HTML against the records: the same figures, beside a table of them. */
import { describe, expect, test } from 'vitest';
import { shown } from '../../src/base/rounding.ts';
import { askLeastcut } from '../cli/ask-leastcut.ts';

const saloon = 'samples/sound-saloon/';
const coupe = 'samples/older-coupe/';
const car = [`${coupe}readings.csv`, '--job', `${coupe}job.json`];
const compare = ['compare', `${saloon}readings.csv`, `${saloon}after.csv`, '--marked'];
const spot = ['spot', `${coupe}spots.csv`, '--job', `${coupe}job.json`];

const htmlOf = async (...words: readonly string[]): Promise<string> =>
  (await askLeastcut([...words, '--format', 'html'])).out;

const recordOf = async <T>(...words: readonly string[]): Promise<T> =>
  JSON.parse((await askLeastcut([...words, '--format', 'json'])).out) as T;

const textOf = (html: string): string => html.replaceAll(/<[^>]+>/g, '').replaceAll('\u00a0', ' ');

/** The rows of the tables after the heading: cells as text, and what a drawing says in words. */
function rowsAfter(html: string, heading: string): readonly (readonly string[])[] {
  const after = html.slice(html.indexOf(heading));
  return [...after.matchAll(/<tr>(.*?)<\/tr>/g)].map(([, row = '']) =>
    [...row.matchAll(/<t[hd]\b[^>]*>(.*?)<\/t[hd]>/g)].map(([, cell = '']) =>
      textOf(cell.match(/<desc>(.*?)<\/desc>/)?.[1] ?? cell),
    ),
  );
}

const numbersIn = (text: string): readonly number[] =>
  (text.match(/-?\d+(\.\d+)?/g) ?? []).map(Number);

/** Words give four significant digits. */
function expectNear(drawn: readonly number[], wanted: readonly number[]): void {
  expect(drawn).toHaveLength(wanted.length);
  drawn.forEach((one, i) => {
    expect(Math.abs(one - (wanted[i] ?? Number.NaN))).toBeLessThanOrEqual(5.1e-4 * Math.abs(one));
  });
}

const digits = (values: readonly number[], places: number): readonly string[] =>
  values.map((value) => shown(value, places));

type Surveyed = {
  readonly n_points: number;
  readonly budget_um: number;
  readonly mean_um: number;
};

describe.concurrent('the page of a survey', () => {
  test('draws what may go of each panel as long as the record has it', async () => {
    const [html, { panels }] = await Promise.all([
      htmlOf('survey', ...car),
      recordOf<{ readonly panels: readonly Surveyed[] }>('survey', ...car),
    ]);
    const read = panels.filter(({ n_points }) => n_points > 0);
    const rows = rowsAfter(html, 'What may go, and').slice(1, read.length + 1);
    const budgets = read.map(({ budget_um }) => budget_um);
    expect(rows.map((row) => row[1])).toEqual(digits(budgets, 2));
    expectNear(
      rows.map((row) => numbersIn(row[4] ?? '')[1] ?? Number.NaN),
      budgets,
    );
  });

  test('shows every point of every panel with its value, drawn and in a table', async () => {
    const [html, { panels }] = await Promise.all([
      htmlOf('survey', ...car),
      recordOf<{ readonly panels: readonly Surveyed[] }>('survey', ...car),
    ]);
    const read = panels.filter(({ n_points }) => n_points > 0);
    const faces = html.slice(html.indexOf('Every point'));
    const drawn = [...faces.matchAll(/<svg class="points".*?<desc>(.*?)<\/desc>/g)].map(
      ([, said = '']) => said,
    );
    const values = drawn.map((said) =>
      said.split(', ').map((one) => Number.parseFloat(one.replace(/^.*: /, ''))),
    );
    expect(values.map(({ length }) => length)).toEqual(read.map(({ n_points }) => n_points));
    values.forEach((of, i) => {
      const mean = of.reduce((sum, one) => sum + one, 0) / of.length;
      // Each is shown to a tenth.
      expect(Math.abs(mean - (read[i]?.mean_um ?? Number.NaN))).toBeLessThan(0.051);
    });
    const rows = rowsAfter(faces, 'Every point').slice(1);
    expect(rows.map((row) => row[1])).toEqual(drawn);
  });

  test('marks the points that stand out, as --why does', async () => {
    const html = await htmlOf('survey', ...car);
    const why = await htmlOf('survey', ...car, '--why', 'right quarter');
    expect(textOf(why)).toContain('point 2 (212.3) is low');
    expect(html).toContain('2: 212.3 low');
  });
});

type Planned = {
  readonly steps: readonly unknown[];
  readonly removal_um: { readonly median: number; readonly low: number; readonly high: number };
  readonly budget_um: number;
};

describe.concurrent('the page of a plan', () => {
  test('draws what is taken, and how much that may turn out to be, of what may go as the record has it', async () => {
    const [html, { panels }] = await Promise.all([
      htmlOf('plan', ...car),
      recordOf<{ readonly panels: readonly Planned[] }>('plan', ...car),
    ]);
    const worked = panels.filter(({ steps }) => steps.length > 0);
    const rows = rowsAfter(html, 'What the plan takes').slice(1);
    const drawn = rows.map((row) => numbersIn(row[6] ?? ''));
    expect(drawn.length).toBeGreaterThan(3);
    expectNear(
      drawn.flatMap(([, budget = 0, taken = 0, low = 0, high = 0]) => [budget, taken, low, high]),
      worked.flatMap(({ budget_um, removal_um: { median, low, high } }) => [
        budget_um,
        median,
        low,
        high,
      ]),
    );
  });
});

type Compared = { readonly removed_um: { readonly mean: number } | null };

describe.concurrent('the page of a comparison', () => {
  test('draws pairs that lie apart by what came off', async () => {
    const [html, { panels }] = await Promise.all([
      htmlOf(...compare),
      recordOf<{ readonly panels: readonly Compared[] }>(...compare),
    ]);
    const rows = rowsAfter(html, 'Film before').slice(1);
    const came = panels.flatMap(({ removed_um }) => removed_um?.mean ?? []);
    expect(rows.map((row) => row[3])).toEqual(digits(came, 1));
    rows.forEach((row, i) => {
      const [, , before = Number.NaN, after = Number.NaN] = numbersIn(row[4] ?? '');
      // In words to a tenth each.
      expect(Math.abs(before - after - (came[i] ?? 0))).toBeLessThan(0.11);
    });
  });
});

type Rung = {
  readonly combination: string;
  readonly removal_um_per_set: { readonly low: number; readonly high: number };
};

describe.concurrent('the page of test spots', () => {
  test('draws the range of each rung as the record has it', async () => {
    const [html, { ladder }] = await Promise.all([
      htmlOf(...spot, '-v'),
      recordOf<{ readonly ladder: readonly Rung[] }>(...spot),
    ]);
    const rows = rowsAfter(html, 'ladder, mildest first').slice(1);
    expect(rows.map(([name]) => name)).toEqual(ladder.map(({ combination }) => combination));
    expectNear(
      rows.flatMap((row) => numbersIn(row[5] ?? '').slice(0, 2)),
      ladder.flatMap(({ removal_um_per_set: { low, high } }) => [low, high]),
    );
  });
});

describe.concurrent('the page of a quote', () => {
  test('has its choices side by side over one curve, with their letters on it', async () => {
    const shop = ['--shop', 'samples/shop.json', '--defects', `${saloon}defects.csv`];
    const html = await htmlOf('quote', `${saloon}readings.csv`, ...shop);
    expect(html.match(/<svg class="curve"/g)).toHaveLength(1);
    const at = html.indexOf('>what you get</th>');
    expect(at).toBeGreaterThan(0);
    expect(at).toBeLessThan(html.indexOf('<svg class="curve"'));
    const letters = [...html.matchAll(/class="letter">(\w+)</g)].map(([, one]) => one);
    const head = html.slice(at, html.indexOf('</tr>', at));
    const titles = [...head.matchAll(/>([A-Z])\W*(?:enhance|correct|full)</g)];
    expect(titles.map(([, letter]) => letter)).toEqual(letters);
    expect(letters).toHaveLength(3);
  });
});

const pages: readonly (readonly string[])[] = [
  ['survey', ...car],
  ['plan', ...car],
  ['plan', ...car, '--card'],
  spot,
  compare,
  ['gauge', 'samples/gauge-checks.csv'],
  ['grade', 'samples/class/reference.csv', 'samples/class/caja.csv'],
  ['quote', `${saloon}readings.csv`, '--shop', 'samples/shop.json'],
  ['read', `${coupe}readings.csv`],
  ['methods', 'list'],
  ['explain', 'budget'],
  ['template', 'sheet', 'saloon'],
];

describe.concurrent.each(pages)('%s %s in HTML', (...words: readonly string[]) => {
  test('is one file with one first heading, that runs and fetches nothing', async () => {
    const html = await htmlOf(...words);
    expect(html.match(/<h1\b/g)).toHaveLength(1);
    expect(html).toContain('<html lang="en">');
    expect(html).toContain('http-equiv="Content-Security-Policy"');
    expect(html).not.toMatch(/<script|https?:|\bsrc=|\bhref=|url\(/);
    expect(html).not.toMatch(/NaN|Infinity|undefined|\[object/);
  });
});
