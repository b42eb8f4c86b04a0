import { expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

const means = 'point;bonnet (µm);roof (µm);Car\n1;112;101;106.5\n2;115;99;107\n';

test('numbers under "Car" behind the panels that lie among the readings are not taken for vehicles', () => {
  expect(briefs(means)).toEqual(['2:11+5 error reading-ambiguous']);
  expect(read(means).diagnostics[0]?.message).toContain('may be means');
  expect(briefs('bonnet (µm);roof (µm);Vehicle\n112;101;107\n115;99;107\n')).toEqual([
    '2:9+3 error reading-ambiguous',
  ]);
});

test('either remedy reads the file', () => {
  expect(values(means.replace(/;[^;\n]*\n/gu, '\n'))).toHaveLength(4);
  const before = 'Car;bonnet (µm);roof (µm)\n106;112;101\n107;115;99\n';
  expect(read(before).value?.readings.map(({ vehicle }) => vehicle)).toEqual([
    '106',
    '106',
    '107',
    '107',
  ]);
});

test.each([
  ['one is another number', '2;115;99;4711'],
  ['one is a name', '2;115;99;FH-2'],
])('where %s the column names the vehicles', (_, last) => {
  expect(values(means.replace('2;115;99;107', last))).toHaveLength(4);
});

test('a row that names no vehicle tells nothing of the column', () => {
  expect(briefs(means.replace('99;107', '99;'))).toEqual(['2:11+5 error reading-ambiguous']);
  expect(briefs(means.replace('106.5', '').replace('99;107', '99;')).join()).not.toContain('means');
});

test('vehicles of a long table are as they are called', () => {
  const text = 'panel;reading_um;car\nbonnet;112;112\nroof;101;101\n';
  expect(values(text)).toHaveLength(2);
});
