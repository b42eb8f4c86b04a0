import { copyFileSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readRates } from '../../src/formats/rates.ts';
import { askLeastcut } from './ask-leastcut.ts';
import { projectRoot } from './run-leastcut.ts';
import { temporaryFolder } from './temporary-folder.ts';

const spots = 'samples/older-coupe/spots.csv';
const job = ['--job', 'samples/older-coupe/job.json'];
const day = ['--date', '2026-03-31'];
const inFolder = (name: string): string => join(temporaryFolder(), name);
const observationsIn = (file: string) =>
  readRates(file, readFileSync(file, 'utf8')).value?.value.observations ?? [];

describe.concurrent('--rates-out', () => {
  test('writes what the spots showed, with the day and the vehicle', async () => {
    const file = inFolder('rates.json');
    const run = await askLeastcut(['spot', spots, ...job, ...day, '--rates-out', file]);
    expect(run).toMatchObject({ code: 0, err: '' });
    expect(observationsIn(file)).toMatchObject([
      {
        date: '2026-03-31',
        vehicle: 'FH-1052',
        panel: 'boot lid',
        steps: [{ combination: 'da/foam-soft/medium', sets: 1 }],
        removed: { mean: 0.16 },
        cleared: 0.2,
      },
      { steps: [{ combination: 'da/foam-medium/medium', sets: 2 }], note: 'dusting a little' },
    ]);
  });

  test('adds to the rates that were given, in their order, and not twice', async () => {
    const [first, second] = [inFolder('first.json'), inFolder('second.json')];
    const given = join(projectRoot, 'samples/rates.json');
    const args = ['spot', spots, ...job, ...day];
    await askLeastcut([...args, '--rates', given, '--rates-out', first]);
    const before = observationsIn(given);
    expect(observationsIn(first).slice(0, before.length)).toEqual(before);
    expect(observationsIn(first)).toHaveLength(before.length + 2);
    const again = await askLeastcut([...args, '--rates', first, '--rates-out', second]);
    expect(again.out.replaceAll(/\s+/g, ' ')).toContain(
      '0 observations added to the rates; 2 stood there already',
    );
    expect(readFileSync(second, 'utf8')).toBe(readFileSync(first, 'utf8'));
  });

  test('never goes over its own input, also where the shop file names that', async () => {
    const folder = temporaryFolder();
    const own = join(folder, 'rates.json');
    copyFileSync(join(projectRoot, 'samples/rates.json'), own);
    const shop = join(folder, 'shop.json');
    writeFileSync(shop, '{ "schema": "leastcut/shop/1", "rates_file": "rates.json" }');
    for (const named of [
      ['--rates', own],
      ['--shop', shop],
    ]) {
      const run = await askLeastcut([
        'spot',
        spots,
        ...job,
        ...day,
        ...named,
        '--rates-out',
        own,
        '--force',
      ]);
      expect(run).toMatchObject({ code: 73, out: '' });
      expect(run.err).toContain('output-is-input');
    }
    expect(observationsIn(own)).toHaveLength(13);
  });

  test('writes nothing where the day or the vehicle is not said', async () => {
    const file = inFolder('rates.json');
    for (const args of [job, day]) {
      const run = await askLeastcut(['spot', spots, ...args, '--rates-out', file]);
      expect(run).toMatchObject({ code: 2, out: '' });
    }
    expect(existsSync(file)).toBe(false);
  });
});

describe.concurrent('a rates file', () => {
  test('is named by option, environment and shop file, and the first that speaks decides', async () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, 'own'));
    const shop = join(folder, 'own/shop.json');
    writeFileSync(shop, '{ "schema": "leastcut/shop/1", "rates_file": "rates.json" }');
    for (const [name, count] of [
      ['own/rates.json', 1],
      ['environment.json', 2],
      ['flag.json', 3],
    ] as const) {
      const observations = Array.from({ length: count }, (_, i) => ({
        date: '2026-01-15',
        vehicle: `V${i}`,
        combination: 'da/foam-medium/medium',
        sets: 2,
        removed_um: 2,
        standard_error_um: 0.4,
      }));
      writeFileSync(
        join(folder, name),
        JSON.stringify({ schema: 'leastcut/rates/1', observations }),
      );
    }
    const said = async (args: readonly string[], env: Record<string, string> = {}) => {
      const { out } = await askLeastcut(['methods', 'list', ...args], { env, stdin: '' });
      return /(\d) observations? of \d vehicles?/.exec(out.replaceAll(/\s+/g, ' '))?.[1];
    };
    const env = { LEASTCUT_RATES: join(folder, 'environment.json') };
    expect(await said([])).toBeUndefined();
    expect(await said(['--shop', shop])).toBe('1');
    expect(await said(['--shop', shop], env)).toBe('2');
    expect(await said(['--shop', shop, '--rates', join(folder, 'flag.json')], env)).toBe('3');
  });
});
