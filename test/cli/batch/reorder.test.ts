import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { runLeastcut } from '../run-leastcut.ts';
import { temporaryFolder } from '../temporary-folder.ts';

type Row = Readonly<Record<string, string>>;

function rowsOf(file: string): readonly Row[] {
  const [head = '', ...lines] = readFileSync(file, 'utf8').trimEnd().split('\n');
  const names = head.split(',');
  return lines.map((line) => {
    const cells = line.split(',');
    return Object.fromEntries(names.map((name, k) => [name, cells[k] ?? '']));
  });
}

const materials = [
  { id: 'fine', pack: 250, unit: 'ml', price_minor: 1250, stock: 100 },
  { id: 'foam-soft-150', pack: 1, unit: 'pieces', price_minor: 900, stock: 1 },
  { id: 'towels', pack: 10, unit: 'pieces', price_minor: 1500, stock: 10 },
  { id: 'wax', pack: 200, unit: 'ml', price_minor: 2000 },
];
const shop = (list: readonly object[] = materials) =>
  JSON.stringify({
    schema: 'leastcut/shop/1',
    prices: { currency: 'EUR', labour_minor_per_h: 6000, materials: list },
  });

const car = (offset: number): string =>
  `panel,point,reading_um\n${['bonnet', 'roof', 'boot lid', 'left front wing']
    .flatMap((panel) => [1, 2, 3].map((point) => `${panel},${point},${118 + offset + point}\n`))
    .join('')}`;

/** So many cars in a folder with a shop file beside it; `spoiled` cannot be read. */
function week(cars: number, spoiled: readonly number[] = []) {
  const folder = temporaryFolder();
  mkdirSync(join(folder, 'cars'));
  writeFileSync(join(folder, 'shop.json'), shop());
  for (let k = 1; k <= cars; k += 1) {
    const text = spoiled.includes(k) ? 'panel,reading_um\nbonnet,thick\n' : car(k % 3);
    writeFileSync(join(folder, 'cars', `car-${k}.csv`), text);
  }
  const list = join(folder, 'to-buy.csv');
  const words = (...more: readonly string[]) => [
    ...['batch', join(folder, 'cars'), '--shop', join(folder, 'shop.json'), '--reorder', list],
    ...more,
  ];
  return { folder, list, words };
}

describe('what to buy for a batch', () => {
  test('costs what the packs cost without tax, also where the prices hold it', async () => {
    const { folder, list, words } = week(2);
    const { prices } = JSON.parse(shop()) as { prices: object };
    const tax = { name: 'VAT', rate_pct: 19, level: 'total', rounding: 'half-up', included: true };
    writeFileSync(
      join(folder, 'shop.json'),
      JSON.stringify({ schema: 'leastcut/shop/1', prices: { ...prices, tax } }),
    );
    const { err } = await runLeastcut(words('--aim', 'enhance'));
    const bought = rowsOf(list).filter(({ status }) => status === 'buy');
    expect(bought.map(({ id }) => id)).toContain('foam-soft-150');
    let sum = 0;
    for (const { id, to_buy, price_minor, cost_minor } of bought) {
      const gross = materials.find((one) => one.id === id)?.price_minor ?? 0;
      expect(Number(price_minor)).toBe(Math.round(gross / 1.19));
      expect(Number(cost_minor)).toBe(Number(to_buy) * Number(price_minor));
      sum += Number(cost_minor);
    }
    expect(err.replaceAll('\u00a0', ' ')).toContain(`${(sum / 100).toFixed(2)} EUR without tax`);
  });

  test('is what its quotes use up together, of each material as many packs as stock does not cover', async () => {
    const { list, words } = week(4);
    const { code, out, err } = await runLeastcut(words('--aim', 'enhance'));
    expect(code).toBe(0);
    type Used = { readonly id: string; readonly used_up: number; readonly quantity: number };
    const used = out
      .trimEnd()
      .split('\n')
      .flatMap((line) => {
        const { result } = JSON.parse(line) as {
          result: { options: readonly { materials: readonly Used[] }[] };
        };
        return result.options.flatMap((option) => option.materials);
      });
    const of = (id: string) => used.filter((one) => one.id === id);
    const sumOf = (id: string): number => of(id).reduce((sum, one) => sum + one.used_up, 0);
    const rows = new Map(rowsOf(list).map((row) => [row['id'], row]));

    expect(Number(rows.get('fine')?.['quantity'])).toBeCloseTo(sumOf('fine'), 4);
    expect(rows.get('fine')?.['to_buy']).toBe(
      String(Math.max(0, Math.ceil((sumOf('fine') - 100) / 250))),
    );
    const towels = Math.max(...of('towels').map(({ quantity }) => quantity));
    expect(rows.get('towels')).toMatchObject({ quantity: String(towels), used_up: '0' });
    const pads = Math.max(...of('foam-soft-150').map(({ quantity }) => quantity));
    expect(rows.get('foam-soft-150')).toMatchObject({
      ...{ status: 'buy', quantity: String(pads), jobs: '4' },
      to_buy: String(pads - 1),
      cost_minor: String(900 * (pads - 1)),
    });
    expect(rows.get('wax')).toMatchObject({ status: 'no-stock-given', to_buy: '' });
    expect(rows.get('shampoo')).toMatchObject({ status: 'not-on-price-list', stock: '' });
    expect(Number(rows.get('towel-loads')?.['quantity'])).toBe(4 * Math.ceil(towels / 12));
    expect(err).toMatch(
      /to buy for 4 jobs: \d+ packs of \d materials, [\d.]+\u00a0EUR without tax/,
    );
  });

  test('is for one job what its quote says', async () => {
    const { list, words } = week(1);
    const { out } = await runLeastcut(words('--aim', 'full'));
    type Needed = { readonly id: string; readonly to_buy: number | null };
    const { result } = JSON.parse(out) as {
      result: { options: readonly { materials: readonly Needed[] }[] };
    };
    const quoted = result.options[0]?.materials.map(({ id, to_buy }) => `${id} ${to_buy ?? ''}`);
    const listed = rowsOf(list).filter(
      ({ status }) => status !== 'wash' && status !== 'counted-at',
    );
    expect(rowsOf(list).filter(({ status }) => status === 'counted-at')).toMatchObject([
      { id: 'full', jobs: '1' },
    ]);
    expect(quoted?.length).toBeGreaterThan(8);
    expect(listed.map(({ id, to_buy }) => `${id} ${to_buy}`).sort()).toEqual(
      [...(quoted ?? [])].sort(),
    );
  });

  test('is the same by one worker and by two, and after a batch that was cut off', async () => {
    const { folder, list, words } = week(5, [3]);
    const one = await runLeastcut(words('--workers', '1', '--aim', 'enhance'));
    const whole = readFileSync(list, 'utf8');
    const two = await runLeastcut(words('--workers', '2', '--aim', 'enhance', '--force'));
    expect(two.out).toBe(one.out);
    expect(readFileSync(list, 'utf8')).toBe(whole);
    expect(two.err).toBe(one.err);
    const out = join(folder, 'out.ndjson');
    writeFileSync(`${out}.part`, one.out.split('\n').slice(0, 3).join('\n'));
    const resumed = await runLeastcut(words('-o', out, '--resume', '--aim', 'enhance', '--force'));
    expect(resumed.err).toContain('2 of them stood from before');
    expect(readFileSync(list, 'utf8')).toBe(whole);
    expect(readFileSync(out, 'utf8')).toBe(one.out);
  });

  test('names the jobs that are not in it', async () => {
    const { list, words } = week(4, [2, 3]);
    const { code, err } = await runLeastcut(words('--aim', 'enhance'));
    expect(code).toBe(3);
    expect(err).toContain('to buy for 2 jobs');
    expect(err).toContain('not in the list to buy: "car-2", "car-3"');
    expect(rowsOf(list).filter(({ status }) => status === 'job-left-out')).toMatchObject([
      { id: 'car-2', material: 'not in this list: the job is refused' },
      { id: 'car-3', material: 'not in this list: the job is refused' },
    ]);
  });

  test('counts each job at its own aim, and says at which it counts those that name none', async () => {
    const { folder, list, words } = week(2);
    const jobs = join(folder, 'jobs.csv');
    writeFileSync(jobs, 'job,readings,aim\na,cars/car-1.csv,full\nb,cars/car-1.csv,\n');
    const { err } = await runLeastcut(words().map((word) => (word.endsWith('cars') ? jobs : word)));
    expect(err).toContain(
      'one aim of each job: 1 job at "full", 1 job at "correct" (no aim said); --aim',
    );
    const both = rowsOf(list).find(({ id }) => id === 'fine')?.['used_up'];
    const used = async (aim: string): Promise<number> => {
      const { list: own, words: single } = week(1);
      await runLeastcut(single('--aim', aim));
      return Number(rowsOf(own).find(({ id }) => id === 'fine')?.['used_up']);
    };
    expect(Number(both)).toBeCloseTo((await used('full')) + (await used('correct')), 4);
  });

  test('keeps the shelves of two shops apart, and knows one shop by two paths', async () => {
    const { folder, list } = week(3);
    writeFileSync(join(folder, 'cars', 'shop.json'), shop());
    writeFileSync(join(folder, 'other.json'), shop(materials.slice(0, 1)));
    const shops = ['shop.json', 'cars/shop.json', 'other.json'];
    const rows = shops.map((file, k) => `car ${k},cars/car-1.csv,${file}\n`).join('');
    writeFileSync(join(folder, 'jobs.csv'), `job,readings,shop\n${rows}`);
    await runLeastcut(['batch', join(folder, 'jobs.csv'), '--reorder', list, '--aim', 'enhance']);
    const fine = rowsOf(list).filter(({ id }) => id === 'fine');
    expect(fine.map(({ jobs, shop: file }) => [jobs, file])).toEqual([
      ['2', join(folder, 'shop.json')],
      ['1', join(folder, 'other.json')],
    ]);
  });

  test('is not written while jobs are left to do, and replaces no file unasked', async () => {
    const { list, words } = week(4, [2]);
    const stopped = await runLeastcut(words('--fail-fast'));
    expect(stopped.err).toContain('no list to buy: not every job was done');
    expect(existsSync(list)).toBe(false);
    writeFileSync(list, 'mine');
    const again = await runLeastcut(words());
    expect(again.code).toBe(73);
    expect(readFileSync(list, 'utf8')).toBe('mine');
  });

  test('is asked of quotes alone', async () => {
    const { words } = week(1);
    const { code, err } = await runLeastcut(words('--command', 'plan'));
    expect(code).toBe(2);
    expect(err).toContain('--reorder adds up what quotes need');
  });
});
