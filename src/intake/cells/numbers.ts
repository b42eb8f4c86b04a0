/**
 * The grammar of a number in a cell: sign, digits in groups or not, a decimal mark, a power of ten,
 * a unit after it.
 *
 * The language's own conversions take `0x10` and `' '` for numbers, so a cell is matched against
 * this grammar first and only its checked digits are converted. What a mark means is not settled
 * here: `1.234` has the shape of a decimal, and `readsTwoWays` tells that it may be grouped digits.
 */
import { remembered } from '../../base/kept.ts';
import { plainCell } from './cell-text.ts';

export type DecimalMark = '.' | ',';
/** What stands between groups of three digits: U+00A0 for every blank that keeps a line together. */
export type ThousandsMark = '.' | ',' | "'" | ' ' | '\u00a0';

export type NumberShape = {
  readonly negative: boolean;
  /** A plus behind the digits: a sign where a column writes its signs so, else "and more". */
  readonly plusBehind: boolean;
  /** Digits before the decimal mark, without the marks between thousands. */
  readonly whole: string;
  /** Absent in a whole number. */
  readonly mark: DecimalMark | '';
  /** The mark is the Arabic one, a decimal mark whatever the column uses. */
  readonly ownMark: boolean;
  readonly fraction: string;
  /** What certainly groups digits; a lone `1.234` has none. */
  readonly thousands: ThousandsMark | '';
  /** Present in scientific notation. */
  readonly exponent?: number;
  /** What follows the digits, a unit if the cell is a reading. */
  readonly suffix: string;
};

const cellShape =
  /^([+\-–]?)(\d+(?:[.,'’٫٬\u0020\u00a0\u2007\u2009\u202f]\d+)*|[.,٫]\d+)(?:[eE]([+-]?\d{1,3}))?([+\-–]?)\s*((?![.,])\D*)$/u;
const oneMark = /^(\d*)([.,٫])(\d+)$/u;
const groups =
  /^([1-9]\d{0,2})(?:([.,'’٬\u0020\u00a0\u2007\u2009\u202f])\d{3})(?:\2\d{3})*(?:([.,٫])(\d+))?$/u;

/** A double has 17 significant digits; a run of digits longer than this is no number of a gauge. */
export const longestNumber = 40;

/** How a cell is built if it is a number, else undefined. */
export const numberShape = (text: string): NumberShape | undefined =>
  plainNumber(text) ?? anyNumber(text);

/** The same, kept for texts that many rows have: the next piece of a long file has them as well. */
export const shapeOf = remembered(numberShape);

/** The shape of `101` and `101.5`, which nearly all cells have; of any other text undefined. */
export function plainNumber(text: string): NumberShape | undefined {
  const { length } = text;
  if (length === 0 || length > longestPlain) return undefined;
  let at = -1;
  for (let k = 0; k < length; k += 1) {
    const code = text.charCodeAt(k);
    if (code >= 48 && code <= 57) continue;
    if (at !== -1 || (code !== 44 && code !== 46) || k === length - 1) return undefined;
    at = k;
  }
  return {
    whole: at === -1 ? text : text.slice(0, at),
    mark: at === -1 ? '' : text[at] === ',' ? ',' : '.',
    ownMark: false,
    fraction: at === -1 ? '' : text.slice(at + 1),
    thousands: '',
    negative: false,
    plusBehind: false,
    suffix: '',
  };
}
const longestPlain = 20;

/** The same by the whole grammar. */
export function anyNumber(text: string): NumberShape | undefined {
  const match = cellShape.exec(plainCell(text));
  if (match === null) return undefined;
  const [, before = '', body = '', power, behind = '', suffix = ''] = match;
  const digits = body.length > longestNumber ? undefined : digitsOf(body);
  if (digits === undefined || (before !== '' && behind !== '')) return undefined;
  if (power !== undefined && digits.thousands !== '') return undefined;
  const shape: NumberShape = {
    ...digits,
    negative: /[-–]/u.test(before + behind),
    plusBehind: behind === '+',
    suffix: suffix.trim(),
    ...(power === undefined ? {} : { exponent: Number(power) }),
  };
  return Number.isFinite(numberOf(shape)) ? shape : undefined;
}

type Digits = Pick<NumberShape, 'whole' | 'mark' | 'ownMark' | 'fraction' | 'thousands'>;

function digitsOf(body: string): Digits | undefined {
  const bare: Digits = { whole: body, mark: '', ownMark: false, fraction: '', thousands: '' };
  if (/^\d+$/u.test(body)) return bare;
  const marked = oneMark.exec(body);
  if (marked !== null) {
    const [, whole = '', mark = '', fraction = ''] = marked;
    return { ...bare, whole, ...markNamed(mark), fraction };
  }
  const grouped = groups.exec(body);
  if (grouped === null) return undefined;
  const [, , between = '', mark = '', fraction = ''] = grouped;
  if (mark === between) return undefined;
  const whole = (mark === '' ? body : body.slice(0, body.lastIndexOf(mark))).replace(/\D/gu, '');
  return { whole, ...markNamed(mark), fraction, thousands: thousandsNamed(between) };
}

const markNamed = (mark: string): Pick<Digits, 'mark' | 'ownMark'> => ({
  mark: mark === '٫' ? '.' : mark === '.' || mark === ',' ? mark : '',
  ownMark: mark === '٫',
});

function thousandsNamed(mark: string): ThousandsMark {
  if (mark === '.' || mark === ',' || mark === ' ') return mark;
  return mark === "'" || mark === '’' || mark === '٬' ? "'" : '\u00a0';
}

/** The number of a shape, its mark taken as the decimal mark. */
export function numberOf({ negative, whole, fraction, exponent = 0 }: NumberShape): number {
  const digits = fraction === '' ? whole : `${whole}.${fraction}`;
  const size = Number(exponent === 0 ? digits : `${digits}e${exponent}`);
  return negative && size !== 0 ? -size : size;
}

/** That of a cell, undefined where it is none. */
export function numberIn(cell: string): number | undefined {
  const shape = numberShape(cell.trim());
  return shape === undefined ? undefined : numberOf(shape);
}

/** Whether the one mark of a shape may stand between thousands: `1.234`, `101,234`, not `0.123`. */
export const maySeparateThousands = (shape: NumberShape): boolean =>
  shape.mark !== '' &&
  !shape.ownMark &&
  shape.thousands === '' &&
  shape.exponent === undefined &&
  shape.fraction.length === 3 &&
  /^[1-9]\d{0,2}$/u.test(shape.whole);

/** The whole number that `1.234` is if its mark stands between thousands. */
export const joined = (shape: NumberShape): number => {
  const size = Number(shape.whole + shape.fraction);
  return shape.negative ? -size : size;
};

/** Whether `1.234` may be one and a bit, or one thousand and more that is not beyond `largest`. */
export const readsTwoWays = (shape: NumberShape, largest: number): boolean =>
  maySeparateThousands(shape) && Math.abs(joined(shape)) <= largest;
