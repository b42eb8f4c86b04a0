import { expect, test } from 'vitest';
import { faceReadings } from '../../src/training/graded-survey.ts';
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
