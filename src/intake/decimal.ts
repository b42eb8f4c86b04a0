/**
 * The decimal mark of a file, from all its numbers at once.
 *
 * A cell such as `101,5` fits only a decimal comma; `1,234` fits both readings and votes for none.
 * The mark with more votes is taken, and the cells that contradict it are then refused one by one.
 * `threes` tells whether some number proves that three digits after the mark are decimals.
 */
import { type DecimalMark, type NumberShape, numberShape, readsTwoWays } from './numbers.ts';

export type DecimalDecision = {
  readonly mark: DecimalMark;
  readonly threes: boolean;
  readonly evidence: string;
  /** The mark the user named. */
  readonly given?: DecimalMark;
};

/** How often each text stands in the columns of numbers. */
export type TextCounts = ReadonlyMap<string, number>;

export function decideDecimal(
  counts: TextCounts,
  largest: number,
  given: DecimalMark | undefined,
): DecimalDecision {
  const votes = { '.': 0, ',': 0 };
  let numbers = 0;
  const deep: NumberShape[] = [];
  for (const [text, count] of counts) {
    const shape = numberShape(text);
    if (shape === undefined) continue;
    numbers += count;
    if (shape.mark === '' || readsTwoWays(shape, largest)) continue;
    votes[shape.mark] += count;
    if (shape.fraction.length >= 3) deep.push(shape);
  }
  const mark = given ?? (votes[','] > votes['.'] ? ',' : '.');
  const threes = given !== undefined || deep.some((shape) => shape.mark === mark);
  const evidence = sentence(mark, votes[mark], numbers, given);
  return { mark, threes, evidence, ...(given === undefined ? {} : { given }) };
}

function sentence(
  mark: DecimalMark,
  votes: number,
  numbers: number,
  given: DecimalMark | undefined,
): string {
  const name = mark === ',' ? 'decimal comma' : 'decimal point';
  if (given !== undefined) return `${name} as asked`;
  if (votes === 0) return `no reading of ${numbers} needs a decimal mark`;
  return `${votes} of ${numbers} readings ${votes === 1 ? 'fits' : 'fit'} only a ${name}`;
}
