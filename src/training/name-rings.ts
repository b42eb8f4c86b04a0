/**
 * The likeliest of all ways to give the names to the panels, as rings: two that are swapped, or more whose names moved on
 * by one. Each panel that has another name than was written costs 3·ln N of the N there are: 2·ln N as there are N^n ways
 * or so to move n of them, and half as much again since who mixes up names mixes up few (an assumption). One that has the name of
 * the other side costs ln S of the S pairs of sides, half of what such a pair does.
 *
 * Each panel of a ring must fit worse as it is named, and fit its other name: none is swapped because the others are.
 */
import { at } from '../base/at.ts';
import { bestMatching } from '../base/best-matching.ts';
import { sum } from '../base/sum.ts';
import type { NameFit } from './name-fits.ts';

/**
 * How each panel fits each name; `fits[i][j]` is of what stands under name i, as of j. Names under which nothing stands
 * come last, and have no row.
 */
export type Fits = readonly (readonly NameFit[])[];

/** Places of panels: under the name of each stand the readings of the next, and under the last those of the first. */
export type Ring = readonly number[];

/** 2·ln of the ratio of the likelihoods of two ways, from which one of them is sure: two to one, after what each costs. */
export const SURE = 2 * Math.log(2);

/** What a panel must fit its other name better by. */
export const LEAST_GAIN = 1;

/** Where another way that lacks one of its moves is nearly as likely, which panels make a ring is not known, and there is none. */
export function nameRings(
  fits: Fits,
  sides: readonly Ring[],
  unsatisfactory: number,
): { readonly rings: readonly Ring[]; readonly worth: number } {
  const isSides = (...two: Ring): boolean =>
    sides.some((pair) => two.every((i) => pair.includes(i)));
  const worth = fits.map((row, i) =>
    row.slice(0, fits.length).map(({ gain, largest }, j) => {
      if (i === j) return 0;
      const may = gain > LEAST_GAIN && largest < unsatisfactory;
      const cost = isSides(i, j) ? Math.log(sides.length) : 3 * Math.log(fits.length);
      return may ? gain - cost : Number.NEGATIVE_INFINITY;
    }),
  );
  const taken = bestMatching(worth);
  return {
    rings: ringsIn(taken).filter((ring) => isSure(ring, worth, taken)),
    worth: total(worth, taken),
  };
}

/** How what stands under each name of a ring fits the name that it moved to. */
export const movesOf = (ring: Ring, fits: Fits): readonly NameFit[] =>
  ring.flatMap((place, k) => {
    const row = fits[place];
    return row === undefined ? [] : [at(row, at(ring, (k + 1) % ring.length))];
  });

function ringsIn(taken: readonly number[]): readonly Ring[] {
  const rings: Ring[] = [];
  for (const [first, next] of taken.entries()) {
    if (next === first || rings.some((ring) => ring.includes(first))) continue;
    const ring = [first];
    for (let i = next; i !== first; i = at(taken, i)) ring.push(i);
    rings.push(ring);
  }
  return rings;
}

type Worth = readonly (readonly number[])[];

const isSure = (ring: Ring, worth: Worth, taken: readonly number[]): boolean =>
  ring.every((place) => {
    const without = worth.map((row, i) =>
      row.map((one, j) => (i === place && j === at(taken, i) ? Number.NEGATIVE_INFINITY : one)),
    );
    return total(worth, taken) - total(worth, bestMatching(without)) > SURE;
  });

const total = (worth: Worth, taken: readonly number[]): number =>
  sum(taken.map((j, i) => at(at(worth, i), j)));

/** 2·ln of the likelihood ratio of a ring and of the names as they were written. */
export const ringGain = (ring: Ring, fits: Fits): number =>
  sum(movesOf(ring, fits).map(({ gain }) => gain));

/** Places whose panel may belong into a ring as well, the likeliest first: with it between two of its own the readings fit as well, or nearly. */
export function mayBelong(ring: Ring, fits: Fits, unsatisfactory: number): Ring {
  const least = ringGain(ring, fits) - SURE;
  const likeliest = (place: number): number =>
    Math.max(
      ...ring
        .map((_, k) => [...ring.slice(0, k), place, ...ring.slice(k)])
        .filter((wider) => fitsIn(wider, fits, unsatisfactory))
        .map((wider) => ringGain(wider, fits)),
    );
  return [...fits.keys()]
    .filter((place) => !ring.includes(place))
    .map((place) => ({ place, gain: likeliest(place) }))
    .filter(({ gain }) => gain >= least)
    .toSorted((one, other) => other.gain - one.gain)
    .map(({ place }) => place);
}

/** All fit the names that they moved to. */
export const fitsIn = (ring: Ring, fits: Fits, unsatisfactory: number): boolean =>
  movesOf(ring, fits).every(({ largest }) => largest < unsatisfactory);

/** N!/(N − n)!/n */
export function ringsOf(names: number, length: number): number {
  let ways = 1;
  for (let k = 0; k < length; k += 1) ways *= names - k;
  return ways / length;
}
