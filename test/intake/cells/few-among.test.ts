import { expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

const table = (...texts: readonly string[]): string =>
  `panel,point,reading_um\n${texts.map((text, k) => `roof,${k + 1},${text}\n`).join('')}`;
const numbers = (text: string) => values(text)?.map((one) => one[3]);

test('a reading that became a date refuses the file, however many readings stand beside it', () => {
  const many = Array.from({ length: 30 }, (_, k) => `${98 + (k % 7)}.5`);
  for (const lost of ['05-Apr', '12:30', '1. Mai', '12.05.2026', 'Mai 12']) {
    const long = table(...many, lost);
    expect(numbers(long)).toBeUndefined();
    expect(briefs(long)).toEqual([`32:9+${lost.length} error reading-became-date`]);
  }
});

test('in wide tables and under numbered columns a date among the readings refuses the file as well', () => {
  const told = '2:14+6 error reading-became-date';
  const numbered =
    'panel,1 (µm),2 (µm),3 (µm)\nbonnet,112.1,12-May,113.2\nroof,110.2,111.3,112.4\n';
  const wide =
    'Point,Bonnet (µm),Roof (µm)\nfront,112.1,12-May\nrear,110.2,111.3\nmid,112.4,113.1\n';
  expect(briefs(numbered)).toEqual([told]);
  expect(briefs(wide)).toEqual([told.replace('14', '13')]);
});

test('each date among the readings is told in its place', () => {
  const told = ['3:8+6 error reading-became-date', '4:8+6 error reading-became-date'];
  expect(briefs(table('101.5', '05-Apr', '04-Jun', '99.5'))).toEqual(told);
});

test('in a list without names of columns a date refuses the file', () => {
  const list = 'µm\nroof\n101\n102\n12/03/2026\n99\n98\n';
  expect(briefs(list).join()).toContain('error');
});

test('a reading a little below 0 is a 0: no mean takes it, and it is told once', () => {
  for (const sign of ['-0.3', '-4.5', '\u22124.5', '4.5-', '-39.9']) {
    const text = table('101.5', sign, '102.5', '99.5');
    expect(numbers(text)).toEqual([101.5, 102.5, 99.5]);
    expect(briefs(text)).toEqual([`3:8+${sign.length} warning reading-implausible`]);
    expect(read(text).value?.excluded).toMatchObject([
      { line: 3, text: sign, class: 'not-film', panel: 'roof', point: '2' },
    ]);
  }
});

test('most numbers below 0 are no readings: their dash may be no sign', () => {
  expect(briefs(table('-101', '-104', '-99', '98')).join()).toContain(
    'warning reading-implausible',
  );
  expect(numbers(table('-101', '-104', '-99', '98'))).toEqual([98]);
  expect(numbers(table('-101', '-104'))).toBeUndefined();
});

test('three digits behind the mark of a number below 0 are not taken for thousands', () => {
  expect(briefs(table('101', '-1.234', '102', '99'))).toEqual(['3:8+6 error reading-ambiguous']);
  expect(briefs(table('101', '-6000', '102', '99'))).toEqual(['3:8+5 error reading-implausible']);
});

test('-1 again and again is no reading: programs write it for no value', () => {
  const text = table('101', '-1', '102', '99', '-1');
  expect(numbers(text)).toEqual([101, 102, 99]);
  expect(briefs(text)).toEqual(['3:8+2 warning reading-missing', '6:8+2 warning reading-missing']);
  expect(numbers(table('101', '-1', '102', '99', '-2'))).toEqual([101, 102, 99]);
});

test('a value as far below 0 as paint is thick is left out aloud, and no mean takes it', () => {
  for (const sign of ['-102', '-40', '\u2212102', '102-']) {
    const { value, diagnostics } = read(table('104', sign, '101', '99'));
    expect(value?.readings.map(({ thickness }) => Number(thickness))).toEqual([104, 101, 99]);
    const reason =
      'a value below 0 is no film, and as large as one: a slip of the sign, or a difference';
    expect(value?.excluded).toMatchObject([
      { line: 3, column: 8, text: sign, class: 'not-film', reason, panel: 'roof', point: '2' },
    ]);
    expect(diagnostics.map(({ severity, message, hint }) => [severity, message, hint])).toEqual([
      [
        'warning',
        `"${sign}": ${reason}; the cell is left out`,
        'if the gauge showed it without the sign, take that out; else read the point again',
      ],
    ]);
  }
});

test('how far below 0 a value lies is told in µm, whatever the unit', () => {
  const mil =
    'panel,point,reading_mil\nroof,1,4.1\nroof,2,-4.2\nroof,3,-0.2\nroof,4,4.3\nroof,5,4.2\n';
  const reasons = read(mil).value?.excluded.map(({ point, reason }) => [point, reason.length > 40]);
  expect(reasons).toEqual([
    ['2', true],
    ['3', false],
  ]);
});
