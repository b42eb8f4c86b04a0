/**
 * Ways whose strongest step was tried on this very paint.
 *
 * That a step is milder is foretold, by its place on the ladder; what a trial took and left was seen here. So of ways
 * that clear as much a tried one stands before one that was not, as long as it takes no more, neither in the middle nor
 * at the upper end. It has to have left no more haze than the aim lets stand. A rotary is none: its heat at an edge is
 * not what a trial shows.
 */
import { once } from '../../base/kept.ts';
import type { CorrectionModel } from '../removal/catalogue.ts';
import { ladderOn, type PaintKnowledge } from '../removal/removal-knowledge.ts';
import type { ProvenWays, Ranked, RatedCandidate } from './choose-steps.ts';

/** Strongest steps that were tried so, by the order of care. */
export function provenCares(
  paint: PaintKnowledge,
  hazeAllowed: number,
  model: CorrectionModel,
): ReadonlySet<number> {
  const { hazeSeen } = paint;
  if (hazeSeen === undefined) return NONE;
  const tried = ladderOn(paint, model).filter(
    ({ id, machine }) =>
      machine.motion.kind !== 'rotary' && (hazeSeen.get(id) ?? Infinity) <= hazeAllowed,
  );
  return new Set(tried.map(({ care }) => care));
}

const NONE: ReadonlySet<number> = new Set();

/** Those of all ways that may go, looked for when one is asked for; `allowed` is by the ln-SD a way is held to. */
export const provenWays = (
  all: Ranked,
  allowed: (heldTo: number) => number,
  cares: ReadonlySet<number>,
): ProvenWays => ({ cares, classes: once(() => classesOf(all, allowed, cares)) });

function classesOf(
  { heldTo, leastRemoval, strongestOf, rated }: Ranked,
  allowed: (heldTo: number) => number,
  cares: ReadonlySet<number>,
): readonly (readonly RatedCandidate[])[] {
  const widest = Math.max(...heldTo.map(allowed));
  return leastRemoval
    .flatMap((least, place) =>
      least > widest || !cares.has(strongestOf(place)) ? [] : [rated(place).members],
    )
    .map((members) => members.filter((one) => one.removal.median <= allowed(one.heldTo)))
    .filter((members) => members.length > 0);
}
