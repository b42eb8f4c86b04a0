/**
 * What went at one place of a panel beyond what went all over it: a patch of a test spot, or a place worked deeper. The
 * readings lie beside it, so that nothing of them tells what is left there: what might go there without it, less all of it.
 */
import { says, um } from '../../base/sentence.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { PanelFacts, RecordedRemoval } from '../film-model.ts';
import { goneAtPlace } from './earlier-work.ts';
import type { UnsaidLimit } from './limit.ts';

/**
 * `mostOf` says what might go of the panel by other facts: with nothing gone at the place, and the doubt about it. What a
 * comparison left of the panel has the place taken off already.
 */
export function placeLimits(
  facts: PanelFacts,
  mostOf: (facts: PanelFacts) => Micrometres,
): readonly UnsaidLimit[] {
  const { recorded, heldTo: _, ...others } = facts;
  if (recorded?.allOver === undefined) return [];
  const { mean: gone } = goneAtPlace(recorded);
  if (gone === 0) return [];
  const whole = { ...recorded, mean: recorded.allOver.mean };
  const value = micrometres(Math.max(0, mostOf({ ...others, recorded: whole }) - gone));
  return [{ code: 'place', value, said: () => goneThere(gone, value, recorded) }];
}

function goneThere(gone: Micrometres, left: Micrometres, { by }: RecordedRemoval) {
  const rest = left === 0 ? says`nothing is` : says`${um(left, 2)} are`;
  return says`at one place of it ${um(gone)} more are gone by the ${by ?? 'film record'}: ${rest} left there`;
}
