/** Whether two trials read the same at every mark, in whatever order, and that is no chance. */
import { roundTo } from '../../base/rounding.ts';
import type { SpotMark } from '../../correction/spot/spot-trial.ts';

type Films = readonly Pick<SpotMark, 'before' | 'after'>[];

/** As many marks with decimals that all meet are no chance; of whole µm it takes some more. */
const LEAST_FINE = 2;
const LEAST_WHOLE = 3;
const DIGITS = 6;

export function areSameFilms(one: Films, other: Films): boolean {
  const least = other.every(isFine) ? LEAST_FINE : LEAST_WHOLE;
  return other.length >= least && toldIn(one) === toldIn(other);
}

const toldIn = (films: Films): string =>
  films
    .map(({ before, after }) => `${roundTo(before, DIGITS)} ${roundTo(after, DIGITS)}`)
    .sort()
    .join('; ');

/** Whole µm meet by chance. */
export const isFine = ({ before, after }: Films[number]): boolean =>
  !Number.isInteger(before) || !Number.isInteger(after);
