/** A batch for people: its page shows what its records hold, and a want of prices is told. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { runLeastcut } from '../run-leastcut.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const week = 'samples/week/jobs.csv';
const batch = async (...more: readonly string[]) => {
  const { out, err, code } = await runLeastcut(['batch', week, '--workers', '1', ...more], {
    env: { COLUMNS: '100' },
  });
  return { out: out.replaceAll('\u00a0', ' '), err, code };
};

type QuoteRecord = {
  readonly job: string;
  readonly result: { readonly options: readonly { readonly total_minor: number | null }[] };
};

test('the page of quotes has the least and the most of each record, as money is written', async () => {
  const [page, records] = await Promise.all([
    batch('--shop', 'samples/shop.json', '--format', 'text'),
    batch('--shop', 'samples/shop.json'),
  ]);
  const jobs = records.out
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as QuoteRecord);
  expect(jobs).toHaveLength(3);
  for (const { job, result } of jobs) {
    const totals = result.options.map(({ total_minor }) => Number(total_minor) / 100);
    const money = (value: number): string =>
      value.toLocaleString('en-GB', { minimumFractionDigits: 2 });
    const ends = [...new Set([Math.min(...totals), Math.max(...totals)].map(money))];
    const row = page.out.split('\n').find((line) => line.startsWith(job));
    expect(row).toContain(`${ends.join('–')} GBP`);
  }
});

test('quotes without a price are counted at the end, with what the shop file would have to say', async () => {
  const [without, within, plans] = await Promise.all([
    batch(),
    batch('--shop', 'samples/shop.json'),
    batch('--command', 'plan'),
  ]);
  expect(without.err).toContain(
    '3 quotes without a price: the shop file (--shop) does not say prices.currency, prices.labour_minor_per_h',
  );
  expect(without.code).toBe(0);
  for (const { err } of [within, plans]) expect(err).not.toContain('without a price');
});

test.each(['text', 'md', 'html'])(
  'a page as %s is made at the end, of every job once',
  async (format) => {
    const { out } = await batch('--command', 'survey', '--format', format);
    for (const job of ['meridew', 'quillon', 'pipkin']) expect(out.split(job)).toHaveLength(2);
  },
);

test('the page and the rows of quotes say which aims they are of, and name a car that nothing is done to', async () => {
  const folder = temporaryFolder();
  const thin = [1, 2, 3].map((point) => `bonnet,${point},5${point}`).join('\n');
  writeFileSync(join(folder, 'thin.csv'), `panel,point,reading_um\n${thin}\n`);
  writeFileSync(join(folder, 'sound.csv'), readFileSync('samples/sound-saloon/readings.csv'));
  writeFileSync(
    join(folder, 'jobs.csv'),
    'job,readings,aim\nthin one,thin.csv,\nsound one,sound.csv,70\nboth,sound.csv,\n',
  );
  const words = ['batch', join(folder, 'jobs.csv'), '--shop', 'samples/shop.json'];
  const page = (await runLeastcut([...words, '--format', 'text'])).out.replaceAll('\u00a0', ' ');
  expect(page).toMatch(/^both +– +done +enhance–full /m);
  expect(page).toMatch(/^sound one +– +done +70 % /m);
  expect(page).toContain('Nothing polished: thin one\n');
  const rows = (await runLeastcut([...words, '--format', 'csv', '--fields', 'job,aims'])).out;
  expect(rows).toContain('both,enhance correct full\n');
  expect(rows).toContain('sound one,70%\n');
});
