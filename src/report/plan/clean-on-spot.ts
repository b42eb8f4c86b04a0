/** Steps that were seen clean on a spot and are refined all the same: why, and when the refining step may stay out. */
import { figure } from '../../base/rounding.ts';
import { workedParts } from '../../correction/plan/plan.ts';
import type { PaintKnowledge } from '../../correction/removal/removal-knowledge.ts';
import type { PlanResult } from '../../tasks/plan/plan-vehicle.ts';
import { joined } from '../facts.ts';
import type { Said } from '../model.ts';

/** As `spot` says it of the same trials. */
export function cleanOnSpot(
  { worstHaze }: Pick<PaintKnowledge, 'worstHaze'>,
  { plan, settings: { hazeAllowed } }: Pick<PlanResult, 'plan' | 'settings'>,
): readonly Said[] {
  const refined = workedParts(plan).flatMap(({ steps }) =>
    steps.slice(0, -1).map(({ combination }) => combination),
  );
  const held = new Map(
    refined.flatMap(({ id, haze }) =>
      haze > hazeAllowed && (worstHaze?.get(id) ?? Infinity) <= hazeAllowed
        ? [[id, haze] as const]
        : [],
    ),
  );
  return [...held].map(([id, haze]) =>
    joined(
      [
        `${id}, clean on its spot, is held to leave haze of grade ${figure(haze)} all the same (one clean spot may be so by its light or its luck); the aim lets ${figure(hazeAllowed)} stand`,
        'so a refining step follows; where good light shows neither haze nor marks before it, leave it out',
      ],
      ': ',
      '.',
    ),
  );
}
