import { expect, test } from 'vitest';
import { kerbWordIn } from '../../../src/film/template/kerb-word.ts';

// In one test: what a word of another language says is worked out when it is first met.
test('the side of the driver, or of a passenger, is known in other languages too', () => {
  expect(kerbWordIn('運転席 ドア')).toBe('driver');
  expect(kerbWordIn('助手席 ドア')).toBe('passenger');
  expect(kerbWordIn('운전석 도어')).toBe('driver');
});
