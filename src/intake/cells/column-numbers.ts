/**
 * The numbers of a column, sorted by what each proves about its marks.
 *
 * *Bare* ones have no mark. *Sure* ones can be read in one way only and vote. *Weak* ones look like
 * grouped digits that no gauge can show (`12.345`, `65.535`): likely decimals, and not proof enough
 * alone. *Open* ones (`1.234`) fit both readings. *Grouped* ones certainly have thousands.
 */

import { middleNumber } from './middle-number.ts';
import {
  type DecimalMark,
  joined,
  maySeparateThousands,
  type NumberShape,
  numberOf,
  readsTwoWays,
  shapeOf,
} from './numbers.ts';
import { sentinelOf } from './sentinels.ts';
import { type Largest, unitNamed } from './unit.ts';

/** How often each text stands in the columns of numbers. */
export type TextCounts = ReadonlyMap<string, number>;

export type ColumnNumber = {
  readonly text: string;
  readonly shape: NumberShape;
  readonly count: number;
};

export type SortedNumbers = {
  readonly count: number;
  /** All of them. */
  readonly numbers: readonly ColumnNumber[];
  readonly bare: readonly ColumnNumber[];
  readonly open: readonly ColumnNumber[];
  readonly grouped: readonly ColumnNumber[];
  /** Bare or with a sure mark: what the others are held against. */
  readonly settled: readonly ColumnNumber[];
  readonly sure: Readonly<Record<DecimalMark, number>>;
  readonly weak: Readonly<Record<DecimalMark, number>>;
  /** Numbers that show three decimals after the mark. */
  readonly threes: Readonly<Record<DecimalMark, number>>;
  /** Whether some number of a thousand or more has nothing between its thousands. */
  readonly thousandsBare: boolean;
  readonly signsBehind: boolean;
  /** Numbers with the Arabic decimal mark, which needs no decision. */
  readonly ownMarks: number;
  /** The middle of the settled numbers, 0 if there are none. */
  readonly middle: number;
  readonly largest: number;
  readonly thinnest: number;
};

export function sortNumbers(
  counts: TextCounts,
  largestReading: Largest,
  thinnest: number,
): SortedNumbers {
  const largest = largestReading();
  const numbers = [...counts].flatMap(([text, count]): ColumnNumber[] => {
    const shape = shapeOf(text);
    return shape === undefined || sentinelOf(numberOf(shape), largest) !== undefined
      ? []
      : [{ text, shape, count }];
  });
  const most = (shape: NumberShape): number => largestFor(shape, largestReading);
  const open = numbers.filter(({ shape }) => readsTwoWays(shape, most(shape)));
  const bare = numbers.filter(({ shape }) => shape.mark === '' && shape.thousands === '');
  const grouped = numbers.filter(({ shape }) => shape.thousands !== '');
  const sure = { '.': 0, ',': 0 };
  const weak = { '.': 0, ',': 0 };
  const threes = { '.': 0, ',': 0 };
  const settled = [...bare];
  for (const number of numbers) {
    const { shape, count } = number;
    const decimal = decimalMarkOf(shape);
    if (decimal === undefined || readsTwoWays(shape, most(shape))) continue;
    if (isWeak(shape, (thinnest * most(shape)) / largest)) {
      weak[decimal] += count;
      continue;
    }
    sure[decimal] += count;
    if (shape.thousands === '') settled.push(number);
    if (shape.fraction.length >= 3 && shape.exponent === undefined) threes[decimal] += count;
  }
  for (const mark of ['.', ','] as const) {
    if (sure[mark] > 0 || weak[mark] > total(bare)) {
      threes[mark] += weak[mark];
    }
  }
  const large = settled.filter(({ shape }) => /^[1-9]\d{3,}$/u.test(shape.whole));
  return {
    count: total(numbers),
    numbers,
    bare,
    open,
    grouped,
    settled,
    sure,
    weak,
    threes,
    thousandsBare: large.length > 0,
    signsBehind: writesSignsBehind(numbers),
    ownMarks: total(numbers.filter(({ shape }) => shape.ownMark)),
    get middle() {
      return middleOf(settled, (shape) => largest / most(shape));
    },
    largest,
    thinnest,
  };
}

/** How many cells hold one of these numbers. */
export const total = (numbers: readonly ColumnNumber[]): number =>
  numbers.reduce((sum, { count }) => sum + count, 0);

/** Whether the settled numbers, as a whole, are paint: three times the thinnest film and more. */
export const paintLike = ({ middle, thinnest, largest }: SortedNumbers): boolean =>
  middle >= 3 * thinnest && middle <= 0.3 * largest;

/** `12.345` and `65.535`: too thin beside paint, or a counter at its end; not proof enough alone. */
export const isWeak = (shape: NumberShape, thinnest: number): boolean =>
  maySeparateThousands(shape) &&
  (Math.abs(numberOf(shape)) < 3 * thinnest || sentinelOf(joined(shape), 0) !== undefined);

/** The most that a number can be which may carry a unit of its own. */
export function largestFor({ suffix }: NumberShape, largest: Largest): number {
  const own = unitNamed(suffix);
  return own === undefined || own === 'other' ? largest() : largest(own);
}

/** What a shape proves to stand before decimals: its mark, or the other one of what groups digits. */
function decimalMarkOf({ mark, ownMark, thousands }: NumberShape): DecimalMark | undefined {
  if (ownMark) return undefined;
  if (mark !== '') return mark;
  if (thousands === '.') return ',';
  return thousands === ',' ? '.' : undefined;
}

function writesSignsBehind(numbers: readonly ColumnNumber[]): boolean {
  const positive = numbers.filter(({ shape }) => !shape.negative);
  return positive.length > 1 && positive.every(({ shape }) => shape.plusBehind);
}

/** The middle number in the unit of the column, into which `factor` brings each. */
function middleOf(
  numbers: readonly ColumnNumber[],
  factor: (shape: NumberShape) => number,
): number {
  const values = numbers.map(
    ({ shape, count }) => [numberOf(shape) * factor(shape), count] as const,
  );
  return middleNumber(values.filter(([value]) => value > 0));
}
