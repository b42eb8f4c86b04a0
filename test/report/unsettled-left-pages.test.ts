/** A panel that is left because nobody knows yet which of two it is: named by the harmful one, and asked to be settled. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { askLeastcut } from '../cli/ask-leastcut.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';

const FILMS: Readonly<Record<string, string>> = {
  bonnet: '78 72 78 72 81',
  'front right wing': '90 86 89 89 86',
  'front right door': '94 92 88 91 92',
  'right quarter': '89 90 89 89 91',
  'boot lid': '85 85 87 89 83',
  'left quarter': '94 89 92 99 89',
  'front left door': '87 88 88 89 90',
  roof: '86 85 83 85 84',
  'left sill': '101 104 103 106 103',
  'right sill': '100 94 102 100 97',
};
const ROWS = Object.entries(FILMS).flatMap(([panel, films]) =>
  films.split(' ').map((film, i) => `${panel},${i + 1},${film}`),
);

async function pageOf(...words: readonly string[]): Promise<string> {
  const readings = join(temporaryFolder(), 'readings.csv');
  writeFileSync(readings, ['panel,point,reading_um', ...ROWS, ''].join('\n'));
  const [command = '', ...rest] = words;
  const { out } = await askLeastcut([
    command,
    readings,
    ...['--template', 'coupe', '--finish', 'single-stage-solid'],
    ...rest,
  ]);
  return out.replaceAll('\u00a0', ' ').replaceAll(/\s+/g, ' ');
}

describe('a panel that is cut back unless it is original', () => {
  test('is to be settled first on the plan, and kept off as cut back on the card besides', async () => {
    const settle = 'Settle first: bonnet (cut-back or original): nothing may go till then';
    expect(await pageOf('survey')).toContain(settle);
    const [plan, card] = [await pageOf('plan'), await pageOf('plan', '--card')];
    expect(plan).toContain(settle);
    expect(plan).not.toMatch(/Leave:[^:]*bonnet/);
    expect(card).toContain(`${settle} Keep off: bonnet (cut-back?)`);
    expect(plan + card).not.toContain('perhaps original');
  });

  test('is not asked to be settled where there is nothing to polish on it', async () => {
    const defects = join(temporaryFolder(), 'defects.csv');
    writeFileSync(defects, 'panel,defect,grade\nbonnet,swirl marks,0\n');
    const plan = await pageOf('plan', '--defects', defects);
    expect(plan).not.toContain('Settle first');
  });
});
