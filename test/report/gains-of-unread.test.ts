import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { askLeastcut } from '../cli/ask-leastcut.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';

const plastic = 'samples/plastic-bumpers';
const env = { COLUMNS: '80' };
const gainsLine = (out: string): readonly string[] =>
  out.split('\n').filter((line) => line.startsWith('What would help'));

test.each(['um', 'mil'])(
  'in one line a page in %s says that of unread panels no gain is known',
  async (unit) => {
    const words = ['survey', `${plastic}/readings.tsv`, '--job', `${plastic}/job.json`];
    const { out } = await askLeastcut([...words, '--show-unit', unit], { env });
    expect(gainsLine(out)).toEqual([
      `What would help, ${unit === 'um' ? 'µm' : 'mil'} more may go (unread: unknown); each alone, if as reckoned`,
    ]);
    expect(gainsLine(out).filter((line) => line.length > 80)).toEqual([]);
  },
);

test('where every panel asked for is read, nothing of that is said', async () => {
  const file = join(temporaryFolder(), 'r.csv');
  writeFileSync(
    file,
    `panel,point,reading_um\n${[1, 2, 3].map((k) => `bonnet,${k},${110 + k}`).join('\n')}\n`,
  );
  const { out } = await askLeastcut(['survey', file, '--panel', 'bonnet'], { env });
  expect(gainsLine(out)).toEqual([
    'What would help, µm more may go; each by itself, if it comes out as reckoned',
  ]);
});
