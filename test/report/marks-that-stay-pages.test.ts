/** Marks that no polishing mends are told on the card, and their panel is no place for the test spot of the car. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { askLeastcut } from '../cli/ask-leastcut.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';

const saloon = 'samples/sound-saloon/';

async function pageOf(rows: readonly string[], ...more: readonly string[]): Promise<string> {
  const file = join(temporaryFolder(), 'marks.csv');
  writeFileSync(file, ['panel,defect,grade,extent,depth_um,note', ...rows, ''].join('\n'));
  const words = ['plan', `${saloon}readings.csv`, '--job', `${saloon}job.json`];
  const { out } = await askLeastcut([...words, '--defects', file, ...more]);
  return out.replace(/\s+/gu, ' ');
}

/** Where the card puts the first test spot. */
const spotPlace = (card: string): string | undefined =>
  card.match(/mark a place on ([a-z ]+),/u)?.[1];

describe('etching through the clear', () => {
  const DEEP = 'bird etching of grade 3: left, 60 µm deep is through the clear';

  test('is told as such on the card of a panel that is left, which does not want nothing', async () => {
    const card = await pageOf(['front right door,bird-etching,3,,60,'], '--card');
    expect(card).toContain(`Marks that stay: front right door: ${DEEP}`);
    expect(card).toContain('no polishing mends it, new paint does');
    expect(card).not.toContain('nothing to polish');
  });

  test('is told in the line of its panel where that is worked', async () => {
    const rows = ['front right door,swirl-marks,3,,,', 'front right door,bird-etching,3,,60,'];
    expect(await pageOf(rows, '--card')).toContain(`leave: ${DEEP}`);
  });

  test('keeps the test spot of the car off its panel', async () => {
    const first = spotPlace(await pageOf([], '--card'));
    if (first === undefined) throw new Error('the card names a place');
    const rows = [`${first},swirl-marks,3,,,`, `${first},bird-etching,3,,60,`];
    const other = spotPlace(await pageOf(rows, '--card'));
    expect(other).toBeDefined();
    expect(other).not.toBe(first);
  });

  test('of a panel without other marks is the reason why the plan leaves it', async () => {
    const page = await pageOf(['front right door,bird-etching,3,,60,']);
    expect(page).toContain('front right door (its deep marks are left)');
  });
});

test('days tell the deep marks of a panel from the panel, which may be cut on another day', async () => {
  const rows = ['front right door,swirl-marks,3,,,', 'front right door,bird-etching,2,,,'];
  expect(await pageOf(rows, '-v')).toMatch(
    /cut \(deep marks of front right door; roof.* 2: [^:]*: cut \([^;)]*front right door/u,
  );
});

test('general marks through the clear are told on the card too', async () => {
  const card = await pageOf(['front right door,swirl-marks,3,,60,'], '--card');
  expect(card).toContain('Marks that stay: front right door: swirl marks: 60 µm deep');
});
