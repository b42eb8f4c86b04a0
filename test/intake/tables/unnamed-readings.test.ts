import { describe, expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

const films = (text: string) => values(text)?.map((one) => one[3]);

describe('rows under a comma with no more cells beyond the names than named readings are refused', () => {
  const fivePerRow =
    'Unit: µm\nPanel,m1,m2,m3,m4\nbonnet,115,91,122,74,127\nroof,114,92,117,86,113\n';

  test('for a cell more may be the decimals of one reading', () => {
    expect(values(fivePerRow)).toBeUndefined();
    expect(briefs(fivePerRow)).toEqual(['3:22+3 error row-too-long', '4:20+3 error row-too-long']);
    expect(read(fivePerRow).diagnostics[0]?.hint).toBe(
      'a decimal comma? quote each such number; a further reading? name its column',
    );
  });

  test('also where the header is filled up with empty names', () => {
    expect(values(fivePerRow.replace('m4', 'm4,'))).toBeUndefined();
  });

  test('also where each row has a number of its own of them', () => {
    expect(values(`${fivePerRow}boot,115,91,122,74,127,118\n`)).toBeUndefined();
  });
});

describe('cells beyond the names are further readings', () => {
  test.each([
    ['where a semicolon parts the columns', 'Panel;m1;m2\nbonnet;115;91;122\nroof;114;92;117\n'],
    ['where there are too many for decimals', 'Panel,m1\nbonnet,115,191,122\nroof,114,192,117\n'],
    ['where one name is merged over them', 'Panel,Readings,\nbonnet,115,122\nroof,114,117\n'],
    [
      'where a decimal point stands in every row',
      'Panel,m1\nbonnet,115.5,122.1\nroof,114.0,117.3\n',
    ],
  ])('%s', (_, text) => {
    const cells = text.match(/(?<=[,;])\d[\d.]*/gu)?.map(Number);
    expect(films(`Unit: µm\n${text}`)).toEqual(cells);
  });
});

describe('further readings under no name', () => {
  test('are told at their empty name, for nothing but their size says that they are readings', () => {
    const text = 'panel;reading_um;\nbonnet;112;111\nbonnet;115;114\nroof;101;100\n';
    expect(briefs(text)).toEqual(['1:18+1 warning column-unnamed']);
    const [only] = read(text).diagnostics;
    expect(only?.message).toBe(
      'column 3 has no name: its numbers are as large as the readings and read as further ones',
    );
    expect(only?.hint).toContain('call the columns reading 1, reading 2 …');
    expect(briefs(text.replace('reading_um;', 'reading 1 (µm);reading 2 (µm)'))).toEqual([]);
  });

  test('are told once for all columns that go on so', () => {
    const text = 'panel;reading_um;;\nbonnet;112;115;118\nroof;101;99;103\n';
    expect(read(text).diagnostics[0]?.message).toBe(
      'columns 3 to 4 have no name: their numbers are as large as the readings and read as further ones',
    );
    expect(read(text).diagnostics).toHaveLength(1);
  });

  test('are told where the rows go beyond the names', () => {
    expect(briefs('panel;1 (µm);2 (µm)\nbonnet;115;91;122\nroof;114;92;117\n')).toEqual([
      '2:15+3 warning column-unnamed',
    ]);
  });
});

describe('a last column without a name that is the mean of the others in every row', () => {
  const means =
    'Panel,1 (µm),2 (µm),3 (µm),\nbonnet,95.5,95.6,71.8,87.6\nroof,139.2,137.8,144.9,140.6\n';

  test('is left out and told, on three rows and more', () => {
    const text = `${means}boot,131.7,128.5,137.2,132.5\n`;
    expect(films(text)).toEqual([95.5, 95.6, 71.8, 139.2, 137.8, 144.9, 131.7, 128.5, 137.2]);
    expect(briefs(text)).toEqual(['1:28+1 warning statistics-left-out']);
    expect(read(text).diagnostics[0]?.message).toContain('is the mean of the readings beside it');
  });

  test('also where it goes beyond the header', () => {
    const text = `${means}boot,131.7,128.5,137.2,132.5\n`.replace('(µm),\n', '(µm)\n');
    expect(films(text)).toHaveLength(9);
  });

  test('is read as readings where one row is otherwise', () => {
    const text = `${means}boot,131.7,128.5,137.2,130.5\n`;
    expect(films(text)).toHaveLength(12);
  });
});
