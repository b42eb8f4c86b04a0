/**
 * The grammar of a number in a cell: sign, digits, at most one decimal mark, a unit after it.
 *
 * The language's own conversions take `0x10`, `1e3` and `' '` for numbers, so a cell is matched
 * against this grammar first and only its checked digits are converted. Groups of three digits are
 * recognised in order to be refused: `1,234.5` is not read, and `1.234` may be two numbers.
 */
export type DecimalMark = '.' | ',';

export type NumberShape = {
  readonly negative: boolean;
  readonly whole: string;
  /** Absent in a whole number. */
  readonly mark: DecimalMark | '';
  readonly fraction: string;
  /** Digits in groups of three, beyond what one decimal mark explains. */
  readonly grouped: boolean;
  /** What follows the digits, a unit if the cell is a reading. */
  readonly suffix: string;
};

const cellShape = /^([+\-−]?)(\d+(?:[.,'’\u0020\u00a0\u202f]\d+)*|[.,]\d+)\s*((?![.,])\D*)$/u;
const oneMark = /^(\d*)([.,])(\d+)$/u;
const groups = /^\d{1,3}(?:([.,'’\u0020\u00a0\u202f])\d{3})(?:\1\d{3})*(?:[.,]\d+)?$/u;

/** How a cell is built if it is a number, else undefined. Blanks around it are the caller's. */
export function numberShape(text: string): NumberShape | undefined {
  const match = cellShape.exec(text);
  if (match === null) return undefined;
  const [, sign = '', body = '', suffix = ''] = match;
  const rest = { negative: sign === '-' || sign === '−', suffix: suffix.trim() };
  if (/^\d+$/.test(body)) return { ...rest, whole: body, mark: '', fraction: '', grouped: false };
  const marked = oneMark.exec(body);
  if (marked !== null) {
    const [, whole = '', mark, fraction = ''] = marked;
    return { ...rest, whole, mark: mark === ',' ? ',' : '.', fraction, grouped: false };
  }
  if (!groups.test(body)) return undefined;
  return { ...rest, whole: body, mark: '', fraction: '', grouped: true };
}

/** The number of a shape that is not grouped, its mark taken as the decimal mark. */
export function numberOf({ negative, whole, fraction }: NumberShape): number {
  const size = Number(`${whole === '' ? '0' : whole}.${fraction === '' ? '0' : fraction}`);
  return negative && size !== 0 ? -size : size;
}

/**
 * Whether `1.234` may be one and a bit, or one thousand and more: a mark before exactly three
 * digits, after one to three that do not start with 0, and the thousands not beyond `largest`.
 */
export function readsTwoWays({ whole, mark, fraction }: NumberShape, largest: number): boolean {
  return (
    mark !== '' &&
    fraction.length === 3 &&
    /^[1-9]\d{0,2}$/.test(whole) &&
    Number(whole + fraction) <= largest
  );
}
