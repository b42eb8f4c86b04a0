import { expect, test } from 'vitest';
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
