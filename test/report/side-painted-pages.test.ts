import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { askLeastcut } from '../cli/ask-leastcut.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';

const folder = temporaryFolder();
const SIDE = ['wing front', 'door front', 'door rear', 'quarter'];
const rows = (panel: string, um: number): readonly string[] =>
  [-3, 0, 3].map((off, i) => `${panel},${i + 1},${um + off}`);
const file = join(folder, 'side.csv');
writeFileSync(
  file,
  `${[
    'panel,point,reading_um',
    ...SIDE.flatMap((part) => [...rows(`${part} right`, 148), ...rows(`${part} left`, 117)]),
    ...rows('bonnet', 118),
    ...rows('boot', 116),
  ].join('\n')}\n`,
);
const said = async (...words: readonly string[]): Promise<string> => {
  const { out } = await askLeastcut([...words]);
  return out
    .replace(/<[^>]+>/g, ' ')
    .replaceAll('\u00a0', ' ')
    .replaceAll(/\s+/g, ' ');
};

describe('a side that may have been painted again', () => {
  test('is to be settled first in the survey, which says why and how', async () => {
    const page = await said('survey', file);
    expect(page).toMatch(
      /Settle first: front right wing, front right door, rear right door, right quarter \(original or refinished\): nothing may go till then/,
    );
    expect(page).toContain('50 % likely refinished together: one side 31.0 µm over the other');
    expect(page).toContain('a test spot of its own without colour: settles it');
    expect(page).toContain('they may have been painted again together');
  });

  test('is told with the line it lies over in full, and of a panel by itself', async () => {
    const told =
      'one side 31.0 µm over the other, beyond the 25.0 µm that sides painted alike differ by';
    expect(await said('survey', file, '-v')).toContain(told);
    expect(await said('survey', file, '--why', 'rear right door')).toContain(told);
  });

  test('stands in the record of the survey, which sheets are made from', async () => {
    const { out } = await askLeastcut(['survey', file, '--format', 'json']);
    const record = JSON.parse(out);
    expect(record.notes.map(({ code }: { code: string }) => code)).toContain('side-painted');
    expect(out).toContain('"over-mirror"');
    const written = join(folder, 'survey.json');
    writeFileSync(written, out);
    const sheet = ['template', 'sheet', '--for', written];
    const page = await askLeastcut(sheet);
    expect(page.code).toBe(0);
    expect(page.out).toContain('front right door, in the shut');
    const doors = ['door-front-right', 'door-rear-right', 'door-rear-left', 'door-front-left'];
    const { out: csv } = await askLeastcut([...sheet, '--format', 'csv']);
    expect(csv.split('\n').filter((row) => row.includes('shut'))).toEqual(
      doors.map((door) => `${door},shut 1,shut,,,,`),
    );
    const asked = JSON.parse((await askLeastcut([...sheet, '--format', 'json'])).out).sheet;
    expect(asked.filter(({ place }: { place: string }) => place === 'shut')).toHaveLength(4);
  });

  test('is settled by the sheet of that survey, once the shuts are read on it', async () => {
    const { out } = await askLeastcut(['survey', file, '--format', 'json']);
    const written = join(folder, 'asked.json');
    writeFileSync(written, out);
    const blank = await askLeastcut(['template', 'sheet', '--for', written, '--format', 'csv']);
    const shuts = (right: number): string => {
      const rows = blank.out.trimEnd().split('\n');
      const read = rows
        .filter((row) => row.includes(',shut,'))
        .map((row) => row.replace(',shut,,', `,shut,${row.includes('right') ? right : 92},`));
      const filled = join(folder, `shuts-${right}.csv`);
      writeFileSync(filled, `${[rows[0], ...read].join('\n')}\n`);
      return filled;
    };
    expect(await said('survey', file, shuts(122))).not.toContain('Settle first');
    const alike = await said('survey', file, shuts(93));
    expect(alike).toContain('Settle first: front right wing');
    expect(alike).toContain('the door shuts of both sides read alike');
  });

  test('is left by the plan till then, and told to the owner before any choice', async () => {
    const plan = await said('plan', file);
    expect(plan).toContain('right quarter (original or refinished): nothing may go till then');
    expect(plan).not.toContain('Leave:');
    expect(await said('plan', file, '--card')).toContain('right quarter (perhaps refinished)');
    expect(await said('quote', file, '--format', 'html')).toContain(
      'One side of the car measures about 31 µm more than the other. It may have been painted again; nothing is polished there until that is known.',
    );
  });
});
