import { expect, test } from 'vitest';
import { decideDecimal } from '../../src/intake/decimal.ts';
import { numberOf, numberShape, readsTwoWays } from '../../src/intake/numbers.ts';
import { splitUnit, unitNamed } from '../../src/intake/unit.ts';

const value = (text: string): number | undefined => {
  const shape = numberShape(text);
  return shape === undefined || shape.grouped ? undefined : numberOf(shape);
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
])('%s is a number', (text, number) => expect(value(text)).toBe(number));

test.each([
  '',
  ' ',
  '0x10',
  '1e3',
  '12abc3',
  '1.2.3',
  '1,2,3',
  '5.',
  '--5',
  'Infinity',
  'NaN',
  '٣',
  '>1500',
  '1_000',
])('"%s" is no number', (text) => expect(numberShape(text)).toBeUndefined());

test.each(['1,234.5', '1.234.567', '1 234', "1'234", '12,345,678'])(
  '%s is known as grouped digits',
  (text) => expect(numberShape(text)?.grouped).toBe(true),
);

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

test('the mark with more votes is the decimal mark, and the votes are told', () => {
  const counts = new Map([
    ['101,5', 17],
    ['99', 2],
    ['1.234', 1],
  ]);
  expect(decideDecimal(counts, 5000, undefined)).toEqual({
    mark: ',',
    threes: false,
    evidence: '17 of 20 readings fit only a decimal comma',
  });
});

test.each([
  ['reading_um', 'reading', 'um'],
  ['Thickness (µm)', 'Thickness', 'um'],
  ['Thickness (μm)', 'Thickness', 'um'],
  ['Value [㎛]', 'Value', 'um'],
  ['Film [mil]', 'Film', 'mil'],
  ['thou', '', 'mil'],
  ['DFT microns', 'DFT', 'um'],
  ['Thickness (inch)', 'Thickness', 'other'],
  ['bonnet', 'bonnet', undefined],
  ['u', 'u', undefined],
])('the header %s names %s in %s', (header, label, unit) => {
  expect(splitUnit(header)).toMatchObject({ label });
  expect(splitUnit(header).unit).toBe(unit);
});

test('a word that is no unit names none', () => expect(unitNamed('gauge')).toBeUndefined());
