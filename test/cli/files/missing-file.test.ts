import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { missingHint } from '../../../src/cli/files/missing-file.ts';
import { temporaryFolder } from '../temporary-folder.ts';

function folderWith(...names: readonly string[]): string {
  const folder = temporaryFolder();
  for (const name of names) writeFileSync(join(folder, name), '');
  return folder;
}

test('a file whose name is near is named, in its folder', () => {
  const folder = folderWith('meridew.csv', 'pipkin.csv');
  expect(missingHint(join(folder, 'meridue.csv'))).toBe(
    `did you mean "${join(folder, 'meridew.csv')}"?`,
  );
  expect(missingHint(join(folder, 'PIPKIN.CSV'))).toContain('pipkin.csv');
  expect(missingHint(join(folder, 'quillon.csv'))).toBe('check the path');
});

test('a name with backslashes that is there with slashes is told so', () => {
  const folder = temporaryFolder();
  mkdirSync(join(folder, 'cars'));
  writeFileSync(join(folder, 'cars', 'a.csv'), '');
  expect(missingHint(`${folder}\\cars\\a.csv`)).toBe(
    `folders are parted by / here: "${folder}/cars/a.csv"`,
  );
  expect(missingHint(`${folder}\\cars\\b.csv`)).toContain('did you mean');
});

test('a folder that is not there is named, as the slip is in it', () => {
  const folder = temporaryFolder();
  expect(missingHint(join(folder, 'carz', 'a.csv'))).toBe(
    `check the path: there is no folder "${join(folder, 'carz')}"`,
  );
});

test('a link that leads nowhere is called so, and not named as what may be meant', () => {
  const link = join(folderWith('meridew.csv'), 'pipkin.csv');
  symlinkSync('gone.csv', link);
  expect(missingHint(link)).toBe('it is a link, and what it leads to is not there');
});
