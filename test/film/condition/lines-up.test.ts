import { expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { type PossibleSides, withLinesUp } from '../../../src/film/condition/possible-sides.ts';

const sides = (cutBack: object | null): PossibleSides =>
  ({ lost: [], cutBack }) as unknown as PossibleSides;

test('as much put back on a panel as on those of its baseline moves the line of film cut back, and the baseline where there is one', () => {
  const up = (cutBack: object | null) => withLinesUp(sides(cutBack), micrometres(4)).cutBack;
  expect(up({ line: 100, baseline: 112 })).toMatchObject({ line: 104, baseline: 116 });
  expect(up({ line: 100, baseline: null })).toMatchObject({ line: 104, baseline: null });
  expect(up(null)).toBeNull();
});
