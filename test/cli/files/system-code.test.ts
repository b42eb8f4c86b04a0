import { expect, test } from 'vitest';
import { loadFile } from '../../../src/cli/files/files.ts';
import { reasonOf } from '../../../src/cli/files/system-code.ts';

const refused = (code: string): Error => Object.assign(new Error('refused'), { code });

test.each([
  ['EISDIR', 'it is a folder'],
  ['ENOSPC', 'the disk is full'],
  ['EACCES', 'its permissions do not allow it'],
])('%s is said in words', (code, words) => {
  expect(reasonOf(refused(code))).toBe(words);
});

test('what nobody has words for keeps the word of the system', () => {
  expect(reasonOf(refused('EXDEV'))).toBe('the system says EXDEV');
  expect(reasonOf('gone')).toBe('the system says gone');
});

test('a folder that is named as a file is called one, with what to do', async () => {
  const { diagnostics } = await loadFile('test');
  expect(diagnostics).toEqual([
    {
      ...{ code: 'file-unreadable', severity: 'error' },
      message: '"test" cannot be read: it is a folder',
      ...{ at: { file: 'test' }, hint: 'name a file, not a folder' },
    },
  ]);
});
