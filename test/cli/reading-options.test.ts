import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { askLeastcut } from './ask-leastcut.ts';
import { temporaryFolder } from './temporary-folder.ts';

const german = 'Teil;Dicke, gemessen\nHaube;4,1\nDach;4,2\n';
const columns = ['--columns', 'panel=Teil,reading=Dicke, gemessen'];
const readText = (words: readonly string[], text = german, env = {}) =>
  askLeastcut(['read', '-', ...words], { stdin: text, env });

const errorOf = ({ err }: { readonly err: string }) => err.split('\n').slice(0, 1).join('');
const hintOf = ({ err }: { readonly err: string }) => /hint: (.*)/.exec(err)?.[1];

describe('options that settle how a file is read', () => {
  test('name columns whose headers hold a comma, and panels', async () => {
    const words = ['--reading-unit', 'mil', '--panel-names', 'Haube=bonnet', '--panel-names'];
    const { out, code } = await readText([...columns, ...words, 'Dach=roof']);
    expect(code).toBe(0);
    expect(out).toContain('columns: panel "Teil", reading "Dicke, gemessen"');
    expect(out).toMatch(/bonnet +1 104\.1\nroof +1 106\.7/);
  });

  test.each([
    [['--delimiter', 'semikolon'], 'did you mean "semicolon"?'],
    [['--decimal', 'coma'], 'did you mean "comma"?'],
    [['--layout', 'wiide'], 'did you mean "wide"?'],
    [['--encoding', 'windows-1525'], 'did you mean "windows-1255"?'],
    [['--header-line', '0'], 'leastcut read --help says what it takes'],
    [['--header-line', '1.5'], 'leastcut read --help says what it takes'],
    [['--longest-row', '9'], 'leastcut read --help says what it takes'],
    [['--columns', 'pannel=Teil'], 'did you mean "panel"?'],
    [['--columns', 'Teil'], 'write panel=Bauteil,reading=Messwert with the names of your file'],
    [['--columns', 'panel=Teil,panel=X'], expect.stringContaining('only date and time')],
    [['--panel-names', 'Haube='], 'write --panel-names Haube=bonnet'],
  ])('%j is refused with a way out', async (words, hint) => {
    const run = await readText(words);
    expect(run.code).toBe(2);
    expect(errorOf(run)).toContain('error[usage-option-value]');
    expect(hintOf(run)).toEqual(hint);
  });

  test('a delimiter is a word or the sign itself, a tab also \\t', async () => {
    const table = 'panel\treading_um\nroof\t101\n';
    for (const sign of ['tab', 'TAB', '\t', '\\t']) {
      expect((await readText(['--delimiter', sign], table)).code).toBe(0);
    }
    expect((await readText(['--delimiter', 'comma'], table)).code).toBe(65);
  });

  test('the environment settles it for every run, and a flag wins over it', async () => {
    const env = { LEASTCUT_DELIMITER: 'comma' };
    const text = 'panel;reading_um\nroof;101\n';
    expect((await readText([], text, env)).code).toBe(65);
    expect((await readText(['--delimiter', ';'], text, env)).code).toBe(0);
    const wrong = await readText([], text, { LEASTCUT_DECIMAL: 'punkt' });
    expect(wrong.code).toBe(78);
    expect(errorOf(wrong)).toContain('LEASTCUT_DECIMAL is "punkt"; it takes one of point, comma');
  });

  test('limits of a row can be widened where a file is as wide as that', async () => {
    const names = Array.from({ length: 2500 }, (_, k) => `colour-${k}-seen`).join(',');
    const wide = `panel,reading_um,${names}\nroof,101${','.repeat(2500)}\n`;
    expect((await readText([], wide)).code).toBe(65);
    expect((await readText(['--most-columns', '3000'], wide)).code).toBe(0);
    const note = `panel,reading_um,note\nroof,101,${'x'.repeat(120_000)}\n`;
    expect((await readText([], note)).code).toBe(65);
    expect((await readText(['--longest-row', '200000'], note)).code).toBe(0);
  });

  test('survey and plan read by the same options', async () => {
    for (const command of ['survey', 'plan']) {
      const words = [command, '-', ...columns, '--reading-unit', 'mil', '--panel-names'];
      const run = await askLeastcut([...words, 'Haube=bonnet', '--panel-names', 'Dach=roof'], {
        stdin: german,
      });
      expect(run.err).not.toContain('error');
      expect(run.out).toContain('bonnet');
    }
  });

  test('a name of a panel without its = is taken for a file, and the hint says how it is typed', async () => {
    const run = await readText(['--panel-names', 'Haube']);
    expect(run.code).toBe(66);
    expect(hintOf(run)).toBe('check the path; a name itself is typed as Haube=bonnet');
  });
});

describe('a table of panel names', () => {
  test.each([
    ['names of three columns', 'a,b,c\nd,e,f\n', ':1:1: error[cell-invalid]'],
    ['no panel beside a name', 'Haube,bonnet\nDach,\n', ':2:6: error[cell-invalid]'],
    ['two panels for one name', 'H;bonnet\nH;roof\n', ':2:1: error[cell-invalid]'],
    ['JSON that gives a number', '{ "H": 1 }', ':1:8: error[settings-invalid]'],
    ['a key twice', '{ "H": "roof", "H": "boot" }', ':1:16: error[json-duplicate-key]'],
  ])('with %s is refused at its place', async (_, text, told) => {
    const file = join(temporaryFolder(), 'names');
    writeFileSync(file, text);
    const run = await readText(['--panel-names', file], 'panel,reading_um\nH,101\n');
    expect(run.err).toContain(`${file}${told}`);
  });
});

describe('decisions written and applied', () => {
  const export1 = 'Teil;Dicke µm\nHaube;101,5\nDach;99,5\n';

  test('the file is written beside the result, and reads the next export', async () => {
    const file = join(temporaryFolder(), 'decisions.json');
    const named = ['--panel-names', 'Haube=bonnet', '--columns', 'panel=Teil'];
    expect((await readText([...named, '--decisions', file], export1)).code).toBe(0);
    expect(JSON.parse(readFileSync(file, 'utf8'))).toMatchObject({
      schema: 'leastcut/decisions/1',
      ...{ delimiter: ';', decimal: ',', unit: 'um', header_line: 1 },
      columns: { panel: 'Teil', reading: 'Dicke µm' },
      panel_names: { Haube: 'bonnet' },
    });
    const next = await readText(['--as-decided', file, '--format', 'csv'], export1.slice(0, -10));
    expect(next.out).toBe('panel,point,repeat,reading_um\nbonnet,1,1,101.5\n');
  });

  test('an older file is kept unless --force replaces it, and no input is written over', async () => {
    const file = join(temporaryFolder(), 'decisions.json');
    writeFileSync(file, 'mine');
    const refused = await readText(['--decisions', file], export1);
    expect(refused.code).toBe(73);
    expect(readFileSync(file, 'utf8')).toBe('mine');
    expect((await readText(['--decisions', file, '--force'], export1)).code).toBe(0);
    const again = await readText(['--as-decided', file, '--decisions', file, '--force'], export1);
    expect(errorOf(again)).toContain('error[output-is-input]');
  });

  test('nothing is written where the readings are refused', async () => {
    const file = join(temporaryFolder(), 'decisions.json');
    const run = await readText(['--decisions', file], 'panel,reading_um\nroof,abc\n');
    expect(run.code).toBe(65);
    expect(() => readFileSync(file)).toThrow('ENOENT');
  });
});

test('readings of a vehicle without a name beside others make no table', async () => {
  const folder = temporaryFolder();
  const [named, bare] = [join(folder, 'named.csv'), join(folder, 'bare.csv')];
  writeFileSync(named, 'vehicle,panel,reading_um\nA,roof,101\n');
  writeFileSync(bare, 'panel,reading_um\nroof,101\nbonnet,99\n');
  const run = await askLeastcut(['read', named, bare, '--format', 'csv']);
  expect(run).toMatchObject({ code: 2, out: '' });
  expect(errorOf(run)).toContain('error[usage-several-vehicles]');
  expect((await askLeastcut(['read', bare, '--format', 'csv'])).code).toBe(0);
});

test('standard input is called that in messages, and - in records', async () => {
  const text = 'panel,reading_um\nroof,abc\n';
  const run = await readText([], text);
  expect(errorOf(run)).toMatch(/^standard input:2:6: error/);
  expect((await readText([], ' ')).err).toContain('standard input holds no text');
  const { out } = await readText(['--format', 'json'], text);
  expect(JSON.parse(out).diagnostics[0].at.file).toBe('-');
  expect((await readText([], 'panel,reading_um\nroof,101\n')).out).toContain('\nstandard input\n');
});
