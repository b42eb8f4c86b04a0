import { expect, test } from 'vitest';
import { kept, keptWith, once, remembered } from '../../src/base/kept.ts';

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

test('a question of several words and numbers is another where any of them is', () => {
  const asked: string[] = [];
  const answer = kept((word: string, one: number, other: number) => {
    asked.push(word);
    return word === 'none' ? undefined : one - other;
  });
  expect(answer('a', 3, 1)).toBe(2);
  expect(answer('a', 1, 3)).toBe(-2);
  expect(answer('b', 3, 1)).toBe(2);
  expect(answer('none', 3, 1)).toBeUndefined();
  expect([answer('a', 3, 1), answer('b', 3, 1), answer('none', 3, 1)]).toEqual([2, 2, undefined]);
  expect(asked).toEqual(['a', 'a', 'b', 'none']);
});

test('of questions of several words too, only so many answers are kept', () => {
  let worked = 0;
  const answer = kept((one: number, other: number) => {
    worked += 1;
    return one * other;
  }, 2);
  expect([answer(1, 2), answer(2, 3), answer(3, 4), answer(1, 2)]).toEqual([2, 6, 12, 2]);
  expect(worked).toBe(4);
});

test('what is made once is made when it is first asked for, also where it is nothing', () => {
  let made = 0;
  const nothing = once(() => {
    made += 1;
    return undefined;
  });
  expect(made).toBe(0);
  expect([nothing(), nothing()]).toEqual([undefined, undefined]);
  expect(made).toBe(1);
});

test('an answer to a thing is worked out once for that thing, also where it is nothing, and anew for its like', () => {
  let worked = 0;
  const size = keptWith(({ parts }: { readonly parts: readonly string[] }) => {
    worked += 1;
    return parts.length === 0 ? undefined : parts.length;
  });
  const [one, like, empty] = [{ parts: ['a'] }, { parts: ['a'] }, { parts: [] }];
  expect([size(one), size(one), size(empty), size(empty)]).toEqual([1, 1, undefined, undefined]);
  expect(worked).toBe(2);
  expect(size(like)).toBe(1);
  expect(worked).toBe(3);
});
