import { describe, expect, test } from 'vitest';
import { type GlossPlace, glossChanges } from '../../../src/film/compare/compare-gloss.ts';
import { sleep } from '../../reference/mean-differences.ts';
import { plainPanel } from '../car-builder.ts';

const roof = plainPanel('roof');
const place = (before: number, after: number, rest: Partial<GlossPlace> = {}): GlossPlace => ({
  panel: roof,
  point: `${before}`,
  angle: 60,
  before,
  after,
  haze: null,
  ...rest,
});

describe('gloss before and after', () => {
  test('has the paired t interval of Student’s sleep data (Student 1908)', () => {
    const [change] = glossChanges(
      sleep.x.map((value, i) => place(50 + value, 50 + (sleep.y[i] ?? 0))),
    );
    expect(change?.gained).toBeCloseTo(-sleep.paired.difference, 9);
    expect(change?.interval?.[0]).toBeCloseTo(-sleep.paired.interval95[1], 9);
    expect(change?.interval?.[1]).toBeCloseTo(-sleep.paired.interval95[0], 9);
    expect(change?.places).toBe(10);
  });

  test('never subtracts one angle from another', () => {
    const changes = glossChanges([place(80, 90), place(60, 75, { angle: 20 }), place(82, 91)]);
    expect(changes.map(({ angle, places, gained }) => [angle, places, gained])).toEqual([
      [60, 2, 9.5],
      [20, 1, 15],
    ]);
  });

  test('of one place has no interval', () => {
    expect(glossChanges([place(80, 90)])[0]?.interval).toBeNull();
  });

  test.each([
    [60, 70.1, 20],
    [60, 70, null],
    [60, 10, null],
    [60, 9.9, 85],
    [20, 95, null],
    [85, 5, null],
  ] as const)(
    'read at %s° as %s GU asks for %s°, by ISO 2813 and ASTM D523',
    (angle, after, better) => {
      expect(glossChanges([place(40, after, { angle })])[0]?.betterAngle).toBe(better);
    },
  );

  test('has the mean haze of the places where it was read', () => {
    const haze = { before: 30, after: 10 };
    const [change] = glossChanges([
      place(80, 90, { haze }),
      place(80, 90),
      place(80, 90, { haze: { before: 20, after: 12 } }),
    ]);
    expect(change?.haze).toEqual({ before: 25, after: 11 });
  });

  test('of nothing is nothing', () => {
    expect(glossChanges([])).toEqual([]);
  });
});
