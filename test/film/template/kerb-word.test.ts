import { expect, test } from 'vitest';
import { kerbWordIn } from '../../../src/film/template/kerb-word.ts';

test('a panel named by its side to the kerb is known by that word, and others have none', () => {
  expect(kerbWordIn('nearside front wing')).toBe('nearside');
  expect(kerbWordIn('offside rear door')).toBe('offside');
  expect(kerbWordIn('front left wing')).toBeUndefined();
  expect(kerbWordIn('roof')).toBeUndefined();
  expect(kerbWordIn('')).toBeUndefined();
});

test('a word of a side without a panel names none', () => {
  expect(kerbWordIn('nearside')).toBeUndefined();
});
