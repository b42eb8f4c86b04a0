/** A process that stays for the next question answers as one that is started for it. */
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { askLeastcut } from './ask-leastcut.ts';
import type { RunOptions } from './run-command.ts';
import { projectRoot, runLeastcut } from './run-leastcut.ts';
import { temporaryFolder } from './temporary-folder.ts';

const readings = join(projectRoot, 'samples/older-coupe/readings.csv');
const stdin = 'panel,point,reading_um\nroof,1,110\nroof,2,thick\n';

const questions: readonly (readonly [readonly string[], RunOptions])[] = [
  [['survey', readings, '--format', 'json'], {}],
  [['read', '-'], { stdin }],
  // Nothing of what was read or said before is left.
  [['read', '-'], {}],
  [['survey', readings], { env: { COLUMNS: '60', LEASTCUT_PLAIN: 'yes' } }],
  [['survey', readings], { env: { COLUMNS: '60' } }],
  [['survey', 'readings.csv'], { cwd: join(projectRoot, 'samples/older-coupe') }],
  [['survey', 'readings.csv'], { cwd: temporaryFolder() }],
  [['template', 'check', 'no-such-file.json'], {}],
  [['survye'], {}],
  [['plan', '--help'], {}],
];

test('one answer after another has the code, the output and the messages of a run of its own', async () => {
  const codes = new Set<number | null>();
  for (const [words, options] of questions) {
    const asked = await askLeastcut(words, options);
    expect(asked, words.join(' ')).toEqual(await runLeastcut(words, options));
    codes.add(asked.code);
  }
  expect(codes).toEqual(new Set([0, 65, 66, 2]));
});
