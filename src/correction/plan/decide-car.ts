/** What is to be done on each part of a car, looked at as a whole. */
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
  const parts = grounds.panels.flatMap(partsOf).map((part) => decisionsOn(part, grounds));
  return (aim) => {
    const decisions = parts.map((decide) => decide(aim));
    const worked = decisions.flatMap((one) => (one.kind === 'work' ? [one] : []));
    const ways = fewestSetUps(
      worked.map(({ part, choice }) => ({ ...choice, area: part.panel.area })),
    );
    const wayOf = new Map(worked.map((one, i) => [one, ways[i] ?? one.choice.best] as const));
    return decisions.map((one) =>
      one.kind === 'none' ? one : { ...one, taken: wayOf.get(one) ?? one.choice.best },
    );
  };
}
