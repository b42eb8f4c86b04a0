/**
 * The marks of a file's numbers, from all of them at once: what stands before decimals, and what
 * between thousands.
 *
 * A cell such as `101,5` fits only a decimal comma; `1,234` fits both readings and votes for none.
 * The mark with more votes is taken, and the cells that contradict it are then refused one by one, unless no
 * number of the file could have either mark between thousands: then both are decimal marks (`148,7` and `148.7`).
 * Where the marks prove nothing the plausible range of a film is the last witness, and is named: a
 * number whose decimal reading is too thin for paint can only be grouped digits.
 */
import {
  type ColumnNumber,
  paintLike,
  type SortedNumbers,
  sortNumbers,
  type TextCounts,
  total,
} from './column-numbers.ts';
import {
  type DecimalMark,
  joined,
  type NumberShape,
  numberOf,
  type ThousandsMark,
} from './numbers.ts';
import { quoted } from './quoted.ts';
import type { Largest } from './unit.ts';

export type DecimalDecision = {
  readonly mark: DecimalMark;
  /** Whether some number, or the user, says that `mark` is the decimal mark. */
  readonly proven: boolean;
  /** Whether it is known that three digits after the mark are decimals. */
  readonly threes: boolean;
  /** What stands between thousands, empty if nothing certainly does. */
  readonly thousands: ThousandsMark | '';
  /** Whether the column writes its signs behind the digits, so that `102+` is 102. */
  readonly signsBehind: boolean;
  /** Whether both marks stand before decimals, in one number or another. */
  readonly both: boolean;
  readonly evidence: string;
  /** The mark the user named. */
  readonly given?: DecimalMark;
};

export const nameOfMark = {
  '.': 'point',
  ',': 'comma',
  "'": 'apostrophe',
  ' ': 'blank',
  '\u00a0': 'blank',
} as const satisfies Record<ThousandsMark, string>;

export const otherMark = (mark: DecimalMark): DecimalMark => (mark === ',' ? '.' : ',');

/**
 * `largest` is the most that a number of the column can be, `thinnest` the least that is a film, in
 * its unit; a column of other things than films has 0 for it, and no range as witness.
 */
export function decideDecimal(
  counts: TextCounts,
  largest: Largest,
  given: DecimalMark | undefined,
  thinnest: number = thinnestOf(largest()),
): DecimalDecision {
  const numbers = sortNumbers(counts, largest, thinnest);
  const votes = countVotes(numbers);
  const byRange = given === undefined && votes['.'] + votes[','] === 0;
  const grouping = byRange ? groupingByRange(numbers, thinnest) : undefined;
  const mark = given ?? (grouping === undefined ? voted(votes) : otherMark(grouping));
  const contradicted = given === undefined && votes[otherMark(mark)] > 0;
  const thousands = thousandsOf(numbers, mark, !byRange && !contradicted, grouping);
  const threes = given !== undefined || numbers.threes[mark] > 0;
  const proven = given !== undefined || votes[mark] > 0;
  const both = contradicted && bothAreDecimal(numbers);
  const evidence = [
    both ? bothSentence(numbers) : sentence(mark, votes[mark], numbers, given),
    ...(thousands === '' ? [] : [thousandsSentence(thousands, numbers, grouping)]),
  ].join('; ');
  return {
    mark,
    proven,
    threes,
    thousands,
    signsBehind: numbers.signsBehind,
    both,
    evidence,
    ...(given === undefined ? {} : { given }),
  };
}

/** Of readings that all have one decimal behind a point. */
export const pointInEach = (count: number): DecimalDecision => ({
  ...{ mark: '.', proven: true, threes: false, thousands: '', signsBehind: false, both: false },
  evidence: votesSentence('.', count, count),
});

/** 5 µm where 5000 is the most: no film of paint on a vehicle is thinner, a single layer included. */
export const thinnestOf = (largest: number): number => largest / 1000;

type Votes = Readonly<Record<DecimalMark, number>>;

const voted = (votes: Votes): DecimalMark => (votes[','] > votes['.'] ? ',' : '.');

/** Weak numbers count once others prove their mark, or where the column consists of them. */
function countVotes({ sure, weak, bare }: SortedNumbers): Votes {
  const of = (mark: DecimalMark): number =>
    sure[mark] + (sure[mark] > 0 || weak[mark] > total(bare) ? weak[mark] : 0);
  return { '.': of('.'), ',': of(',') };
}

/**
 * The mark of `1.234` where no number proves any: it groups digits if one and a bit is no film while
 * the other readings are paint, and only a few numbers are in question.
 */
function groupingByRange(numbers: SortedNumbers, thinnest: number): DecimalMark | undefined {
  // -1.234 is a zero set wrong by a little, never by a thousand.
  const open = numbers.open.filter(({ shape }) => !shape.negative);
  const [first] = open;
  if (first === undefined || first.shape.mark === '') return undefined;
  const { mark } = first.shape;
  const allThin = open.every(
    ({ shape }) => shape.mark === mark && Math.abs(numberOf(shape)) <= thinnest,
  );
  return allThin && fewAmongPaint(open, numbers) ? mark : undefined;
}

const fewAmongPaint = (few: readonly ColumnNumber[], numbers: SortedNumbers): boolean =>
  !numbers.thousandsBare && total(few) < total(numbers.settled) && paintLike(numbers);

/**
 * Three digits behind a mark may be grouped, one or two never are. They are as many behind each mark, for a `31.12`
 * among `101,5` may be a day.
 */
function bothAreDecimal({ numbers, grouped }: SortedNumbers): boolean {
  const marked = numbers.filter(({ shape }) => shape.mark !== '').map(({ shape }) => shape);
  const [first] = marked;
  return (
    grouped.length === 0 &&
    marked.every((shape) => isShort(shape) && shape.fraction.length === first?.fraction.length)
  );
}
const isShort = ({ fraction, exponent, ownMark }: NumberShape): boolean =>
  (fraction.length === 1 || fraction.length === 2) && exponent === undefined && !ownMark;

function bothSentence({ numbers, sure }: SortedNumbers): string {
  const [point, comma] = (['.', ','] as const).map(
    (mark) => numbers.find(({ shape }) => shape.mark === mark)?.text ?? '',
  );
  const of = `${sure['.']} with a decimal point and ${sure[',']} with a decimal comma`;
  return `readings ${of}, as in ${quoted(point ?? '')} and ${quoted(comma ?? '')}: fewer than three digits behind a mark are decimals`;
}

function thousandsOf(
  numbers: SortedNumbers,
  mark: DecimalMark,
  marksProve: boolean,
  grouping: DecimalMark | undefined,
): ThousandsMark | '' {
  const counts = new Map<ThousandsMark, number>();
  const add = (thousands: ThousandsMark, count: number): void => {
    counts.set(thousands, (counts.get(thousands) ?? 0) + count);
  };
  for (const { shape, count } of numbers.grouped) {
    if (shape.thousands !== '' && shape.thousands !== mark) add(shape.thousands, count);
  }
  if (grouping !== undefined || (marksProve && !numbers.thousandsBare)) {
    for (const { shape, count } of numbers.open) {
      if (shape.mark !== '' && shape.mark !== mark) add(shape.mark, count);
    }
  }
  // A blank may also stand between two numbers of one cell.
  if (counts.has(' ')) {
    const blanks = numbers.grouped.filter(({ shape }) => shape.thousands === ' ');
    const readable = blanks.every(({ shape }) => numberOf(shape) <= numbers.largest);
    if (!readable || !fewAmongPaint(blanks, numbers)) counts.delete(' ');
  }
  const [most] = [...counts].sort((a, b) => b[1] - a[1]);
  return most?.[0] ?? '';
}

const votesSentence = (mark: DecimalMark, votes: number, count: number): string =>
  `${votes} of ${count} readings ${votes === 1 ? 'fits' : 'fit'} only a decimal ${nameOfMark[mark]}`;

/** What is said of a mark that the caller named. */
export const decimalAsked = (mark: DecimalMark): string => `decimal ${nameOfMark[mark]} as asked`;

function sentence(
  mark: DecimalMark,
  votes: number,
  { count, ownMarks }: SortedNumbers,
  given: DecimalMark | undefined,
): string {
  if (given !== undefined) return decimalAsked(given);
  if (votes > 0) return votesSentence(mark, votes, count);
  return ownMarks > 0
    ? `${ownMarks} of ${count} readings ${ownMarks === 1 ? 'has' : 'have'} the Arabic decimal mark`
    : `no reading of ${count} needs a decimal mark`;
}

function thousandsSentence(
  thousands: ThousandsMark,
  { open, grouped, middle }: SortedNumbers,
  grouping: DecimalMark | undefined,
): string {
  const [example] = open.filter(({ shape }) => shape.mark === thousands);
  const told = `${nameOfMark[thousands]} between thousands`;
  if (example === undefined) {
    const [first] = grouped.filter(({ shape }) => shape.thousands === thousands);
    return first === undefined ? told : `${told}, as in ${quoted(first.text)}`;
  }
  const value = joined(example.shape);
  if (grouping === undefined) return `${told}: ${quoted(example.text)} is ${value}`;
  const thin = Math.abs(numberOf(example.shape));
  return `${told}: ${quoted(example.text)} is ${value}, for ${thin} is no film and the middle reading is ${middle}`;
}
