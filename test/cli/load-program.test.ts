import { copyFileSync, cpSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, inject, test } from 'vitest';
import { loadProgram } from '../../src/cli/load-program.ts';
import { temporaryFolder } from './temporary-folder.ts';

/** A copy of the build to spoil. */
function copyOfBuild(): string {
  const folder = temporaryFolder();
  cpSync(join(dirname(inject('program')), '../dist'), folder, { recursive: true });
  return folder;
}

describe('the code that was compiled when the program was built', () => {
  test('is taken by the Node that built it', () => {
    expect(loadProgram(copyOfBuild()).isCompiled).toBe(true);
  });

  test('is of a script in ASCII, as which it is decoded', () => {
    const script = readFileSync(join(copyOfBuild(), 'program.cjs'));
    expect(script.findIndex((byte) => byte > 0x7f)).toBe(-1);
  });

  test.each<[string, (cache: string) => void]>([
    ['is missing', (cache) => rmSync(cache)],
    ['is empty', (cache) => writeFileSync(cache, '')],
    ['is cut short', (cache) => truncateSync(cache, 100_000)],
    ['has one byte changed', (cache) => flipByte(cache, 500_000)],
    ['has its seal changed', (cache) => flipByte(cache, 3)],
  ])('is left alone when it %s, and the program runs from its script', (_, spoil) => {
    const folder = copyOfBuild();
    spoil(join(folder, 'program.cache'));
    const { program, isCompiled } = loadProgram(folder);
    expect(isCompiled).toBe(false);
    expect(program.run).toBeTypeOf('function');
  });

  test('is left alone when the script is another one of the same length', () => {
    const folder = copyOfBuild();
    const script = join(folder, 'program.cjs');
    copyFileSync(script, `${script}.before`);
    const text = readFileSync(script, 'latin1');
    writeFileSync(script, text.replace('there is no command', 'there was a command'), 'latin1');
    expect(readFileSync(script).length).toBe(readFileSync(`${script}.before`).length);
    expect(loadProgram(folder).isCompiled).toBe(false);
  });
});

function flipByte(path: string, at: number): void {
  const bytes = readFileSync(path);
  bytes.writeUInt8((bytes[at] ?? 0) ^ 0xff, at);
  writeFileSync(path, bytes);
}
