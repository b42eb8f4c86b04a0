import { expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

const table = (...texts: readonly string[]): string =>
  `panel,point,reading_um\n${texts.map((text, k) => `roof,${k + 1},${text}\n`).join('')}`;
const numbers = (text: string) => values(text)?.map((one) => one[3]);

test('few readings that became dates are left out aloud, and the others stand', () => {
  const text = table('101.5', '05-Apr', '102.5', '99.5');
  expect(numbers(text)).toEqual([101.5, 102.5, 99.5]);
  expect(briefs(text)).toEqual(['3:8+6 warning reading-became-date']);
  expect(read(text).value?.excluded.map((one) => one.class)).toEqual(['error']);
  expect(numbers(table('101.5', '12:30', '1. Mai', '99.5', '98'))).toEqual([101.5, 99.5, 98]);
});

test('where half the readings are dates the file is refused', () => {
  const told = ['3:8+6 error reading-became-date', '4:8+6 error reading-became-date'];
  expect(briefs(table('101.5', '05-Apr', '04-Jun', '99.5'))).toEqual(told);
});

test('in a list without names of columns a date refuses the file', () => {
  const list = 'µm\nroof\n101\n102\n12/03/2026\n99\n98\n';
  expect(briefs(list).join()).toContain('error');
});

test('a reading below 0 is kept as it stands, and told once', () => {
  for (const sign of ['-4.5', '\u22124.5', '4.5-']) {
    const text = table('101.5', sign, '102.5', '99.5');
    expect(numbers(text)).toEqual([101.5, -4.5, 102.5, 99.5]);
    expect(briefs(text)).toEqual([`3:8+4 warning reading-implausible`]);
    expect(read(text).value?.excluded).toEqual([]);
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
  expect(numbers(table('101', '-1', '102', '99', '-2'))).toEqual([101, -1, 102, 99, -2]);
});

test('a value as far below 0 as paint is thick is told to be a slip of its sign', () => {
  const { value, diagnostics } = read('panel,um\nbonnet,104\nbonnet,-102\nroof,101\nroof,99\n');
  expect(value?.readings.map(({ thickness }) => Number(thickness))).toContain(-102);
  expect(diagnostics.map(({ message, hint }) => `${message}; ${hint}`)).toEqual([
    '"-102": a value below 0 is no film, and as large as one: the sign may be a slip; it is kept as it stands; if the gauge showed it without the sign, take that out; else read the point again',
  ]);
});
