import { describe, expect, test } from 'vitest';
import { displayWidth, printable } from '../../src/render/printable.ts';

describe('text that is safe on a terminal', () => {
  test.each([
    ['an escape', 'a\u001b[31mb', 'a\\u{1b}[31mb'],
    ['a bell', '\u0007', '\\u{7}'],
    ['a line end', 'a\nb', 'a\\u{a}b'],
    ['a tab', 'a\tb', 'a\\u{9}b'],
    ['an eight-bit control', '\u009b2J', '\\u{9b}2J'],
    ['a mark of direction', '\u202eabc', '\\u{202e}abc'],
    ['an isolate', '\u2066abc\u2069', '\\u{2066}abc\\u{2069}'],
    ['a separator of lines', 'a\u2028b', 'a\\u{2028}b'],
    ['a byte order mark', '\ufeffa', '\\u{feff}a'],
  ])('shows %s as what it is', (_, text, safe) => {
    expect(printable(text)).toBe(safe);
  });

  test('shows every control character and every half of a pair by its number', () => {
    for (let code = 0; code <= 0xffff; code += 1) {
      const mark = String.fromCharCode(code);
      if (!/[\p{Cc}\p{Cs}]/u.test(mark)) continue;
      expect(printable(`a${mark}b`)).toBe(`a\\u{${code.toString(16)}}b`);
    }
  });

  test.each([
    ['a Persian word with a non-joiner', 'نمی\u200cخواهم'],
    ['one behind a mark of its vowel', 'خانهٔ\u200cما'],
    ['a Hindi word with a joiner', 'क्\u200dष'],
    ['a Bengali one whose joiner stands before a mark', 'র\u200d্যাব'],
    ['a Sinhala one', 'ශ්\u200dරී'],
    ['an emoji of two parts', '👩\u200d🔧'],
    ['one with a tone of skin', '👩🏽\u200d🔧'],
    ['one with its form said', '🏳\ufe0f\u200d🌈'],
    ['a family', '👨\u200d👩\u200d👧'],
  ])('keeps what joins or parts the letters within %s', (_, text) => {
    expect(printable(text)).toBe(text);
  });

  test.each([
    ['alone', '\u200d', '\\u{200d}'],
    ['at the head', '\u200cنمی', '\\u{200c}نمی'],
    ['at the end', 'نمی\u200c', 'نمی\\u{200c}'],
    ['before a blank', 'نمی\u200c خواهم', 'نمی\\u{200c} خواهم'],
    ['twice', 'نمی\u200c\u200cخواهم', 'نمی\\u{200c}\\u{200c}خواهم'],
    ['between Latin letters', 'roof\u200drack', 'roof\\u{200d}rack'],
    ['between scripts', 'ب\u200droof', 'ب\\u{200d}roof'],
    ['between digits', '1\u200c٢', '1\\u{200c}٢'],
    ['behind one emoji', '👩\u200d roof', '👩\\u{200d} roof'],
    ['as a non-joiner of emoji', '👩\u200c🔧', '👩\\u{200c}🔧'],
    ['with a mark of direction', 'ب\u200c\u202eپ', 'ب\\u{200c}\\u{202e}پ'],
  ])('shows a joiner %s', (_, text, safe) => {
    expect(printable(text)).toBe(safe);
  });

  test('leaves letters of every script as they stand', () => {
    const text = 'coupé Δ капот 車体 µm “bound by” 5 %';
    expect(printable(text)).toBe(text);
  });
});

describe('columns of a terminal', () => {
  test.each([
    ['', 0],
    ['bonnet', 6],
    ['coupé', 5],
    ['coupe\u0301', 5],
    ['車体', 4],
    ['ｱ', 1],
    ['Ａ', 2],
    ['👩\u200d🔧', 2],
    ['نمی\u200cخواهم', 8],
    ['µm ┊‹»⁝·', 8],
  ])('"%s" takes %i', (text, width) => {
    expect(displayWidth(text)).toBe(width);
  });

  test('is the same for a text alone and beside one that is taken apart', () => {
    const ranges = [
      [0x20, 0x7e],
      [0xa0, 0x2ff],
      [0x370, 0x3ff],
      [0x2010, 0x2027],
      [0x2030, 0x205e],
      [0x2190, 0x22ff],
      [0x2500, 0x259f],
    ] as const;
    for (const [from, to] of ranges) {
      for (let code = from; code <= to; code += 1) {
        const mark = String.fromCodePoint(code);
        expect(displayWidth(`車${mark}`), code.toString(16)).toBe(2 + displayWidth(mark));
      }
    }
  });
});
