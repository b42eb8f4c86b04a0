/** A price list has what the tool knows nothing of: the shop's own affair, or a slip of the pen. */
import { copyFileSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { askLeastcut } from './ask-leastcut.ts';
import { temporaryFolder } from './temporary-folder.ts';

const folder = temporaryFolder();
const shopWith = (name: string, id: string, extra: object = {}): string => {
  const path = join(folder, `${name}.json`);
  const pack = { id, pack: 250, unit: 'ml', price_minor: 900 };
  const prices = { currency: 'GBP', labour_minor_per_h: 4500, materials: [pack] };
  writeFileSync(path, JSON.stringify({ schema: 'leastcut/shop/1', prices, ...extra }));
  return path;
};
const own = shopWith('own', 'drying-agent');
const slip = shopWith('slip', 'mediun');
const ask = (command: string, shop: string, ...more: readonly string[]) =>
  askLeastcut([command, 'samples/sound-saloon/readings.csv', '--shop', shop, ...more]);

describe('a material of its own that a shop has a price for', () => {
  test('is nothing to a survey or a plan', async () => {
    for (const command of ['survey', 'plan']) {
      const { code, err } = await ask(command, own);
      expect([code, err]).toEqual([0, '']);
    }
  });

  test('is told by a quote as never charged, and the price stands', async () => {
    const { code, out, err } = await ask('quote', own, '-v');
    expect(code).toBe(0);
    expect(out).toContain('total');
    expect(err).toContain('note[price-material]: no job uses "drying-agent" of the price list');
  });
});

describe('a misspelt material of a price list', () => {
  test('is told with the name that was meant by commands that use no price, which go on', async () => {
    for (const command of ['survey', 'plan']) {
      const { code, err } = await ask(command, slip);
      expect(code).toBe(0);
      expect(err).toContain('warning[price-material]');
      expect(err).toContain('did you mean "medium"?');
    }
  });

  test('keeps a quote from making a price of it', async () => {
    const { code, out, err } = await ask('quote', slip);
    expect([code, out]).toEqual([78, '']);
    expect(err).toContain('error[price-material]: "prices.materials[0].id" names "mediun"');
    expect(err.match(/price-material/g)).toHaveLength(1);
  });

  test('of the user’s own file is a warning to a quote by the prices of another', async () => {
    const home = temporaryFolder();
    mkdirSync(join(home, 'leastcut'));
    copyFileSync(slip, join(home, 'leastcut', 'shop.json'));
    const words = ['quote', 'samples/sound-saloon/readings.csv'];
    const env = { XDG_CONFIG_HOME: home };
    const byOther = await askLeastcut([...words, '--shop', own], { env });
    expect([byOther.code, byOther.err.includes('warning[price-material]')]).toEqual([0, true]);
    expect((await askLeastcut(words, { env })).code).toBe(78);
  });
});
