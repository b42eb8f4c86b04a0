/**
 * Two panels that do not fit their names as closely as the rest of the car does: a steady hand swaps panels that are alike
 * well within σ_pt, by which src/training/name-rings.ts compares names.
 *
 * What readings scatter by is taken from the marks of the other panels, as they are named: with Q of n marks there, Q(named)
 * and Q(swapped) of the m of both, 2·ln LR = (n + m)·ln((Q + Q(named))/(Q + Q(swapped))). Q is no less than what repeats come to.
 * It is the ratio of the marginal likelihoods where nobody knows the scale (prior 1/σ), so that Markov holds as for the others.
 *
 * Some order of its own marks may fit a panel as closely: which of the two it was is not said.
 */
import { at } from '../base/at.ts';
import { sum } from '../base/sum.ts';
import type { NameFit } from './name-fits.ts';
import { type Fits, LEAST_GAIN, type Ring, ringsOf, SURE } from './name-rings.ts';

type Limits = {
  /** 2·ln of one over the chance of a false alarm. */
  readonly proof: number;
  readonly unsatisfactory: number;
};

/** The surest first, no panel in two; `told` are panels of which more is known. */
export function swappedBySpread(
  fits: Fits,
  { told, sides }: { readonly told: ReadonlySet<number>; readonly sides: readonly Ring[] },
  { proof, unsatisfactory }: Limits,
): readonly Ring[] {
  const own = fits.flatMap((row, i) => (told.has(i) || !at(row, i).atMarks ? [] : [i]));
  const pairs = own.flatMap((i) => own.filter((j) => j > i).map((j): Ring => [i, j]));
  const all = pairs
    .map((pair) => ({ pair, gain: gainOf(pair, own, { fits, unsatisfactory }) }))
    .toSorted((one, other) => other.gain - one.gain);
  const waysOf = ([i, j]: Ring): number =>
    sides.some(([left, right]) => left === i && right === j)
      ? sides.length
      : ringsOf(fits.length, 2);
  return all
    .filter(({ pair, gain }) => gain > proof + 2 * Math.log(waysOf(pair)))
    .filter(({ pair, gain }) =>
      all.every(
        (other) =>
          other.pair === pair ||
          other.gain < gain - SURE ||
          !other.pair.some((place) => pair.includes(place)),
      ),
    )
    .map(({ pair }) => pair);
}

type Car = { readonly fits: Fits; readonly unsatisfactory: number };

/** 2·ln LR; none where one of the two does not fit its other name, or fits its own as well. */
function gainOf(pair: Ring, places: Ring, { fits, unsatisfactory }: Car): number {
  const fitOf = (i: number, j: number): NameFit => at(at(fits, i), j);
  const rest = places.filter((place) => !pair.includes(place)).map((place) => fitOf(place, place));
  const named = pair.map((place) => fitOf(place, place));
  const swapped = pair.map((place, k) => fitOf(place, at(pair, 1 - k)));
  const total = (some: readonly NameFit[]): number => sum(some.map(({ misfit }) => misfit));
  const counted = sum(rest.map(({ count }) => count));
  const scatter = Math.max(total(rest), sum(rest.map(({ count, ofRepeats }) => count * ofRepeats)));
  const scale = scatter / counted;
  const fitsBetter = swapped.every(
    ({ misfit, largest, atMarks }, k) =>
      atMarks && largest < unsatisfactory && at(named, k).misfit - misfit > LEAST_GAIN * scale,
  );
  if (counted === 0 || !fitsBetter) return Number.NEGATIVE_INFINITY;
  const marks = counted + sum(named.map(({ count }) => count));
  return marks * Math.log((scatter + total(named)) / (scatter + total(swapped)));
}
