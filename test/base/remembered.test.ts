import { expect, test } from 'vitest';
import { remembered } from '../../src/base/remembered.ts';

test('an answer is worked out once for each text, also where the answer is nothing', () => {
  const asked: string[] = [];
  const answer = remembered((text) => {
    asked.push(text);
    return text === 'a' ? undefined : text.length;
  });
  expect(['a', 'bb', 'a', 'bb', 'a'].map(answer)).toEqual([undefined, 2, undefined, 2, undefined]);
  expect(asked).toEqual(['a', 'bb']);
});

test('however many texts are asked for, only so many answers are kept, and all are right', () => {
  let worked = 0;
  const answer = remembered((text) => {
    worked += 1;
    return text.length;
  }, 2);
  expect(['a', 'bb', 'ccc', 'a', 'ccc'].map(answer)).toEqual([1, 2, 3, 1, 3]);
  expect(worked).toBe(4);
});
