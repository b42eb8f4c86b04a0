import { describe, expect, test } from 'vitest';
import { restoredText } from '../../../src/intake/rows/canonical-csv.ts';
import { brief, read, values } from '../helpers.ts';

describe('the table that this program writes, read back', () => {
  test.each([
    ["'=1+1", '=1+1'],
    ["''=1", "'=1"],
    ["'so'", "'so'"],
    ['a\\u{200b}b', 'a\u200bb'],
    ['\\u{5c}u{200b}', '\\u{200b}'],
    ['\\u{ffffff}', '\\u{ffffff}'],
  ])('%j means %j', (written, meant) => {
    expect(restoredText(written)).toBe(meant);
  });

  test('a point between digits is its decimal mark, whatever else it could be', () => {
    expect(values('panel,point,repeat,reading_um\nroof,1,1,1.234\n')).toEqual([
      ['roof', '1', 1, 1.234],
    ]);
    const [doubt] = read('panel,point,reading_um\nroof,1,1.234\n').diagnostics;
    expect(doubt?.code).toBe('reading-ambiguous');
  });

  test('a number in the column behind the reading is no part of it', () => {
    expect(
      values('panel,point,repeat,reading_um,note\nroof,1,1,101,5\nroof,2,1,99,\n'),
    ).toHaveLength(2);
  });

  test('a diagnostic shows the cell as it stands in the file', () => {
    const text = "panel,point,repeat,reading_um,note\n'=roof,1,1,abc,\n";
    expect(read(text).diagnostics.map(brief)).toEqual(['2:12+3 error reading-not-a-number']);
  });
});
