import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { runLeastcut } from './run-leastcut.ts';
import { temporaryFolder } from './temporary-folder.ts';

test('a file without line ends is left after 8 MB, whatever stands behind', async () => {
  const file = join(temporaryFolder(), 'endless.csv');
  writeFileSync(
    file,
    Buffer.concat([Buffer.from('panel,reading_um\n'), Buffer.alloc(60 << 20, 'x')]),
  );
  const run = await runLeastcut(['read', file]);
  expect(run.code).toBe(65);
  expect(run.err).toContain('endless.csv:2:1: error[row-too-long]');
  expect(run.err).toContain('did the file lose its line ends');
});

test('a line longer than any row, in a file that is read whole, is refused by the limit on rows', async () => {
  const run = await runLeastcut(['read', '-'], {
    stdin: `panel,reading_um\nroof,${'1'.repeat(1 << 20)}\n`,
  });
  expect(run.code).toBe(65);
  expect(run.err).toContain('standard input:2:1: error[row-too-long]');
});
