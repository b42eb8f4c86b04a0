import { join } from 'node:path';
import { describe, test } from 'vitest';
import { askLeastcut } from '../cli/ask-leastcut.ts';
import { caseNames } from '../cli/case-command.ts';
import { expectRecorded, runCase } from '../cli/golden.ts';
import { runLeastcut } from '../cli/run-leastcut.ts';

/** The threads of a batch are those of a process of its own, and the version is given before the program is loaded. */
const isRun = (name: string): boolean => name === 'version' || name.startsWith('batch-');

describe.concurrent('the program, byte by byte', () => {
  test.each(caseNames(import.meta.dirname))('%s gives what was recorded', async (name) => {
    const folder = join(import.meta.dirname, name);
    expectRecorded(folder, await runCase(folder, isRun(name) ? runLeastcut : askLeastcut));
  });
});
