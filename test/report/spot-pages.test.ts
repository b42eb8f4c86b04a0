/** Which panels the page of test spots speaks of. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { askLeastcut } from '../cli/ask-leastcut.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';

async function pageOf(...panels: readonly string[]): Promise<string> {
  const file = join(temporaryFolder(), 'spots.csv');
  const rows = panels.map(
    (panel, i) => `S${i},${panel},da,foam-soft,medium,1,1,${117 + i}.2,${117 + i}.0,20`,
  );
  const head = 'spot,panel,machine,pad,product,sets,mark,before_um,after_um,cleared_pct';
  writeFileSync(file, `${[head, ...rows].join('\n')}\n`);
  return (await askLeastcut(['spot', file])).out;
}

describe('the page of test spots', () => {
  it('asks first about a trial that took next to nothing where much is usual', async () => {
    const file = join(temporaryFolder(), 'spots.csv');
    const rows = [0, 1, 2, 3, 4].map(
      (i) => `A,bonnet,da,foam-medium,medium,3,${i + 1},${109 + i}.1,${109 + i}.0,0`,
    );
    const head = 'spot,panel,machine,pad,product,sets,mark,before_um,after_um,cleared_pct';
    writeFileSync(file, `${[head, ...rows].join('\n')}\n`);
    const words = (await askLeastcut(['spot', file])).out.replaceAll(/\s+/g, ' ');
    expect(words).toMatch(
      /Besides test spot A took 0\.1 µm where 2\.69 µm is usual: .* It counts for nothing, and no step is stronger for it/,
    );
  });

  it('names the panel that they are on, and what comes next on it', async () => {
    const page = await pageOf('roof', 'roof');
    expect(page).toContain('2 trials on roof');
    expect(page).toContain('Next on roof: ');
    expect(page).not.toContain('file of their own');
  });

  it('says of trials on several panels that all are held for one paint, and a repaint is judged by itself', async () => {
    const page = await pageOf('roof', 'bonnet');
    expect(page).toMatch(/^spot panel +combination/m);
    expect(page).toMatch(/^S1 +bonnet +da\/foam-soft\/medium/m);
    const words = page.replaceAll(/\s+/g, ' ');
    expect(words).toContain('Next, by all panels: ');
    expect(words).toContain('Paint, by all panels: ');
    expect(words).toContain(
      'hold the trials on roof, bonnet for one paint. A repaint is judged by itself: put its trials into a file of their own.',
    );
  });
});
