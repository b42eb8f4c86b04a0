import { execFileSync } from 'node:child_process';
import {
  copyFileSync,
  cpSync,
  readFileSync,
  rmSync,
  statSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
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

const ownCode = ['survey', 'program'] as const;

describe.each(ownCode)('the code that was compiled for a %s when the program was built', (what) => {
  const cacheIn = (folder: string): string => join(folder, `${what}.cache`);

  test('is taken by the Node that built it', () => {
    expect(loadProgram(copyOfBuild(), what).isCompiled).toBe(true);
  });

  test.each<[string, (cache: string) => void]>([
    ['is missing', (cache) => rmSync(cache)],
    ['is empty', (cache) => writeFileSync(cache, '')],
    ['is cut short', (cache) => truncateSync(cache, 100_000)],
    ['is cut short by a byte', (cache) => truncateSync(cache, statSync(cache).size - 1)],
    ['has one byte changed', (cache) => flipBits(cache, 500_000, 0xff)],
    ['has one bit changed', (cache) => flipBits(cache, 500_001, 0x80)],
    ['has its last byte changed', (cache) => flipBits(cache, statSync(cache).size - 1, 0x01)],
    ['lost the high bits of all bytes', (cache) => keepLowBits(cache)],
    ['has its seal changed', (cache) => flipBits(cache, 3, 0xff)],
  ])('is left alone when it %s, and the program runs from its script', (_, spoil) => {
    const folder = copyOfBuild();
    spoil(cacheIn(folder));
    const { program, isCompiled } = loadProgram(folder, what);
    expect(isCompiled).toBe(false);
    expect(program.run).toBeTypeOf('function');
  });

  test('is left alone when a line break of the last bytes of the script is a blank', () => {
    const folder = copyOfBuild();
    const script = join(folder, 'program.cjs');
    const text = readFileSync(script, 'latin1');
    writeFileSync(script, text.replace(/\n\}\)$/u, ' })'), 'latin1');
    expect(readFileSync(script, 'latin1')).not.toBe(text);
    expect(loadProgram(folder, what).isCompiled).toBe(false);
  });

  test('is left alone when the script is another one of the same length', () => {
    const folder = copyOfBuild();
    const script = join(folder, 'program.cjs');
    copyFileSync(script, `${script}.before`);
    const text = readFileSync(script, 'latin1');
    writeFileSync(script, text.replace('there is no command', 'there was a command'), 'latin1');
    expect(readFileSync(script).length).toBe(readFileSync(`${script}.before`).length);
    expect(loadProgram(folder, what).isCompiled).toBe(false);
  });
});

describe('the script', () => {
  test('is in ASCII, as which it is decoded', () => {
    const script = readFileSync(join(copyOfBuild(), 'program.cjs'));
    expect(script.findIndex((byte) => byte > 0x7f)).toBe(-1);
  });
});

describe('a survey', () => {
  test('starts with less compiled code than the whole program', () => {
    const folder = copyOfBuild();
    const [survey, program] = ownCode.map((what) => statSync(join(folder, `${what}.cache`)).size);
    expect(survey).toBeLessThan(0.9 * (program ?? 0));
  });

  test('whose compiled code is damaged prints the same page', () => {
    const folder = copyOfBuild();
    const survey = (): string =>
      execFileSync(
        process.execPath,
        [join(folder, 'main.js'), 'survey', 'samples/sound-saloon/readings.csv'],
        { encoding: 'utf8' },
      );
    const before = survey();
    flipBits(join(folder, 'survey.cache'), 700_000, 0x10);
    expect(survey()).toBe(before);
  });
});

function flipBits(path: string, at: number, bits: number): void {
  const bytes = readFileSync(path);
  bytes.writeUInt8((bytes[at] ?? 0) ^ bits, at);
  writeFileSync(path, bytes);
}

/** As a way that carries seven bits leaves it. */
const keepLowBits = (path: string): void =>
  writeFileSync(
    path,
    readFileSync(path).map((byte) => byte & 0x7f),
  );
