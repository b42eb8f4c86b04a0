/**
 * Places that a plan worked deeper than their panel, by a spot at a deep defect. They are not among what was read, so
 * no more goes from the panel than is left there: what might go at the place, less what the panel was to lose, or lost
 * where that is more, and the spot's median besides.
 */
import { says, um } from '../../base/sentence.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { Allowance } from '../../film/limits/allowance.ts';
import { bindingLimit, inWords, type Limit } from '../../film/limits/limit.ts';
import { defectText } from '../../film/place-note.ts';
import type { Panel, VehicleTemplate } from '../../film/template/template.ts';
import type { WrittenPlace } from '../../formats/film-record.ts';
import type { PlannedPlace } from '../../formats/plan-file.ts';
import type { Planned } from './compare-plan.ts';
import { kept, type VisitPanels } from './compare-visit-record.ts';

export type PanelPlace = { readonly panel: Panel; readonly place: PlannedPlace };

export const plannedPlaces = (
  planned: Planned,
  { panels }: Pick<VehicleTemplate, 'panels'>,
): readonly PanelPlace[] =>
  panels.flatMap((panel) =>
    (planned.get(panel.id)?.places ?? []).map((place) => ({ panel, place })),
  );

/** As a film record keeps them; of a panel that was painted since they are gone. */
export const writtenPlaces = (
  places: readonly PanelPlace[],
  visit: VisitPanels,
): readonly WrittenPlace[] =>
  places
    .filter(({ panel }) => {
      const { gained_um } = visit.find((one) => one.panel === panel.id) ?? {};
      return gained_um === undefined;
    })
    .map(({ panel, place: { defect, median, high } }) => ({
      panel: panel.id,
      defect,
      median_um: kept(median),
      high_um: kept(high),
    }));

/** What is left of a panel that lost so much, with the places on it. */
export function keepingPlaces(
  allowance: Allowance,
  places: readonly PlannedPlace[],
  gone: Micrometres,
): Allowance {
  if (places.length === 0) return allowance;
  const limits = [...allowance.limits, ...places.map((place) => limitOf(place, gone))];
  const boundBy = bindingLimit(limits);
  return { ...allowance, limits, budget: boundBy.value, boundBy };
}

function limitOf(place: PlannedPlace, gone: Micrometres): Limit {
  const rest = restOf(place, gone);
  return inWords({
    code: 'place',
    value: rest,
    said: () =>
      says`a spot at ${defectText(place.defect)} was to take ${um(place.median)} more at one place, which was not read: ${um(rest, 2)} are left there`,
  });
}

/** Nothing where the plan does not say what might go there. */
const restOf = ({ budget, inAll, median }: PlannedPlace, gone: Micrometres): Micrometres =>
  micrometres(Math.max(0, (budget ?? 0) - Math.max(inAll ?? 0, gone + median)));
