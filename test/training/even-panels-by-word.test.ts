/** Which panels vary as the film of the car does, and how many of a class read a panel in order. */
import { expect, test } from 'vitest';
import { isEven } from '../../src/training/graded-survey.ts';
import { consensusReference } from '../../src/training/reference.ts';
import { model, readingAt, surveyOf } from './true-class.ts';

const even = (
  condition: string,
  also: readonly string[] = [],
  rest: Readonly<Record<string, readonly string[]>> = {},
): boolean =>
  isEven({ condition, also, lowPoints: [], highPoints: [], keyingSlips: [], ...rest } as never);

test('a panel is even where all that is said of it is factory film, and nothing stands out of it', () => {
  expect([even('original'), even('thin'), even('original', ['thin'])]).toEqual([true, true, true]);
  expect([even('refinished'), even('filler'), even('mixed')]).toEqual([false, false, false]);
  expect(even('original', ['refinished'])).toBe(false);
  expect(even('refinished', ['original'])).toBe(false);
  for (const standing of ['lowPoints', 'highPoints', 'keyingSlips'])
    expect(even('original', [], { [standing]: ['3'] }), standing).toBe(false);
});

test('of a class as many read a panel in order as have values that only rise, or only fall', () => {
  const reads = (...ums: readonly number[]) =>
    surveyOf(ums.map((um, i) => readingAt('roof', `${i + 1}`, 1, um)));
  const inOrder = (...surveys: readonly ReturnType<typeof reads>[]) =>
    consensusReference(surveys, model.class).panels.get('roof')?.inOrder;
  const [rising, falling] = [reads(110, 111, 113, 116), reads(116, 113, 111, 110)];
  const [turning, resting] = [reads(110, 114, 112, 116), reads(110, 112, 112, 116)];
  expect(inOrder(rising, falling, turning, resting)).toEqual({ count: 2, of: 4 });
  expect(inOrder(turning, turning, resting)).toEqual({ count: 0, of: 3 });
  expect(inOrder(rising, rising, falling)).toEqual({ count: 3, of: 3 });
});
