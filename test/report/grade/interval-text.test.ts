import { describe, expect, test } from 'vitest';
import { exactInterval } from '../../../src/base/stats/proportion-interval.ts';
import { intervalText } from '../../../src/report/grade/grade-words.ts';

describe('an exact interval on a page', () => {
  test('holds all of it: of one in one 2.5 to 100 %, of none in one 0 to 97.5 %', () => {
    expect(intervalText(exactInterval(1, 1))).toBe('2 to 100 %');
    expect(intervalText(exactInterval(0, 1))).toBe('0 to 98 %');
  });
  test('is as printed by Newcombe (1998, table I, method 5), rounded outward', () => {
    // 81 of 263: .2527 to .3676; 15 of 148: .0578 to .1617.
    expect(intervalText(exactInterval(81, 263))).toBe('25 to 37 %');
    expect(intervalText(exactInterval(15, 148))).toBe('5 to 17 %');
  });
});
