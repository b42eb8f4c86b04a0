/**
 * One number of a column whose marks are decided: its value, or why it cannot be read without
 * guessing. A number that keeps to its column's style is exact; one that does not is refused.
 */
import { isWeak, largestFor } from './column-numbers.ts';
import { type DecimalDecision, nameOfMark, otherMark, thinnestOf } from './decimal.ts';
import {
  joined,
  maySeparateThousands,
  type NumberShape,
  numberOf,
  readsTwoWays,
} from './numbers.ts';
import { quoted } from './quoted.ts';
import type { Largest } from './unit.ts';

export type SettledNumber =
  | { readonly value: number; readonly decimals: number }
  | { readonly value?: undefined; readonly message: string; readonly hint: string };

/** `largest` is the most that a number of the column can be, in its unit. */
export function settleNumber(
  text: string,
  shape: NumberShape,
  largest: Largest,
  decision: DecimalDecision,
): SettledNumber {
  if (shape.plusBehind && !decision.signsBehind) {
    const message = `${quoted(text)} may be a number with its sign behind, or "and more"`;
    return { message, hint: 'write the number without the plus' };
  }
  if (shape.thousands !== '') return grouped(text, shape, decision);
  if (shape.mark === '' || shape.ownMark) return exactly(shape);
  return marked(text, shape, largestFor(shape, largest), decision);
}

const exactly = (shape: NumberShape): SettledNumber => ({
  value: numberOf(shape),
  decimals: Math.max(0, shape.fraction.length - (shape.exponent ?? 0)),
});

function grouped(text: string, shape: NumberShape, decision: DecimalDecision): SettledNumber {
  const hint = 'write the number without separators between its digits';
  if (shape.thousands !== '' && shape.thousands !== decision.thousands) {
    const name = nameOfMark[shape.thousands];
    const message =
      name === 'blank'
        ? `${quoted(text)} may be ${shape.whole} or several numbers in one cell`
        : `${quoted(text)} has a ${name} between thousands, which the other readings do not`;
    return { message, hint: name === 'blank' ? 'give each reading a cell of its own' : hint };
  }
  if (shape.mark !== '' && !shape.ownMark && shape.mark !== decision.mark) {
    return mixed(text, shape, decision);
  }
  return exactly(shape);
}

function marked(
  text: string,
  shape: NumberShape,
  largest: number,
  decision: DecimalDecision,
): SettledNumber {
  const { whole, fraction } = shape;
  const { mark, threes, proven, thousands } = decision;
  if (maySeparateThousands(shape) && shape.mark === thousands && !shape.negative)
    return { value: joined(shape), decimals: 0 };
  const twoWays = readsTwoWays(shape, largest) && !(threes && shape.mark === mark);
  const weak = isWeak(shape, thinnestOf(largest)) && !proven;
  if (twoWays || weak) {
    const message = `${quoted(text)} may be ${whole}.${fraction} or ${whole},${fraction}`;
    return { message, hint: `write ${whole}${fraction}, or fewer digits after the decimal mark` };
  }
  return shape.mark === mark || decision.both ? exactly(shape) : mixed(text, shape, decision);
}

function mixed(text: string, { whole, fraction }: NumberShape, decision: DecimalDecision) {
  const { mark } = decision;
  const [has, others] = [nameOfMark[otherMark(mark)], nameOfMark[mark]];
  return {
    message: `${quoted(text)} has a decimal ${has} among numbers with a decimal ${others}`,
    hint: `write ${whole}${mark}${fraction} if that is meant`,
  };
}
