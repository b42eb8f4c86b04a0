/** Why repaint is left whose own test spot left no colour: it stands with the panel, not behind a flag alone. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { askLeastcut } from '../cli/ask-leastcut.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';

const AROUND = [-2.4, -0.9, 0.3, 1.2, 1.8];

/** A car whose boot lid was painted again, after a spot there that took so much; the roof reads as it is told. */
async function leaveLines(
  took: number,
  roof = 112,
  work = 'foam-medium,medium,3',
  cleared = 60,
): Promise<string> {
  const folder = join(temporaryFolder(), 'passed');
  mkdirSync(folder, { recursive: true });
  const means = {
    bonnet: 111,
    roof,
    'boot lid': 235,
    'front left door': 113,
    'front right door': 114,
  };
  const rows = Object.entries(means).flatMap(([panel, mean]) =>
    AROUND.map((off, i) => `${panel},${i + 1},${(mean + off).toFixed(1)}`),
  );
  const marks = [0.1, -0.1, 0, 0.1, -0.1].map((off, i) => {
    const before = 233 + i;
    return `P,boot lid,da,${work},${i + 1},${before},${(before - took + off).toFixed(1)},${cleared},no`;
  });
  const head =
    'spot,panel,machine,pad,product,sets,mark,before_um,after_um,cleared_pct,colour_on_pad';
  const [readings, spots] = [join(folder, 'readings.csv'), join(folder, 'spots.csv')];
  writeFileSync(readings, ['panel,point,reading_um', ...rows, ''].join('\n'));
  writeFileSync(spots, [head, ...marks, ''].join('\n'));
  const pages = await Promise.all(
    ['survey', 'plan'].map((command) =>
      askLeastcut([
        ...[command, readings, '--template', 'saloon', '--finish', 'clear-over-base'],
        ...['--spots', spots],
      ]),
    ),
  );
  return pages.map(({ out }) => out.replaceAll(/\s+/g, ' ')).join(' ¦ ');
}

describe('repaint whose own test spot left no colour', () => {
  const reasons = (pages: string): readonly string[] =>
    [...pages.matchAll(/boot lid \((refinished[^):]*)/g)].map(([, reason]) => reason ?? '');

  test('is told to be left for what the spot took, where that is all it gets', async () => {
    expect(reasons(await leaveLines(4))).toEqual([
      'refinished, no colour at its test spot, but all is gone that repaint gets',
      'refinished, no colour at its test spot, but all is gone that repaint gets',
    ]);
  });

  test('is told to be left for another panel, where nothing may go from an original one', async () => {
    expect(reasons(await leaveLines(1, 100))).toEqual([
      'refinished, no colour at its test spot, but nothing may go from an original panel either',
      'refinished, no colour at its test spot, but nothing may go from an original panel either',
    ]);
  });

  test('is told to be left for the step that was tried, where that clears too little', async () => {
    expect(await leaveLines(2.8, 112, 'foam-medium,medium,3', 5)).toContain(
      'boot lid (what may go by the steps tried there clears hardly a mark)',
    );
  });

  test('has no such words where something may go from it', async () => {
    expect(await leaveLines(0.8)).not.toContain('no colour at its test spot');
  });
});
