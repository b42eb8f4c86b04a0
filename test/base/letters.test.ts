import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hasDigit, hasLetter, hasNumber, lettersOf, wordsOf } from '../../src/base/letters.ts';

const text = fc.oneof(
  fc.string(),
  fc.string({ unit: 'grapheme' }),
  fc.constantFrom(
    'bonnet 2',
    'LF-door',
    'capó',
    'ボンネット',
    '左前門 ２',
    'Tür_vorn',
    '½',
    'Ⅻ',
    '',
    '—',
  ),
);

describe('letters and digits', () => {
  test('are those of Unicode, whether a text is ASCII or not', () => {
    fc.assert(
      fc.property(text, (some) => {
        expect(hasLetter(some)).toBe(/\p{L}/u.test(some));
        expect(hasNumber(some)).toBe(/\p{N}/u.test(some));
        expect(hasDigit(some)).toBe(/\p{Nd}/u.test(some));
        expect(wordsOf(some)).toEqual(some.match(/[\p{L}\p{M}\p{N}]+/gu) ?? []);
        expect(lettersOf(some)).toBe(some.replace(/[^\p{L}\p{N}]+/gu, ''));
      }),
      { numRuns: 2000 },
    );
  });

  test('of a label are its words, without what stands between them', () => {
    expect(wordsOf('door_front-left (2)')).toEqual(['door', 'front', 'left', '2']);
    expect(lettersOf('L. F. Tür')).toBe('LFTür');
  });
});
