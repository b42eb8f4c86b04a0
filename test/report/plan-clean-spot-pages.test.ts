/** A combination that was clean on its spot is held to its usual haze: spot and plan say the same of it. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { askLeastcut } from '../cli/ask-leastcut.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';

const folder = temporaryFolder();
const spotsWith = (haze: number): string => {
  const path = join(folder, `haze-${haze}.csv`);
  const rows = [118, 119.1, 117.2, 119.9, 118.1].map(
    (after, i) =>
      `A,bonnet,da,foam-medium,medium,2,${i + 1},${[120, 121, 119, 122, 120][i]},${after},swirl marks,97,${haze},no`,
  );
  const header =
    'spot,panel,machine,pad,product,sets,mark,before_um,after_um,defect,cleared_pct,haze_grade,colour_on_pad';
  writeFileSync(path, [header, ...rows, ''].join('\n'));
  return path;
};
const page = async (...words: readonly string[]): Promise<string> =>
  (await askLeastcut([...words, '-q'])).out.replace(/\s+/gu, ' ');
const plan = (spots: string, aim: string) =>
  page(
    ...['plan', 'samples/sound-saloon/readings.csv', '--template', 'saloon'],
    ...['--spots', spots, '--aim', aim],
  );

const HELD = 'is held to leave haze of grade 1 all the same';
const LEAVE_OUT = 'where good light shows neither haze nor marks before it, leave it out';

test('spot and plan both say that a refining step follows, why, and when it may stay out', async () => {
  const clean = spotsWith(0);
  for (const said of [await page('spot', clean, '--aim', 'full'), await plan(clean, 'full')]) {
    expect(said).toContain(HELD);
    expect(said).toContain('one clean spot may be so by its light or its luck');
    expect(said).toContain(LEAVE_OUT);
  }
  expect(await plan(clean, 'full')).toMatch(/da\/foam-medium\/medium \+ \d× da\/foam-soft\/fine/u);
});

test('neither does where the aim lets that haze stand, or where the spot itself was hazy', async () => {
  const clean = spotsWith(0);
  const hazy = spotsWith(1);
  const said = [
    await page('spot', clean, '--aim', 'correct'),
    await plan(clean, 'correct'),
    await page('spot', hazy, '--aim', 'full'),
    await plan(hazy, 'full'),
  ];
  for (const one of said) expect(one).not.toContain(LEAVE_OUT);
});
