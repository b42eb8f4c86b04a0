import { describe, expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

const table = (...codes: readonly string[]) =>
  `Units: 1 = micrometre, 2 = mil\nPanel;Point;Value;Unit\n${codes
    .map((code, k) => `bonnet;${k + 1};11${k}.1;${code}`)
    .join('\n')}\n`;

test('a code that a line explains is the unit of its rows', () => {
  expect(values(table('1', '1', '1'))?.map((one) => one[3])).toEqual([110.1, 111.1, 112.1]);
  expect(read(table('1', '1')).value?.decisions.evidence).toContain(
    'the file says what its units are: 1 is µm',
  );
});

test('a code that no line explains is refused at its cell, and not at the line', () => {
  expect(briefs(table('1', '3', '1'))).toEqual(['4:16+1 error unit-unknown']);
  expect(briefs(table('A', 'A'))[0]).toBe('3:16+1 error unit-unknown');
});

describe('a column behind the readings that nobody calls one of units', () => {
  const coded = (legend: string, column: string, codes: string): string =>
    `Panel;Value;${column}\n${[...codes].map((code, k) => `bonnet;11${k}.1;${code}`).join('\n')}\n\n${legend}\n`;

  test.each([
    ['E', 'Einheit: 1 = µm'],
    ['Code', 'Unit code: 1 = um, 2 = mil'],
    ['U', 'U: 1 = µm, 2 = mil'],
    ['Mode', '1 = µm'],
  ])('is one where each row has a code that a line explains: %s, %s', (column, legend) => {
    const { value } = read(coded(legend, column, '111'));
    expect(value?.readings.map(({ thickness }) => Number(thickness))).toEqual([
      110.1, 111.1, 112.1,
    ]);
    expect(value?.decisions.evidence).toContain('the file says what its units are: 1 is µm');
    expect(value?.decisions.evidence).toContain(`the column "${column}" says µm`);
  });

  test.each([
    ['one code is explained nowhere', coded('E: 1 = µm', 'E', '112')],
    ['two lines explain a code in two ways', coded('1 = µm\n1 = mil', 'E', '111')],
    [
      'another column that nobody knows has such codes as well',
      'Panel;Value;E;Lot\nbonnet;110.1;1;1\nbonnet;111.1;1;1\n\nE: 1 = µm\n',
    ],
  ])('is none where %s', (_, text) => {
    expect(briefs(text).some((one) => /error unit-(?:missing|unknown)/u.test(one))).toBe(true);
  });
});
