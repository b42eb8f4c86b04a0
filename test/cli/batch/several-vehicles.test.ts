/** A job that turns out to be of several vehicles is refused with a way out that its list has. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { runLeastcut } from '../run-leastcut.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const folder = temporaryFolder();
mkdirSync(join(folder, 'cars'));
writeFileSync(
  join(folder, 'cars', 'two.csv'),
  'vehicle,panel,point,reading_um\nA,roof,1,110\nB,roof,1,112\n',
);
writeFileSync(join(folder, 'jobs.csv'), 'job,readings\ntwo,cars/two.csv\n');

const hintsOf = async (list: string): Promise<string> => {
  const { out } = await runLeastcut(['batch', list, '--command', 'survey'], { cwd: folder });
  const { diagnostics } = JSON.parse(out) as {
    readonly diagnostics: readonly { readonly hint?: string }[];
  };
  return diagnostics.map(({ hint = '' }) => hint).join('; ');
};

test('a job of a list names one in its column', async () => {
  expect(await hintsOf('jobs.csv')).toContain('name one in the column vehicle');
});

test('a job of a list in JSON names one by its key, and is then of it', async () => {
  const job = { job: 'two', readings: 'cars/two.csv' };
  writeFileSync(join(folder, 'jobs.json'), JSON.stringify([job]));
  expect(await hintsOf('jobs.json')).toContain('in JSON by the key "vehicle"');
  writeFileSync(join(folder, 'named.json'), JSON.stringify([{ ...job, vehicle: 'A' }]));
  expect(await hintsOf('named.json')).not.toContain('vehicle');
});

test('a job of a folder, which has no columns, is taken apart or is the list itself', async () => {
  expect(await hintsOf('cars')).toBe(
    'give each a file of its own in the folder, or name this file in place of the folder: batch "cars/two.csv"',
  );
});
