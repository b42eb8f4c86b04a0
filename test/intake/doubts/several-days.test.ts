import { expect, test } from 'vitest';
import { read } from '../helpers.ts';

const told = (text: string) =>
  read(text)
    .diagnostics.filter(({ code }) => code === 'days-several')
    .map(({ message, at }) => [at?.line, message]);

test('two parts under lines with different days are said to be taken together', () => {
  const text = 'Date: 2024-01-01\npanel,um\nbonnet,101\nDate: 2024-06-01\npanel,um\nbonnet,97\n';
  expect(told(text)).toEqual([
    [4, 'readings of 2024-01-01 and 2024-06-01 are taken together, as one survey'],
  ]);
});

test('rows of different days are, at the first row of the second day', () => {
  const text =
    'panel,reading_um,date\nbonnet,101,01.02.2024 10:15\nroof,99,01.02.2024 10:16\nbonnet,97,03.06.2024 9:00\n';
  expect(told(text)).toEqual([
    [4, 'readings of 01.02.2024 and 03.06.2024 are taken together, as one survey'],
  ]);
});

test('one day is nothing to speak of, nor are times without a day', () => {
  expect(told('panel,reading_um,date\nbonnet,101,2024-01-01\nroof,99,2024-01-01\n')).toEqual([]);
  expect(told('panel,reading_um,time\nbonnet,101,10:15\nroof,99,10:17\n')).toEqual([]);
  expect(told('Date: 2024-01-01\npanel,um\nbonnet,101\n')).toEqual([]);
});

test('vehicles read on days of their own are no doubt', () => {
  const text = 'vehicle,panel,reading_um,date\nA,bonnet,101,2024-01-01\nB,bonnet,99,2024-01-02\n';
  expect(told(text)).toEqual([]);
});
