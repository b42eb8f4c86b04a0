import { expect, test } from 'vitest';
import { counted } from '../../src/base/counted.ts';

test('a thing is told with how many there are, in the plural unless it is one', () => {
  expect([0, 1, 2, 21].map((count) => counted(count, 'panel'))).toEqual([
    '0 panels',
    '1 panel',
    '2 panels',
    '21 panels',
  ]);
});
