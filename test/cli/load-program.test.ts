import { execFileSync, spawnSync } from 'node:child_process';
import {
  copyFileSync,
  cpSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, inject, test } from 'vitest';
import { loadProgram, scripts } from '../../src/cli/load-program.ts';
import { temporaryFolder } from './temporary-folder.ts';

/** A copy of the build to spoil. */
function copyOfBuild(): string {
  const folder = temporaryFolder();
  cpSync(join(dirname(inject('program')), '../dist'), folder, { recursive: true });
  return folder;
}

describe.each(scripts)(
  'the code that was compiled of %s.cjs when the program was built',
  (what) => {
    const cacheIn = (folder: string): string => join(folder, `${what}.cache`);
    const scriptIn = (folder: string): string => join(folder, `${what}.cjs`);

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
      const script = scriptIn(folder);
      const text = readFileSync(script, 'latin1');
      writeFileSync(script, text.replace(/\n\}\)$/u, ' })'), 'latin1');
      expect(readFileSync(script, 'latin1')).not.toBe(text);
      expect(loadProgram(folder, what).isCompiled).toBe(false);
    });

    test('is left alone when the script is another one of the same length', () => {
      const folder = copyOfBuild();
      const script = scriptIn(folder);
      copyFileSync(script, `${script}.before`);
      const text = readFileSync(script, 'latin1');
      writeFileSync(script, text.replace('there is no command', 'there was a command'), 'latin1');
      expect(readFileSync(script).length).toBe(readFileSync(`${script}.before`).length);
      expect(loadProgram(folder, what).isCompiled).toBe(false);
    });
  },
);

test.each(scripts)('%s.cjs is in ASCII, as which it is decoded', (what) => {
  const script = readFileSync(join(copyOfBuild(), `${what}.cjs`));
  expect(script.findIndex((byte) => byte > 0x7f)).toBe(-1);
});

test('no module exports what it changes later: from part to part it is handed on by value', () => {
  const modules = readdirSync('src', { recursive: true, encoding: 'utf8' });
  const sources = modules.filter((path) => path.endsWith('.ts'));
  expect(sources.length).toBeGreaterThan(900);
  const changing = /^export (?:let|var)\b/m;
  expect(changing.test('\nexport let count = 0;')).toBe(true);
  expect(sources.filter((path) => changing.test(readFileSync(join('src', path), 'utf8')))).toEqual(
    [],
  );
});

const survey = ['survey', 'samples/sound-saloon/readings.csv'];
const printedBy = (folder: string, words: readonly string[]): string =>
  execFileSync(process.execPath, [join(folder, 'main.js'), ...words], { encoding: 'utf8' });

describe.each(['survey', 'plan'] as const)('the script of a %s', (what) => {
  const sizeOf = (folder: string, name: string): number => statSync(join(folder, name)).size;
  const readings = 'samples/sound-saloon/readings.csv';

  test('holds less than the whole program, and less compiled code', () => {
    const folder = copyOfBuild();
    for (const kind of ['cjs', 'cache'])
      expect(sizeOf(folder, `${what}.${kind}`)).toBeLessThan(
        0.9 * sizeOf(folder, `program.${kind}`),
      );
  });

  test('holds all that the command takes with a job and defects', () => {
    const folder = copyOfBuild();
    rmSync(join(folder, 'program.cjs'));
    const rest = ['job.json', 'defects.csv'].map((name) => `samples/sound-saloon/${name}`);
    const [job = '', defects = ''] = rest;
    const words = what === 'plan' ? ['--job', job, '--defects', defects] : [];
    expect(printedBy(folder, [what, readings, ...words])).toContain('front left wing');
  });

  test.each(['html', 'md', 'csv', 'ndjson'])('writes %s by itself', (form) => {
    const folder = copyOfBuild();
    rmSync(join(folder, 'program.cjs'));
    expect(printedBy(folder, [what, readings, '--format', form])).toContain('bonnet');
  });

  const withShop = [what, readings, '--shop', 'samples/shop.json'];

  test('takes from the whole program what else an option asks for', () => {
    expect(printedBy(copyOfBuild(), withShop)).toContain('front left wing');
  });

  test('says so where the whole program is of another build', () => {
    const folder = copyOfBuild();
    const script = join(folder, 'program.cjs');
    const text = readFileSync(script, 'latin1').replaceAll(/"shop-\w+\.js":/g, '"shop-0.js":');
    writeFileSync(script, text, 'latin1');
    const run = spawnSync(process.execPath, [join(folder, 'main.js'), ...withShop]);
    expect(run.status).toBe(70);
    expect(String(run.stderr)).toContain('the scripts are of different builds');
  });
});

describe('a survey', () => {
  test('whose compiled code is damaged prints the same page', () => {
    const folder = copyOfBuild();
    const before = printedBy(folder, survey);
    flipBits(join(folder, 'survey.cache'), 700_000, 0x10);
    expect(printedBy(folder, survey)).toBe(before);
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
