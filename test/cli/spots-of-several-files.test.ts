import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { askLeastcut } from './ask-leastcut.ts';
import { temporaryFolder } from './temporary-folder.ts';

const coupe = 'samples/older-coupe';
const [header = '', ...rows] = readFileSync(`${coupe}/spots.csv`, 'utf8').trim().split('\n');
const spotOf = (row: string): string | undefined => row.split(',')[0];

/** The sample's two spots, a file each. */
function aFileEach() {
  const folder = temporaryFolder();
  const files = ['A', 'B'].map((spot) => {
    const path = join(folder, `${spot}.csv`);
    writeFileSync(path, `${[header, ...rows.filter((row) => spotOf(row) === spot)].join('\n')}\n`);
    return path;
  });
  return { folder, files };
}

const given = (files: readonly string[]): readonly string[] =>
  files.flatMap((file) => ['--spots', file]);

describe('test spots written a file each', () => {
  test.each(['survey', 'plan', 'quote'])(
    '%s says the same as with one file of them',
    async (command) => {
      const { files } = aFileEach();
      const ask = async (spots: readonly string[]) => {
        const words = [
          command,
          `${coupe}/readings.csv`,
          '--job',
          `${coupe}/job.json`,
          ...given(spots),
        ];
        const { out } = await askLeastcut([...words, '--format', 'json']);
        const { inputs, ...rest } = JSON.parse(out);
        return { named: inputs.length, rest };
      };
      const [apart, one] = [await ask(files), await ask([`${coupe}/spots.csv`])];
      expect(apart.rest).toEqual(one.rest);
      expect(apart.named).toBe(one.named + 1);
    },
  );

  test('count once where the same file is given twice', async () => {
    const words = [
      'survey',
      `${coupe}/readings.csv`,
      '--job',
      `${coupe}/job.json`,
      '--format',
      'json',
    ];
    const twice = await askLeastcut([
      ...words,
      ...given([`${coupe}/spots.csv`, `./${coupe}/spots.csv`]),
    ]);
    const once = await askLeastcut([...words, ...given([`${coupe}/spots.csv`])]);
    expect(JSON.parse(twice.out).panels).toEqual(JSON.parse(once.out).panels);
    expect(twice.err).toMatch(/file-twice/);
  });

  test('stand in one cell of a list of jobs, with a semicolon between them', async () => {
    const { folder, files } = aFileEach();
    const list = join(folder, 'jobs.csv');
    const readings = join(process.cwd(), `${coupe}/readings.csv`);
    writeFileSync(list, `job,readings,spots\na,${readings},A.csv;B.csv\nb,${readings},A.csv\n`);
    const { out, code } = await askLeastcut([
      'batch',
      list,
      '--command',
      'survey',
      '--format',
      'ndjson',
    ]);
    expect(code).toBe(0);
    const inputs = out
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line).result.inputs.length);
    expect(inputs).toEqual([files.length + 1, 2]);
  });
});
