import { describe, expect, test } from 'vitest';
import { briefs, read } from './helpers.ts';

const header = 'panel,point,repeat,reading_um\n';

describe('a table with the very header that this program writes', () => {
  test('is read with comma and decimal point, and nobody is said to have asked for them', () => {
    const { evidence } = read(`${header}bonnet,1,1,112.5\n`).value?.decisions ?? {};
    expect(evidence).toContain('comma as delimiter, as in every table that this program writes');
    expect(evidence).toContain('decimal point, as in every table that this program writes');
    expect(evidence?.join()).not.toContain('asked');
  });

  test('is said to be read as asked where the user did ask', () => {
    const asked = { delimiter: ',', decimal: '.' } as const;
    const { evidence } = read(`${header}bonnet,1,1,112.5\n`, asked).value?.decisions ?? {};
    expect(evidence).toContain('comma as delimiter, as asked');
    expect(evidence).toContain('decimal point as asked');
  });

  test('tells what speaks against its readings as any other table does', () => {
    const rows = 'bonnet,1,1,112\n# gauge not zeroed, all wrong\nroof,1,1,109\n';
    expect(briefs(header + rows)).toEqual(['3:1+29 warning reading-doubted']);
  });
});

describe('what is no film is told at its cell, and what became of it', () => {
  test('a 0 and a value below 0 are left out, and said to be', () => {
    const { value, diagnostics } = read(
      'panel,point,reading_um\nroof,1,112\nroof,2,0\nroof,3,-0.4\nroof,4,109\n',
    );
    expect(value?.excluded).toMatchObject([
      { line: 3, text: '0', class: 'not-film' },
      { line: 4, text: '-0.4', class: 'not-film' },
    ]);
    expect(value?.readings.map(({ thickness }) => Number(thickness))).toEqual([112, 109]);
    expect(diagnostics.map(({ message }) => message)).toEqual([
      '"0": a 0 is no film reading; the cell is left out',
      '"-0.4": a value below 0 is no film reading; the cell is left out',
    ]);
  });

  test('a film thinner than any is shown in its line', () => {
    const { diagnostics } = read('panel,um\nroof,112\nroof,11.2\nroof,109\n');
    expect(diagnostics[0]?.at).toMatchObject({
      line: 3,
      column: 6,
      length: 4,
      lineText: 'roof,11.2',
    });
  });
});
