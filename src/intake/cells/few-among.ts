/**
 * Numbers below 0 that are few among the readings of a file, so that each speaks of itself only: one is a zero set
 * wrong, or a slip; where most are, the dash may be a bullet.
 */
import { numberOf, shapeOf } from './numbers.ts';
import { calendarKind } from './spreadsheet-dates.ts';

export type FewAmong = {
  readonly fewNegative: boolean;
  /** `-1` twice and more, and no other number below 0: what programs write for no value. */
  readonly minusOneIsNone: boolean;
};

export function fewAmong(counts: ReadonlyMap<string, number>): FewAmong {
  let [below, above, minusOnes] = [0, 0, 0];
  for (const [text, count] of counts) {
    // `05-Apr` has the shape of a number with its sign behind.
    if (calendarKind(text) !== undefined) continue;
    const shape = shapeOf(text);
    if (shape === undefined) continue;
    const number = numberOf(shape);
    if (number === -1 && shape.mark === '') minusOnes += count;
    if (number < 0) below += count;
    else above += count;
  }
  return {
    fewNegative: below < above,
    minusOneIsNone: minusOnes > 1 && minusOnes === below,
  };
}
