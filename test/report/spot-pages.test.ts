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
