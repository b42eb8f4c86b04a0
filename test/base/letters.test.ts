import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  hasDigit,
  hasLetter,
  hasNumber,
  lettersOf,
  withoutMarks,
  wordsOf,
} from '../../src/base/letters.ts';

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

describe('marks on letters', () => {
  test('are taken off whatever they are, one character of each plane after another', () => {
    const plain = (some: string): string => some.replace(/\p{M}/gu, '');
    const wrong: string[] = [];
    for (let code = 0; code < 0x20000; code += 1) {
      const one = `a${String.fromCodePoint(code)}b`;
      if (withoutMarks(one) !== plain(one)) wrong.push(code.toString(16));
    }
    expect(wrong).toEqual([]);
  });

  test('are taken off any text as Unicode says', () => {
    fc.assert(
      fc.property(text, (some) => {
        for (const form of ['NFD', 'NFKD'] as const) {
          const parted = some.normalize(form);
          expect(withoutMarks(parted)).toBe(parted.replace(/\p{M}/gu, ''));
        }
      }),
      { numRuns: 2000 },
    );
  });

  test('are accents, the breve of a Cyrillic letter and the points of kana alike', () => {
    expect(withoutMarks('épaisseur µm мик ペ'.normalize('NFKD'))).toBe('epaisseur μm мик ヘ');
  });
});
