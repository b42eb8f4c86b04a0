import { describe, expect, test } from 'vitest';
import { alikeGroups } from '../../src/report/survey/gain-groups.ts';

const grouped = (...gains: readonly number[]) =>
  alikeGroups(gains.map((gain) => ({ gain }))).map((group) => group.map(({ gain }) => gain));

describe('gains of many panels', () => {
  test('are one group while the largest is no more than twice the least', () => {
    expect(grouped(0.96, 0.75, 0.49)).toEqual([[0.49, 0.75, 0.96]]);
    expect(grouped(0.5)).toEqual([[0.5]]);
    expect(grouped()).toEqual([]);
  });
  test('are parted at the widest gap, in as few groups as may be', () => {
    expect(grouped(0.22, 0.25, 0.31, 0.44, 0.53, 0.78)).toEqual([
      [0.22, 0.25, 0.31],
      [0.44, 0.53, 0.78],
    ]);
    expect(grouped(0.3, 0.9, 3)).toEqual([[0.3], [0.9], [3]]);
  });
  test('are in no group within which one is over twice another, whatever they are, and all are in one', () => {
    for (let seed = 1; seed <= 60; seed += 1) {
      const gains = Array.from(
        { length: 13 },
        (_, i) => 0.11 + 5 * Math.abs(Math.sin(seed * (i + 1))) ** 3,
      );
      const groups = grouped(...gains);
      for (const group of groups) {
        expect(Math.max(...group)).toBeLessThanOrEqual(2 * Math.min(...group));
      }
      expect(groups.flat()).toEqual([...gains].sort((a, b) => a - b));
    }
  });
  test('too small to ask whose they are stay together', () => {
    expect(grouped(0.02, 0.06)).toEqual([[0.02, 0.06]]);
  });
  test('that are losses go by their size', () => {
    expect(grouped(-0.8, -0.05, -0.72)).toEqual([[-0.05], [-0.72, -0.8]]);
  });
});
