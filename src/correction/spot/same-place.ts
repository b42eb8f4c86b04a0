/** Before a place is worked on: whether a limit may be passed there, by the marks that it was read at. */
import { type Remark, remark } from '../../base/remark.ts';
import { says, um } from '../../base/sentence.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { Combination } from '../removal/combination.ts';
import type { ReadTrial } from './spot-advice.ts';
import { hasCleared } from './spot-ladder.ts';
import { clearedBy, type NextCase, type NextStep } from './spot-next.ts';

export type WorkedPlace = ReadTrial & {
  /** What might go there before anything was tried on this paint; null where its marks do not tell it. */
  readonly allowed: Micrometres | null;
  /** All that is gone there, by other spots that may be the same place as well. */
  readonly gone: Micrometres;
};

/** Of the places that the next step goes on at. */
export function samePlace(
  { code, combination }: NextStep,
  nextCase: Pick<NextCase, 'trials' | 'ladder' | 'aim'>,
  places: readonly WorkedPlace[],
): readonly Remark[] {
  const isRefined = code === 'refine';
  if (combination === null || !(isRefined || code === 'again')) return [];
  const tried = clearedBy(nextCase)?.combination ?? combination;
  return places
    .filter(({ trial }) => trial.combination.id === tried.id)
    .filter(({ trial }) => hasCleared(trial, nextCase.aim) === isRefined)
    .flatMap((place) => limitRemark(place, combination));
}

function limitRemark(
  { trial: { spot }, removed, allowed, gone }: WorkedPlace,
  { id, perSet }: Combination,
): readonly Remark[] {
  if (removed === null || allowed === null) {
    return [
      remark(
        'spot-place-unknown',
        `what may still go at the place of test spot ${spot} its marks do not tell: run survey with --spots before it is worked on`,
      ),
    ];
  }
  const mean = micrometres(Math.max(gone, removed.mean));
  if (mean + perSet <= allowed) return [];
  const others = gone > removed.mean ? ' with those that may be the same place' : '';
  return [
    remark(
      'spot-place-short',
      says`on the place of test spot ${spot} a limit may be passed: it took ${um(mean)}${others}, ${id} takes about ${um(perSet, 2)} more, and ${um(allowed, 2)} might go by its marks. Run survey with --spots first; if too much came off, leave that place, and try a milder step or fewer sets on a fresh one`,
      mean,
    ),
  ];
}
