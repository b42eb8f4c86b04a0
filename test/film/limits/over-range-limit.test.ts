import { expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { pointsOver } from '../../../src/film/condition/over-range.ts';
import type { Allowance } from '../../../src/film/limits/allowance.ts';
import { heldByRange } from '../../../src/film/limits/over-range-limit.ts';

const over = (point: string | null, place: 'face' | 'edge' = 'face') => ({
  point,
  place,
  text: 'OL',
});

test('points beyond the range are named once each, by their place where that is off the face', () => {
  expect(pointsOver([over('3')])).toBe('point 3');
  expect(pointsOver([over('3'), over('3'), over('2', 'edge')])).toBe('points 3, 2 (edge)');
  expect(pointsOver([over(null), over(null, 'edge')])).toBe('points ?, ? (edge)');
});

test('only the limit of a test spot says that such points wait to be read again', () => {
  const limits = [
    { code: 'total', value: micrometres(9), text: 'smallest point' },
    { code: 'test-spot', value: micrometres(0), text: 'a test spot comes first' },
  ] as unknown as Allowance['limits'];
  const held = heldByRange({ limits } as Allowance, [over('3')]);
  expect(held.limits.map(({ text }) => text)).toEqual([
    'smallest point',
    'point 3 beyond the range of the gauge, so filler unless the probe was lifted: read again; beyond it again, a test spot comes first',
  ]);
  expect([held.budget, held.boundBy.code]).toEqual([0, 'test-spot']);
});
