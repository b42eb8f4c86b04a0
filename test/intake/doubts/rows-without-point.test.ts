import { expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

const table = (...more: readonly string[]): string =>
  `${['panel,point,reading_um', 'roof,1,101', 'roof,2,99', 'boot,1,112', 'boot,2,115', ...more].join('\n')}\n`;

test('a row without a point among others that name theirs is read, and told', () => {
  expect(briefs(table('boot,,120'))).toEqual(['6:7+3 warning reading-doubted']);
  expect(values(table('boot,,120'))).toHaveLength(5);
  expect(read(table('boot,,120')).diagnostics[0]?.message).toContain('names no point');
});

test('several are told once, with their number', () => {
  const text = table('boot,3,114', 'roof,3,100', 'boot,,120', 'roof,,121');
  const [only, ...more] = read(text).diagnostics;
  expect(only?.message).toContain('; so it is with 1 more');
  expect(more).toEqual([]);
});

test('of many nothing is told: they are as the file names its points', () => {
  expect(briefs(table('boot,,120', 'roof,,104', 'roof,,103'))).toEqual([]);
});

test('a row without a point that is the mean is told as that alone', () => {
  expect(read(table('boot,,106.75')).diagnostics.map(({ code }) => code)).toEqual([
    'statistics-unnamed',
  ]);
});

test('a row of a wide table without its number is told', () => {
  const text = 'point;bonnet (µm);roof (µm)\n1;112;101\n2;115;99\n3;118;103\n;120;121\n';
  expect(read(text).diagnostics[0]?.message).toContain('names no point');
});

test.each(['wide', 'long'])('so is one under a corner without a name, in a %s table', (kind) => {
  const text =
    kind === 'wide'
      ? ';bonnet (µm);roof (µm)\n1;112;101\n2;115;99\n3;118;103\n4;117;102\n;120;121\n'
      : ';reading (µm);panel\n1;112;bonnet\n2;115;bonnet\n1;101;roof\n2;103;roof\n;120;bonnet\n';
  const messages = read(text).diagnostics.map(({ message }) => message);
  expect(messages.filter((message) => message.includes('names no point'))).toHaveLength(1);
  expect(briefs(text.replace('\n;', '\n5;')).join()).not.toContain('reading-doubted');
});

test('numbers that few rows have under a corner without a name are no points', () => {
  const text = ';bonnet (µm);roof (µm)\n1;112;101\n;115;99\n;118;103\n;117;102\n';
  expect(briefs(text).join()).not.toContain('reading-doubted');
});
