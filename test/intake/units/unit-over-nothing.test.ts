import { describe, expect, test } from 'vitest';
import { read, values } from '../helpers.ts';

const micrometres = (text: string) => values(text)?.map(([, , , value]) => value);

describe('a unit that is said of all columns at once', () => {
  test.each([
    [
      'behind the last pipe',
      '| panel | A | B | C |  (mil)\n|---|---|---|---|\n| roof | 4 | 5 | 5 |\n',
    ],
    ['over an empty column', 'panel;1;2;3;mil\nroof;4;5;5;\n'],
    ['with its name', 'panel;1;2;3;unit: mil\nroof;4;5;5\n'],
    ['as that of all readings', 'panel;A;B;C;(readings in mil)\nroof;4;5;5\n'],
    ['in the last name', 'panel;T1;T2;T3 (all mil)\nroof;4;5;5\n'],
    ['in the last name, in German', 'Teil;T1;T2;T3 (alle Werte in mil)\nroof;4;5;5\n'],
    ['in the last name, behind it', 'panel;T1;T2;T3 [mil, all columns]\nroof;4;5;5\n'],
    ['in the first name', 'panel (all readings mil);T1;T2;T3\nroof;4;5;5\n'],
  ])('is heard %s', (_, text) => {
    expect(micrometres(text)).toEqual([101.6, 127, 127]);
    expect(read(text).value?.decisions.unit).toBe('mil');
  });

  test('and not where the column below it holds anything', () => {
    expect(values('panel;1;2;3;mil\nroof;4;5;5;7\n')).toBeUndefined();
  });

  test('and contradicts another unit aloud', () => {
    const text = 'panel;T1 (µm);T2;T3 (all mil)\nroof;104;105;106\n';
    expect(read(text).diagnostics.map(({ code }) => code)).toContain('unit-conflict');
  });
});
