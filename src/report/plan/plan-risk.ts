/** What risk a plan takes, beside what the panels carry already. */

import { roundTo, shown } from '../../base/rounding.ts';
import { tell } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import { isWorked, type PanelPlan, workedParts } from '../../correction/plan/plan.ts';
import type { FilmModel } from '../../film/film-model.ts';
import { partName } from '../../film/survey.ts';
import type { PlanResult } from '../../tasks/plan/plan-vehicle.ts';
import { joined } from '../facts.ts';
import { type Block, paragraph, type Said } from '../model.ts';
import { wereThinner } from '../survey/thinner-clear.ts';
import { percentRange } from './percent-range.ts';

export function riskLine({ plan, settings: { film, terms } }: PlanResult, unit: LengthUnit): Said {
  const known = workedParts(plan).filter((part) => isWorked(part) && part.risk !== null);
  const already = percentRange(known.flatMap((panel) => panel.already ?? []));
  const thin = percentRange(known.flatMap((panel) => panel.riskIfThin ?? []));
  const ifThin = `${thin}\u00a0% with it ${tell(wereThinner(film.thinnerClear), unit)}`;
  const chance = `chance of clear (topcoat) under its floor on over ${shareText(film)} of a panel’s face, for cars like those assumed`;
  const most = `at most ${shown(100 * terms.risk, 1)}\u00a0%`;
  const added = plan.expectedPanelsBelowFloor - plan.panelsBelowFloorAlready;
  const chances =
    known.length === 0
      ? [chance]
      : [
          {
            text: `${chance}: ${most}; ${already}\u00a0% before the plan, ${ifThin}`,
            facts: [
              `${chance}: ${most}`,
              `${already}\u00a0% before the plan on the panels worked`,
              ifThin,
            ],
          },
        ];
  return joined(
    [...chances, `on average ${shown(added, 2)} such panels more`, ...alreadyThin(plan.panels)],
    '; ',
    '.',
  );
}

const shareText = ({ topcoat }: FilmModel): string =>
  `${roundTo(100 * topcoat.thinnestShare, 1)}\u00a0%`;

/** With -v: of what the chance is told, and that of a spot. */
export function riskAtLength({ plan, settings: { film } }: PlanResult): readonly Block[] {
  const hasSpots = plan.panels.some(({ local }) => local.some(({ steps }) => steps.length > 0));
  const spots = hasSpots
    ? [
        `spots are extra: each by its own place, any of the panel, which has more clear than the thinnest ${shareText(film)} that the panel is held to`,
      ]
    : [];
  return [
    paragraph(
      'Risk is told',
      joined(
        [
          `of the face without its outer ${film.edgeWidth}\u00a0mm and its body lines`,
          'of what a step takes by chance as well',
          ...spots,
        ],
        '; ',
        '.',
      ),
    ),
  ];
}

/** `bonnet (99 %) is one already`: what no plan changes, lest the plan be blamed for it. */
function alreadyThin(panels: readonly PanelPlan[]): readonly Said[] {
  const thin = workedParts({ panels }).filter(({ already }) => already !== null && already > 0.5);
  if (thin.length === 0) return [];
  const told = thin.map(
    ({ survey, already }) => `${partName(survey)} (${shown(100 * (already ?? 0), 0)}\u00a0%)`,
  );
  const text = `${told.join(', ')} ${thin.length === 1 ? 'is one' : 'are such'} already`;
  return [{ text, facts: [`such panels already: ${told.join(', ')}`] }];
}
