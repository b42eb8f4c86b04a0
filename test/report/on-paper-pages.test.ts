/** On a page for a file no line sends its reader to an option; at a terminal the same lines do. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { askLeastcut } from '../cli/ask-leastcut.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';

const CAR = ['samples/sound-saloon/readings.csv', '--template', 'saloon'];
/** A point of the bonnet was not read again. */
const after = join(temporaryFolder(), 'after.csv');
writeFileSync(
  after,
  readFileSync('samples/sound-saloon/after.csv', 'utf8').replace(/^bonnet,3,.*\r?\n/mu, ''),
);
const AGAIN = ['samples/sound-saloon/readings.csv', after, '--marked'];
const PAGES: readonly { readonly words: readonly string[]; readonly more: string }[] = [
  { words: ['plan', ...CAR], more: ' (-v: stages, days)' },
  { words: ['survey', ...CAR], more: ' (-v: grounds)' },
  { words: ['compare', ...AGAIN], more: ' (-v: which)' },
  { words: ['explain'], more: ' (-v lists them)' },
  { words: ['doctor'], more: ': -v lists them' },
];

test.each(PAGES)('$words.0 for a file names no option as the place of more', async (one) => {
  const page = async (...how: readonly string[]): Promise<string> => {
    const { out } = await askLeastcut([...one.words, ...how]);
    return out.replace(/<style>[^<]*<\/style>/u, '').replace(/\s+/gu, ' ');
  };
  expect(await page()).toContain(one.more);
  for (const format of ['md', 'html']) {
    const filed = await page('--format', format);
    expect(filed.length).toBeGreaterThan(300);
    expect(filed).not.toContain(one.more);
    // What a page explains of an option is its matter; `(-v …)` points away from it.
    expect(filed).not.toMatch(/[(:] ?-v\b/u);
  }
});

test('nor does a quote for the shop, of which no stock is listed', async () => {
  const words = ['quote', ...CAR, '--shop', 'samples/shop.json'];
  const { out } = await askLeastcut(words);
  expect(out.replace(/\s+/gu, ' ')).toMatch(/no stock listed of \d+ \(-v\)/u);
  for (const format of ['md', 'html']) {
    const filed = (await askLeastcut([...words, '--format', format])).out;
    expect(filed).not.toContain('(-v)');
  }
});
