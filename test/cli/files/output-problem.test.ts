/** What an output may not be written to is told before anything is worked out, with what to do. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { outputProblem } from '../../../src/cli/files/output-problem.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const folder = temporaryFolder();
const inside = (...names: readonly string[]): string => join(folder, ...names);
mkdirSync(inside('there'));
writeFileSync(inside('file'), '');

const told = (out: string): readonly (string | undefined)[] => {
  const problem = outputProblem(out, false, []);
  return [problem?.code, problem?.message, problem?.hint];
};

describe('an output', () => {
  test('in a folder that is there is no problem', () => {
    expect(outputProblem(inside('there', 'new.txt'), false, [])).toBeUndefined();
    expect(outputProblem('new-file-of-nobody.txt', false, [])).toBeUndefined();
  });

  test('in a folder that is missing is told with the folder', () => {
    const out = inside('gone', 'new.txt');
    expect(told(out)).toEqual([
      'output-unwritable',
      `"${out}" cannot be written: there is no folder "${inside('gone')}"`,
      'make the folder first, or name another',
    ]);
    const deeper = inside('file', 'x', 'new.txt');
    expect(told(deeper)[1]).toContain(`there is no folder "${inside('file', 'x')}"`);
  });

  test('under what is a file is told with that file', () => {
    const out = inside('file', 'new.txt');
    expect(told(out)).toEqual([
      'output-unwritable',
      `"${out}" cannot be written: "${inside('file')}" is no folder`,
      'name a file in a folder that is there',
    ]);
  });

  test('that is a folder, or is written as one, wants a name in it', () => {
    expect(told(inside('there'))).toEqual([
      'output-unwritable',
      `"${inside('there')}" is a folder`,
      'name a file in it',
    ]);
    expect(told(`${inside('gone')}/`)).toEqual([
      'output-unwritable',
      `"${inside('gone')}/" names a folder, and there is none`,
      'name a file in a folder that is there',
    ]);
  });
});
