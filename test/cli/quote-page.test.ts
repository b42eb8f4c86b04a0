import { describe, expect, test } from 'vitest';
import { displayWidth } from '../../src/render/printable.ts';
import { askLeastcut } from './ask-leastcut.ts';

const cars = [
  ['samples/sound-saloon/readings.csv', '--job', 'samples/sound-saloon/job.json'],
  ['samples/older-coupe/readings.csv', '--job', 'samples/older-coupe/job.json'],
  ['samples/plastic-bumpers/readings.tsv', '--job', 'samples/plastic-bumpers/job.json'],
];

describe.concurrent.each(cars)('the quote of %s', (...words: readonly string[]) => {
  test.each([80, 120])('is at most 51 lines of %i columns', async (width) => {
    const quote = ['quote', ...words, '--shop', 'samples/shop.json'];
    const { code, out } = await askLeastcut(quote, { env: { COLUMNS: String(width) } });
    const lines = out.trimEnd().split('\n');
    expect(code).toBe(0);
    expect(lines.length).toBeLessThanOrEqual(51);
    expect(lines.filter((line) => displayWidth(line) > width)).toEqual([]);
  });
});

test('a page for the customer has a day on it only where one is asked for', async () => {
  const [car = ''] = cars[0] ?? [];
  const quote = ['quote', car, '--shop', 'samples/shop.json', '--format', 'html'];
  const [undated, dated] = await Promise.all([
    askLeastcut(quote),
    askLeastcut([...quote, '--date', 'today']),
  ]);
  expect(undated.out).not.toMatch(/\d{4}-\d\d-\d\d/);
  expect(dated.out).toMatch(/\d{4}-\d\d-\d\d; holds until \d{4}-\d\d-\d\d/);
});
