/** A plan that works no panel says why: that nothing wants it is not said of a car with marks. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { askLeastcut } from '../cli/ask-leastcut.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';

const saloon = 'samples/sound-saloon/';
const CAR = [`${saloon}readings.csv`, '--job', `${saloon}job.json`];

/** The page and the card, each on one line. */
async function pagesOf(...words: readonly string[]): Promise<readonly [string, string]> {
  const pages = await Promise.all(
    [[], ['--card']].map((more) => askLeastcut(['plan', ...CAR, ...words, ...more])),
  );
  const [page = '', card = ''] = pages.map(({ out }) => out.replace(/\s+/gu, ' '));
  return [page, card];
}

const put = (name: string, text: string): string => {
  const file = join(temporaryFolder(), name);
  writeFileSync(file, text);
  return file;
};
const shopOf = (pads: readonly string[], products: readonly string[]): string =>
  put('shop.json', JSON.stringify({ schema: 'leastcut/shop/1', machines: ['da'], pads, products }));

describe('a plan that works no panel', () => {
  test('says of a shop with only harsh things that they are too harsh, and what would do', async () => {
    const why =
      'no panel can be worked: no pad and product of the shop end without haze: the last step needs a softer pad or a finer product';
    for (const page of await pagesOf('--shop', shopOf(['wool'], ['heavy']))) {
      expect(page.toLowerCase()).not.toContain('nothing to polish');
      expect(page.toLowerCase()).toContain(why);
    }
  });

  test('says of a car without marks that there is nothing to polish', async () => {
    const rows = ['bonnet', 'roof'].map((panel) => `${panel},swirl-marks,0,,,`);
    const defects = put(
      'none.csv',
      ['panel,defect,grade,extent,depth_um,note', ...rows].join('\n'),
    );
    const [page, card] = await pagesOf(
      '--defects',
      defects,
      '--panel',
      'bonnet',
      '--panel',
      'roof',
    );
    expect(page).toContain('Work: nothing to polish');
    expect(card).toContain('Nothing to polish.');
  });

  test('says of panels that may lose nothing that none can be worked, and not that they want nothing', async () => {
    const [page, card] = await pagesOf('--policy', 'strict', '--panel', 'bonnet');
    expect(page).toContain('Work: no panel can be worked Leave: bonnet');
    expect(page).toContain('Time: none: no panel is worked');
    expect(card).toContain('No panel can be worked. Keep off: bonnet');
  });
});
