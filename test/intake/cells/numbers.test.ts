import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  anyNumber,
  numberOf,
  numberShape,
  plainNumber,
  readsTwoWays,
} from '../../../src/intake/cells/numbers.ts';

const value = (text: string): number | undefined => {
  const shape = numberShape(text);
  return shape === undefined ? undefined : numberOf(shape);
};

test.each([
  ['101', 101],
  ['101.5', 101.5],
  ['101,5', 101.5],
  ['+7', 7],
  ['-3.2', -3.2],
  ['−3', -3],
  ['.5', 0.5],
  ['007', 7],
  ['101.5 µm', 101.5],
  ['5-', -5],
  ['1e3', 1000],
  ['1.05E+02', 105],
  ['1,05E+02', 105],
  ['1.05e-1', 0.105],
  ["'101.5", 101.5],
  ["'101,5'", 101.5],
  ['="101.5"', 101.5],
  ['\u200e101.5\u200f', 101.5],
  ['１０２．５', 102.5],
  ['－１０２，５', -102.5],
  ['١٠٢٫٥', 102.5],
  ['۱۰۲٫۵', 102.5],
  ['१०२.५', 102.5],
  ['١٬٢٣٤٫٥', 1234.5],
])('%s is a number', (text, number) => expect(value(text)).toBe(number));

test.each([
  '',
  ' ',
  '0x10',
  '1e2.5',
  '1 234e2',
  '1e999',
  '12abc3',
  '1.2.3',
  '1,2,3',
  '5.',
  '--5',
  'Infinity',
  'NaN',
  '>1500',
  '1_000',
  '-5-',
  '0 123',
  '1.234.56',
  '1,234,567,8',
  '9'.repeat(400),
])('"%s" is no number', (text) => expect(numberShape(text)).toBeUndefined());

test.each([
  ['1,234.5', ',', 1234.5],
  ['1.234,5', '.', 1234.5],
  ['1.234.567', '.', 1234567],
  ['12,345,678', ',', 12345678],
  ['1 234', ' ', 1234],
  ['1\u00a0234', '\u00a0', 1234],
  ['1\u202f234,5', '\u00a0', 1234.5],
  ['1\u2009234', '\u00a0', 1234],
  ["1'234", "'", 1234],
  ['1’234.5', "'", 1234.5],
])('%s is known as digits grouped by "%s"', (text, thousands, number) => {
  expect(numberShape(text)?.thousands).toBe(thousands);
  expect(value(text)).toBe(number);
});

test.each([
  ['1.234', true],
  ['1,234', true],
  ['4.999', true],
  ['0.123', false],
  ['01.234', false],
  ['101.234', false],
  ['1.23', false],
])('%s read two ways up to 5000: %s', (text, twoWays) => {
  const shape = numberShape(text);
  expect(shape !== undefined && readsTwoWays(shape, 5000)).toBe(twoWays);
});

const cellText = fc
  .array(fc.constantFrom(...'0123456789', '.', ',', '-', '+', ' ', 'e', "'", 'µm', '٣', '\u200b'), {
    maxLength: 9,
  })
  .map((parts) => parts.join(''));
const plainText = fc
  .tuple(
    fc.integer({ min: 0, max: 9_999 }),
    fc.constantFrom('', '.', ','),
    fc.integer({ min: 0, max: 9_999 }),
  )
  .map(([whole, mark, fraction]) => (mark === '' ? `${whole}` : `${whole}${mark}${fraction}`));

test('a plain number has the shape that the whole grammar gives it, and nothing else is taken for one', () => {
  fc.assert(
    fc.property(fc.oneof(cellText, plainText), (text) => {
      expect(numberShape(text)).toEqual(anyNumber(text));
    }),
    { numRuns: 5_000 },
  );
  expect(plainNumber('101.5')).toEqual(anyNumber('101.5'));
});
