/** Which panels the page of test spots speaks of. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { askLeastcut } from '../cli/ask-leastcut.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';

const worked =
  'spot,panel,machine,pad,product,sets,mark,before_um,after_um,cleared_pct,haze_grade,colour_on_pad';

/** Three marks of a spot, each of which lost as much. */
const rowsOf = (spot: string, work: string, lost: number, judged: string): readonly string[] =>
  [107.5, 108.3, 107].map(
    (film, i) =>
      `${spot},bonnet,da,${work},${i + 1},${film},${(film - lost - (i - 1) / 10).toFixed(1)},${judged}`,
  );

async function wordsOf(...rows: readonly string[]): Promise<string> {
  const file = join(temporaryFolder(), 'spots.csv');
  writeFileSync(file, `${[worked, ...rows].join('\n')}\n`);
  const { out } = await askLeastcut([
    'spot',
    file,
    '--finish',
    'single-stage-solid',
    '--aim',
    'correct',
  ]);
  return out.replaceAll(/\s+/g, ' ');
}

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

  it('says before it advises to go on at a place that a limit may be passed there, and shows half steps of haze', async () => {
    const words = await wordsOf(...rowsOf('H', 'microfibre,heavy,2', 3.9, '92,2.5,yes'));
    expect(words).toMatch(
      /Mind: on the place of test spot H a limit may be passed: it took 3\.9 µm, .* Run survey with --spots first; .* Next on bonnet: cleared but hazy: once survey --spots lets more go there, refine with/,
    );
    expect(words).toMatch(/H da\/microfibre\/heavy 2 3 3\.9 \(\S+ to \S+\) \S+ 92 % 2\.5 /);
    const little = await wordsOf(...rowsOf('H', 'microfibre,heavy,2', 2.1, '92,2.5,yes'));
    expect(little).toContain('cleared but hazy: refine with');
    expect(little).not.toContain('limit may be passed');
  });

  it('tells in how many sets the step did it beside a chance of fewer', async () => {
    const words = await wordsOf(...rowsOf('M', 'foam-medium,medium,3', 2.7, '86,0,yes'));
    expect(words).toContain(
      'da/foam-medium/medium did it in 3 sets: no need for a stronger one (its chance below is of 2 sets)',
    );
    expect(words).toContain('Chance: to reach the aim with 2 sets of that rung alone');
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

it('heads every column of the ladder, and says in plain text what it judged of a rung', async () => {
  const words = ['spot', 'samples/older-coupe/spots.csv'];
  const plain = (await askLeastcut([...words, '--plain'])).out.replaceAll('\u00a0', ' ');
  expect(plain).toMatch(/^[\w/-]+: verdict did not clear$/m);
  const md = (await askLeastcut([...words, '--format', 'md'])).out;
  const heads = md.split('\n').filter((_, i, all) => /^\| -+/.test(all[i + 1] ?? ''));
  expect(heads.length).toBeGreaterThan(1);
  expect(heads.filter((line) => line.includes('|  |'))).toEqual([]);
});
