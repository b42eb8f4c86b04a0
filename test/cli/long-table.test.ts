import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { askLeastcut } from './ask-leastcut.ts';
import { temporaryFolder } from './temporary-folder.ts';

const panels = ['bonnet', 'roof', 'boot', 'front-left-door', 'front-right-door'];
const note = 'measured in the shade '.repeat(100);
const car = (name: string, more: readonly string[] = []): string =>
  [...panels, ...more]
    .flatMap((panel, k) =>
      [1, 2, 3].map((n) => `${name},${panel},${100 + k + n / 10 + name.length},${note}`),
    )
    .join('\n');
const head = 'vehicle,panel,reading_um,note\n';
const all = Array.from({ length: 40 }, (_, k) => car(`CAR ${k + 1}`));

function written(text: string): string {
  const file = join(temporaryFolder(), 'cars.csv');
  writeFileSync(file, text);
  return file;
}

const plain = ['--fields', 'vehicle,panel,n_readings,mean_um,sd_um,min_um'] as const;
const csv = (text: string, ...more: readonly string[]) =>
  askLeastcut(['survey', written(text), '--format', 'csv', ...more]);

/** Each half is short enough to be read whole. */
async function inHalves(...more: readonly string[]): Promise<string> {
  const [one, other] = await Promise.all(
    [all.slice(0, 20), all.slice(20)].map((cars) => csv(`${head}${cars.join('\n')}\n`, ...more)),
  );
  const rows = (other?.out ?? '').split('\n').slice(1).join('\n');
  return `${one?.out}${rows}`;
}

describe('the table of a long file, which goes through vehicle by vehicle', () => {
  test.each([
    { of: 'all columns', more: [] },
    { of: 'what was read', more: plain },
  ])('has the rows of its halves read whole: $of', async ({ more }) => {
    const long = `${head}${all.join('\n')}\n`;
    expect(long.length).toBeGreaterThan(2 ** 20);
    const { code, out } = await csv(long, ...more);
    expect(code).toBe(0);
    expect(out).toBe(await inHalves(...more));
    expect(out.split('\n').length).toBeGreaterThan(40 * panels.length);
  });

  test('is written to the file that is named', async () => {
    const file = join(temporaryFolder(), 'out.csv');
    const long = `${head}${all.join('\n')}\n`;
    const { out } = await csv(long, ...plain, '-o', file);
    expect(out).toBe('');
    expect((await csv(long, ...plain)).out).toBe(readFileSync(file, 'utf8'));
  });

  test('is not begun where a cell at the end is wrong, and says so', async () => {
    const { code, out, err } = await csv(
      `${head}${all.join('\n')}\nCAR 99,roof,thick,${note}\n`,
      ...plain,
    );
    expect({ code, out }).toEqual({ code: 65, out: '' });
    expect(err).toContain('error[reading-not-a-number]');
  });

  test('is not begun where a vehicle has a panel that no template has', async () => {
    const { code, out, err } = await csv(
      `${head}${[...all, car('VAN 1', ['flux capacitor'])].join('\n')}\n`,
      ...plain,
    );
    expect({ code, out }).toEqual({ code: 65, out: '' });
    expect(err).toContain('flux capacitor');
  });

  test('puts the rows of a vehicle together that comes again', async () => {
    const again = `CAR 1,roof,300.5,${note}`;
    const { code, out } = await csv(`${head}${[...all, again].join('\n')}\n`, ...plain);
    expect(code).toBe(0);
    expect(out.split('\n').filter((line) => line.startsWith('CAR 1,roof'))).toEqual([
      expect.stringContaining('CAR 1,roof,4,'),
    ]);
  });
});
