/** Film that came on by as much as paint: over a panel, in a zone of it, or from one visit to the next. */
import { describe, expect, test } from 'vitest';
import { exactly } from '../../../src/base/uncertainty.ts';
import { micrometres } from '../../../src/base/units.ts';
import { paintAmong, paintGained } from '../../../src/film/compare/paint-gain.ts';

const LINE = micrometres(15);
type Part = Parameters<typeof paintAmong>[0][number];

/** A part that reads so much more than before. */
const part = (more: number | null, gained = true): Part => ({
  gained,
  change:
    more === null
      ? null
      : {
          removed: exactly(micrometres(-more)),
          low: micrometres(-more),
          high: micrometres(-more),
          resolved: true,
          detectable: { half: micrometres(1), surely: micrometres(2) },
        },
});

describe('what a panel gained', () => {
  test('is paint from the line on, and no matter under it', () => {
    expect(paintAmong([part(15)], LINE)).toBe(15);
    expect(paintAmong([part(14.9)], LINE)).toBeNull();
    expect(paintAmong([part(14.9)], micrometres(14))).toBe(14.9);
  });

  test('is the most of the panel and its zones', () => {
    expect(paintAmong([part(16), part(2), part(40)], LINE)).toBe(40);
    expect(paintAmong([part(3), part(2)], LINE)).toBeNull();
    expect(paintAmong([], LINE)).toBeNull();
  });

  test('is none that cannot be told from nothing, that was not compared, or that came off', () => {
    expect(paintAmong([part(40, false), part(16)], LINE)).toBe(16);
    expect(paintAmong([part(null)], LINE)).toBeNull();
    expect(paintAmong([part(-40)], LINE)).toBeNull();
    expect(paintAmong([part(-40)], micrometres(0))).toBe(0);
  });
});

test('a panel was painted by the most of all visits together and of one to the next', () => {
  const paint = (um: number | null) => ({ paint: um === null ? null : micrometres(um) });
  const gained = (over: number | null, rise: number | null | undefined) =>
    paintGained({ comparison: paint(over), rise: rise === undefined ? null : paint(rise) });
  expect([gained(20, 31), gained(31, 20), gained(20, null), gained(20, undefined)]).toEqual([
    31, 31, 20, 20,
  ]);
  expect([gained(null, 31), gained(null, null), gained(null, undefined)]).toEqual([31, null, null]);
});
