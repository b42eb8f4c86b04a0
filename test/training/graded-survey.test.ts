import { expect, test } from 'vitest';
import { faceReadings, isRepaired, lowZonePoints } from '../../src/training/graded-survey.ts';
import { readingAt } from './true-class.ts';

test('readings of the face are of the whole film and of the face: no layer of it, no edge', () => {
  const at = (place: 'face' | 'edge', layer: string, panel = 'roof') => ({
    ...readingAt(panel, '1', 1, 110),
    place,
    layer,
  });
  const [face, other] = [at('face', ''), at('face', '', 'boot')];
  const readings = [at('edge', ''), at('face', 'clear'), at('edge', 'clear'), face, other];
  expect(faceReadings({ readings })).toEqual([face, other]);
  expect(faceReadings({ readings }, 'roof')).toEqual([face]);
});

test('a thinner zone is a low spot where the thicker one is nearer to the film of the car', () => {
  const zone = (name: 'thinner' | 'thicker', ...films: readonly number[]) => ({
    zone: name,
    points: films.map((thickness, k) => ({ point: `${name} ${k + 1}`, thickness })),
  });
  const low = (high: number, baseline: number | null = 112) =>
    lowZonePoints({
      zones: [zone('thinner', 79, 81), zone('thicker', high - 2, high + 2, high)],
      baseline,
    } as never);
  const two = ['thinner 1', 'thinner 2'];
  expect(low(112)).toEqual(two);
  // Of 80 and 144 either is 32 away.
  expect(low(143.9)).toEqual(two);
  expect(low(144)).toEqual([]);
  expect(low(85, 82)).toEqual([]);
  expect(low(112, null)).toEqual([]);
  expect(lowZonePoints({ zones: [], baseline: 112 as never })).toEqual([]);
});

test('a panel is repaired by any of what it is: thin repaint, filler beside factory film, two films of which none is low', () => {
  const is = (...[condition, ...also]: readonly string[]) =>
    isRepaired({ condition, also, zones: [], baseline: 112 } as never);
  expect(is('thin', 'refinished')).toBe(true);
  expect(is('original', 'filler')).toBe(true);
  expect(is('mixed')).toBe(true);
  expect(is('original', 'thin')).toBe(false);
});
