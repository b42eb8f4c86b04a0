/** A quote says what of its hours and its price waits for panels to be read again. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { askLeastcut } from '../../cli/ask-leastcut.ts';
import { temporaryFolder } from '../../cli/temporary-folder.ts';

const folder = temporaryFolder();
const SAMPLE = readFileSync('samples/sound-saloon/readings.csv', 'utf8');
/** The third point of the bonnet shows a 0. */
const withZero = join(folder, 'zero.csv');
writeFileSync(withZero, SAMPLE.replace(/^bonnet,3,.*$/mu, 'bonnet,3,0'));
/** The same bonnet, of which nothing may go. */
const matte = join(folder, 'job.json');
writeFileSync(
  matte,
  JSON.stringify({ schema: 'leastcut/job/1', panels: { bonnet: { finish: 'matte' } } }),
);

const ask = async (...words: readonly string[]): Promise<string> => {
  const { out } = await askLeastcut([
    ...['quote', '--template', 'saloon', '--finish', 'clear-over-base', '-q'],
    ...words,
  ]);
  return out.replaceAll('\u00a0', ' ');
};
const optionsOf = async (...words: readonly string[]) =>
  JSON.parse(await ask('--format', 'json', ...words)).options;
const PRICED = ['--shop', 'samples/shop.json'];

test('what waits for a panel to be read again is the quote less the same quote without that panel', async () => {
  const options = await optionsOf(withZero, ...PRICED);
  const without = await optionsOf(withZero, ...PRICED, '--job', matte);
  expect(options).toHaveLength(3);
  for (const [i, option] of options.entries()) {
    const rest = without[i];
    const part = option.once_read_again;
    expect(part.panels).toEqual(['bonnet']);
    expect(part.total_minor).toBe(option.total_minor - rest.total_minor);
    expect(part.charged_min).toBe(option.charged_min - rest.charged_min);
    expect(part.total_minor).toBeGreaterThan(0);
    for (const share of ['p50_h', 'p80_h']) {
      expect(part.time[share]).toBeCloseTo(option.time[share] - rest.time[share], 5);
      expect(part.time[share]).toBeGreaterThan(0);
    }
    expect(rest.once_read_again).toBeNull();
  }
});

test('it stands on the page of the shop and on that of the owner, in the figures of the record', async () => {
  const [{ aim, once_read_again: part }] = await optionsOf(withZero, ...PRICED);
  const hours = `${part.time.p50_h.toFixed(1)}–${part.time.p80_h.toFixed(1)} h`;
  const money = `${(part.total_minor / 100).toFixed(2)} GBP`;
  const shop = (await ask(withZero, ...PRICED)).replace(/\s+/g, ' ');
  expect(shop).toContain(`Once read again: of ${aim} ${hours} / ${money}, of `);
  expect(shop).toContain(' GBP: for panels worked only once read again (bonnet) ');
  const owner = (await ask(withZero, ...PRICED, '--format', 'html')).replace(/<[^>]*>/g, '');
  expect(owner).toContain(`Only once measured again: of A ${aim} ${hours} and ${money}, of B `);
  expect(owner).toContain(
    ' GBP: for work on the bonnet, which is done only once the readings there are taken again',
  );
});

test('without a price it is told in hours', async () => {
  const page = (await ask(withZero)).replace(/\s+/g, ' ');
  expect(page).toMatch(
    /Once read again: of enhance [\d.]+–[\d.]+ h, .* h: for panels worked only/u,
  );
  const [option] = await optionsOf(withZero);
  expect(option.once_read_again.total_minor).toBeNull();
});

test('a quote whose readings hold says nothing of it', async () => {
  const sound = 'samples/sound-saloon/readings.csv';
  expect(await ask(sound)).not.toContain('once read again');
  for (const option of await optionsOf(sound)) expect(option.once_read_again).toBeNull();
});

test('where nothing else is worked, all of it waits', async () => {
  const only = join(folder, 'only.csv');
  const [header, ...rows] = SAMPLE.split(/\r?\n/u);
  const bonnet = rows
    .filter((row) => /^bonnet,/u.test(row))
    .map((row) => row.replace(/^bonnet,3,.*$/u, 'bonnet,3,0'));
  writeFileSync(only, [header, ...bonnet, ''].join('\n'));
  const options = await optionsOf(only, ...PRICED);
  const worked = options.filter((one: { charged_min: number | null }) => one.charged_min !== null);
  expect(worked.length).toBeGreaterThan(0);
  for (const { once_read_again: part, ...option } of worked) {
    expect(part.total_minor).toBe(option.total_minor);
    expect(part.charged_min).toBe(option.charged_min);
    expect(part.time.p80_h).toBeCloseTo(option.time.p80_h, 5);
  }
});
