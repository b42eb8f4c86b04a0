import { join } from 'node:path';
import { describe, test } from 'vitest';
import { caseNames } from '../cli/case-command.ts';
import { expectRecorded, runCase } from '../cli/golden.ts';

describe.concurrent('the program, byte by byte', () => {
  test.each(caseNames(import.meta.dirname))('%s gives what was recorded', async (name) => {
    const folder = join(import.meta.dirname, name);
    expectRecorded(folder, await runCase(folder));
  });
});
