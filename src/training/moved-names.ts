/**
 * Names moved on by one over a run of panels, in the order of the file: who begins a line too early or too late writes each
 * panel under the name before or after. The run ends with the film of its first panel, or with that of a panel that the
 * file has not: then one was passed over, and what belongs under its name was not read.
 *
 * It is one slip, and costs what two panels that are swapped do (src/training/name-rings.ts) and 2·ln N more, as it may
 * begin and end anywhere. Each panel must fit its other name, and most must fit their own worse.
 */
import { at } from '../base/at.ts';
import { type Fits, movesOf, type Ring, ringGain, SURE } from './name-rings.ts';

export type MovedNames = {
  readonly ring: Ring;
  /** As many as there are of its kind. */
  readonly ways: number;
  /** 2·ln of the likelihood ratio, after what it costs. */
  readonly worth: number;
};

type Run = MovedNames & { readonly direction: 'onwards' | 'back' };

/**
 * The likeliest; of runs that are as likely, or nearly, the one of fewest panels: what fits either name is no slip of the
 * pen. Null where there is none, or these go both ways.
 */
export function movedNames(fits: Fits, unsatisfactory: number): MovedNames | null {
  const runs = runsOf(fits).filter(({ ring }) => isLikely(ring, fits, unsatisfactory));
  const most = Math.max(...runs.map(({ worth }) => worth));
  const [shortest, ...others] = runs
    .filter(({ worth }) => most - worth <= SURE)
    .toSorted((one, other) => one.ring.length - other.ring.length);
  return others.every(({ direction }) => direction === shortest?.direction)
    ? (shortest ?? null)
    : null;
}

function isLikely(ring: Ring, fits: Fits, unsatisfactory: number): boolean {
  const moves = movesOf(ring, fits);
  const worse = moves.filter(({ gain }) => gain > 0).length;
  return worse > moves.length / 2 && moves.every(({ largest }) => largest < unsatisfactory);
}

/** Panels that the file has not come after those that it has. */
function runsOf(fits: Fits): readonly Run[] {
  const names = fits.length;
  const places = [...fits.keys()];
  const unread = [...(fits[0]?.keys() ?? [])].slice(names);
  const runs = places.flatMap((from) =>
    places.slice(from + 1).map((to) => places.slice(from, to + 1)),
  );
  return runs.flatMap((run) =>
    [[], ...unread.map((one) => [one])]
      .filter((end) => run.length + end.length > 2)
      .flatMap((end) => ringsOver(run, end).map((one) => worthOf(one, end, fits))),
  );
}

const ringsOver = (run: Ring, end: Ring) => [
  { direction: 'onwards' as const, ring: [...run, ...end] },
  { direction: 'back' as const, ring: [at(run, 0), ...end, ...run.slice(1).toReversed()] },
];

function worthOf(one: Pick<Run, 'ring' | 'direction'>, end: Ring, fits: Fits): Run {
  const names = fits.length;
  const all = one.ring.length - end.length === names;
  const ends = at(fits, 0).length - names + 1;
  return {
    ...one,
    ways: 2 * ends * (all ? 1 : (names * (names - 1)) / 2),
    worth: ringGain(one.ring, fits) - 8 * Math.log(names),
  };
}
