/** Numbers written by a formatter in every style that is read come back exact, or are refused. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import type { ReadingCell } from '../../src/intake/cells/cell-verdict.ts';
import { decideDecimal } from '../../src/intake/cells/decimal.ts';
import { markerLegend } from '../../src/intake/cells/markers.ts';
import { notReading } from '../../src/intake/cells/not-readings.ts';
import { numberOf, numberShape } from '../../src/intake/cells/numbers.ts';
import { readReadingCell } from '../../src/intake/cells/reading-cell.ts';
import { calendarKind } from '../../src/intake/cells/spreadsheet-dates.ts';
import { isLostMicro, largestIn, splitUnit, unitNamed } from '../../src/intake/cells/unit.ts';
import { meansDeleted } from '../../src/intake/cells/words.ts';

type Style = {
  mark: '.' | ',';
  thousands: '' | 'other mark' | ' ' | '\u00a0' | '\u202f' | '\u2009' | "'" | '’';
  zero: number;
  decimals: 0 | 1 | 2 | 3;
  sign: 'before' | 'minus sign' | 'behind';
  plus: boolean;
  suffix: string;
  scientific: boolean;
};
const style: fc.Arbitrary<Style> = fc.record({
  mark: fc.constantFrom('.', ','),
  thousands: fc.constantFrom('', 'other mark', ' ', '\u00a0', '\u202f', '\u2009', "'", '’'),
  zero: fc.constantFrom(0x30, 0xff10, 0x0660, 0x06f0, 0x0966),
  decimals: fc.constantFrom(0, 1, 2, 3),
  sign: fc.constantFrom('before', 'minus sign', 'behind'),
  plus: fc.boolean(),
  suffix: fc.constantFrom('', '', ' µm', 'µm', ' um', '\u00a0micron', ' ?m'),
  scientific: fc.nat({ max: 5 }).map((n) => n === 0),
});
/** Thousandths of a µm: paint mostly, filler at times, zero errors below 0. */
const thousandths = fc.oneof(
  { weight: 8, arbitrary: fc.integer({ min: 20_000, max: 400_000 }) },
  { weight: 2, arbitrary: fc.integer({ min: 400_000, max: 5_000_000 }) },
  { weight: 1, arbitrary: fc.integer({ min: -9_000, max: 20_000 }) },
);

const rounded = (n: number, { decimals }: Style): number => {
  const step = 10 ** (3 - decimals);
  return (Math.round(n / step) * step) / 1000;
};

function write(value: number, how: Style): string {
  const size = Math.abs(value);
  const mantissa = how.scientific ? size.toExponential(5) : size.toFixed(how.decimals);
  const [digits = '', power = ''] = mantissa.split('e');
  const [whole = '', fraction] = digits.split('.');
  const between = how.thousands === 'other mark' ? (how.mark === '.' ? ',' : '.') : how.thousands;
  const grouped = how.scientific ? whole : whole.replace(/(?<=\d)(?=(?:\d{3})+$)/gu, between);
  const arabic = how.zero === 0x0660 || how.zero === 0x06f0;
  const mark = arabic ? '٫' : how.mark;
  const text = `${grouped}${fraction === undefined ? '' : mark + fraction}${power === '' ? '' : `E${power}`}`;
  const script = text.replace(/\d/gu, (digit) => String.fromCodePoint(how.zero + Number(digit)));
  const minus = how.sign === 'minus sign' ? '−' : '-';
  const sign = value < 0 ? minus : how.plus ? '+' : '';
  return (how.sign === 'behind' ? script + sign : sign + script) + how.suffix;
}

function readColumn(texts: readonly string[]): readonly ReadingCell[] {
  const counts = new Map<string, number>();
  for (const text of texts) counts.set(text, (counts.get(text) ?? 0) + 1);
  const largest = micrometres(5000);
  const decimal = decideDecimal(counts, largestIn('um', largest), undefined);
  const rules = { unit: 'um', largest, decimal } as const;
  return texts.map((text) => readReadingCell(text, rules));
}

test('a column in any style of numbers is read to the digit, or refused, never to another value', () => {
  let [read, refused] = [0, 0];
  fc.assert(
    fc.property(fc.array(thousandths, { minLength: 1, maxLength: 12 }), style, (numbers, how) => {
      const values = numbers.map((n) => rounded(n, how));
      for (const [k, cell] of readColumn(values.map((value) => write(value, how))).entries()) {
        const value = values[k] ?? 0;
        if (cell.kind === 'wrong') refused += 1;
        else if (value <= 0) expect(cell).toMatchObject({ kind: 'excluded', class: 'not-film' });
        else {
          expect(cell.kind).toBe('reading');
          read += 1;
          // Scientific notation was written to five decimals of the mantissa.
          const exact = how.scientific ? Number(value.toExponential(5)) : value;
          if (cell.kind === 'reading') expect(Number(cell.thickness)).toBe(exact);
        }
      }
    }),
    { numRuns: 5000 },
  );
  expect(read).toBeGreaterThan(20 * refused);
});

/** With three decimals `20,000` and `1,000` would be one style, whoever wrote them. */
const fewDecimals = style.filter(({ decimals, scientific }) => decimals < 3 && !scientific);

test('columns of two styles never yield a value that was not written', () => {
  fc.assert(
    fc.property(
      fc.array(thousandths, { minLength: 1, maxLength: 8 }),
      fc.array(thousandths, { minLength: 1, maxLength: 3 }),
      fewDecimals,
      fewDecimals,
      (most, few, plain, second) => {
        const values = [
          ...most.map((n) => rounded(n, plain)),
          ...few.map((n) => rounded(n, second)),
        ];
        const texts = values.map((v, k) => write(v, k < most.length ? plain : second));
        for (const [k, cell] of readColumn(texts).entries()) {
          if (cell.kind === 'reading')
            expect([texts[k], Number(cell.thickness)]).toEqual([texts[k], values[k]]);
        }
      },
    ),
    { numRuns: 5000 },
  );
});

const anyText = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 30 }),
  fc.string({
    unit: fc.constantFrom(..."0123456789.,-+eE '’µm*()>#٫٬１٢\u00a0\u0336:/D"),
    maxLength: 14,
  }),
);

test('no text makes a cell throw, or a number that is none', () => {
  fc.assert(
    fc.property(anyText, fc.array(anyText, { maxLength: 4 }), (text, others) => {
      const shape = numberShape(text);
      if (shape !== undefined) expect(Number.isFinite(numberOf(shape))).toBe(true);
      for (const cell of readColumn([text, ...others])) {
        if (cell.kind === 'reading') {
          expect(cell.thickness > 0 && cell.thickness <= 5000).toBe(true);
        } else expect(cell.complaint.message.length).toBeGreaterThan(10);
      }
      for (const ask of [notReading, calendarKind, unitNamed, splitUnit, isLostMicro, meansDeleted])
        ask(text);
      markerLegend([text, ...others]);
    }),
    { numRuns: 20_000 },
  );
});
