/** What is to be done on each part of a car, looked at as a whole. */
import { at } from '../../base/at.ts';
import { kept } from '../../base/kept.ts';
import { partsOf } from '../../film/survey.ts';
import type { RatedCandidate } from './choose-steps.ts';
import { type Decision, decisionsOn } from './decide-part.ts';
import { fewestSetUps } from './fewest-set-ups.ts';
import type { PlanAim, PlanGrounds } from './plan-request.ts';

/** A decision, and which of the equal ways is taken where the part is worked. */
export type PartDecision =
  | Extract<Decision, { readonly kind: 'none' }>
  | (Extract<Decision, { readonly kind: 'work' }> & { readonly taken: RatedCandidate });

/** The parts in their order; of equal ways each is worked by the one that the whole car is worked with. */
export function decisionsOnCar(grounds: PlanGrounds): (aim: PlanAim) => readonly PartDecision[] {
  const parts = grounds.panels.flatMap(partsOf);
  const byHaze = kept((hazeAllowed: number) =>
    parts.map((part) => decisionsOn(part, { ...grounds, hazeAllowed })),
  );
  return ({ aim, hazeAllowed }) => {
    const decisions = byHaze(hazeAllowed).map((decide) => decide(aim));
    const worked = decisions.filter((one) => one.kind === 'work');
    const ways = fewestSetUps(
      worked.map(({ part, choice: { best, equals } }) => ({ best, equals, area: part.panel.area })),
    );
    let next = 0;
    return decisions.map((one) => {
      if (one.kind === 'none') return one;
      const taken = at(ways, next);
      next += 1;
      return { ...one, taken };
    });
  };
}
