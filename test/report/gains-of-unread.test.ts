import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { askLeastcut } from '../cli/ask-leastcut.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';

const plastic = 'samples/plastic-bumpers';
const env = { COLUMNS: '80' };
const gainsLine = (out: string): readonly string[] =>
  out.split('\n').filter((line) => line.startsWith('Would help'));

test.each(['um', 'mil'])(
  'in one line a page in %s says what the figures are, and that each is by itself',
  async (unit) => {
    const words = ['survey', `${plastic}/readings.tsv`, '--job', `${plastic}/job.json`];
    const { out } = await askLeastcut([...words, '--show-unit', unit], { env });
    const [line = '', ...more] = gainsLine(out);
    expect(line.replaceAll(/ +/g, ' ')).toBe(
      `Would help takes ${unit === 'um' ? 'µm' : 'mil'} more may go panels; each alone, if as reckoned`,
    );
    expect(more).toEqual([]);
    expect(line.length).toBeLessThanOrEqual(80);
    // Of panels that nobody read nothing is promised.
    const table = out.slice(out.indexOf('Would help'), out.indexOf('Would lower it'));
    expect(table).not.toMatch(/sill|rail|mirror|bumper/);
    expect(out).toMatch(/^Not read: /m);
  },
);

test('under -v the list says the same', async () => {
  const file = join(temporaryFolder(), 'r.csv');
  writeFileSync(
    file,
    `panel,point,reading_um\n${[1, 2, 3].map((k) => `bonnet,${k},${110 + k}`).join('\n')}\n`,
  );
  const { out } = await askLeastcut(['survey', file, '--panel', 'bonnet', '-v'], { env });
  expect(out).toContain(
    'What would help, µm more may go; each by itself, if it comes out as reckoned\n',
  );
});
