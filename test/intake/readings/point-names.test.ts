import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createPointNames } from '../../../src/intake/readings/point-names.ts';

type Asked = {
  readonly panel: string;
  readonly point: string;
  readonly isReading: boolean;
  readonly repeat: number | undefined;
};

const asked: fc.Arbitrary<Asked> = fc.record({
  panel: fc.constantFrom('roof', 'boot'),
  point: fc.constantFrom('', '1', '2', '3', '4', 'a'),
  isReading: fc.constantFrom(true, true, true, false),
  repeat: fc.constantFrom(undefined, undefined, undefined, 1, 2, 3),
});

/** What the repeats of a point were, one by one: the plain way, without a thought for speed. */
function byTheBook(all: readonly Asked[]) {
  const counts = new Map<string, number>();
  const repeats = new Map<string, number[]>();
  return all.map(({ panel, point: written, isReading, repeat: explicit }) => {
    const count = (counts.get(panel) ?? 0) + (written === '' ? 1 : 0);
    counts.set(panel, count);
    const point = written === '' ? String(count) : written;
    if (!isReading) return { point, repeat: explicit ?? 0, taken: false };
    const used = repeats.get(`${panel} ${point}`) ?? [];
    const repeat = explicit ?? Math.max(0, ...used) + 1;
    repeats.set(`${panel} ${point}`, [...used, repeat]);
    return { point, repeat, taken: used.includes(repeat) };
  });
}

test('points that count 1, 2, 3 … get the repeats that any others would, whatever comes after them', () => {
  const inOrder = fc.integer({ min: 0, max: 4 }).map((most) =>
    Array.from({ length: most }, (_, k): Asked => {
      const point = String(k + 1);
      return { panel: 'roof', point, isReading: true, repeat: undefined };
    }),
  );
  fc.assert(
    fc.property(inOrder, fc.array(asked, { maxLength: 12 }), (first, then) => {
      const all = [...first, ...then];
      const names = createPointNames(false);
      const told = all.map(({ panel, point, isReading, repeat }) =>
        names.next('car', panel, point, '', isReading, repeat),
      );
      expect(told).toEqual(byTheBook(all));
    }),
    { numRuns: 3000 },
  );
});
