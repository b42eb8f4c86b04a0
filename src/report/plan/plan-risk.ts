/** What risk a plan takes, beside what the panels carry already. */

import { roundTo, shown } from '../../base/rounding.ts';
import { tell } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import { isWorked, type PanelPlan, workedParts } from '../../correction/plan/plan.ts';
import { partName } from '../../film/survey.ts';
import type { PlanResult } from '../../tasks/plan/plan-vehicle.ts';
import { joined } from '../facts.ts';
import type { Said } from '../model.ts';
import { wereThinner } from '../survey/thinner-clear.ts';
import { percentRange } from './percent-range.ts';

export function riskLine({ plan, settings: { film } }: PlanResult, unit: LengthUnit): Said {
  const worked = workedParts(plan).filter(isWorked);
  const share = roundTo(100 * film.topcoat.thinnestShare, 1);
  const known = worked.filter(({ risk }) => risk !== null);
  const already = percentRange(known.flatMap((panel) => panel.already ?? []));
  const hasSpots = plan.panels.some(({ local }) => local.some(({ steps }) => steps.length > 0));
  const spots = hasSpots
    ? [
        `Spots are extra: each by its own place, any of the panel, which has more clear than the thinnest ${share}\u00a0% that the panel is held to.`,
      ]
    : [];
  const added = plan.expectedPanelsBelowFloor - plan.panelsBelowFloorAlready;
  const thin = percentRange(known.flatMap((panel) => panel.riskIfThin ?? []));
  const thinner = tell(wereThinner(film.thinnerClear), unit);
  const ifThin = `${thin}\u00a0% ${thinner}`;
  const before = [
    `Before polishing it is ${already}\u00a0% on the panels worked`,
    { text: ifThin, facts: [`With the plan it is ${ifThin}`] },
  ];
  return joined(
    [
      `chance, over cars like those assumed, of clear (topcoat) under its floor on over ${share}\u00a0% of a panel’s face (outer ${film.edgeWidth}\u00a0mm, body lines excluded).`,
      ...(known.length === 0 ? [] : [joined(before, '; ', '.')]),
      joined(
        [`Such panels: the plan adds ${shown(added, 2)} on average`, ...alreadyThin(plan.panels)],
        '; ',
        '.',
      ),
      ...spots,
    ],
    ' ',
  );
}

/** `bonnet (99 %) is one already`: what no plan changes, lest the plan be blamed for it. */
function alreadyThin(panels: readonly PanelPlan[]): readonly Said[] {
  const thin = workedParts({ panels }).filter(({ already }) => already !== null && already > 0.5);
  if (thin.length === 0) return [];
  const told = thin.map(
    ({ survey, already }) => `${partName(survey)} (${shown(100 * (already ?? 0), 0)}\u00a0%)`,
  );
  const text = `${told.join(', ')} ${thin.length === 1 ? 'is one' : 'are such'} already`;
  return [{ text, facts: [`Such panels already: ${told.join(', ')}`] }];
}
