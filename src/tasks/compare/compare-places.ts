/**
 * Places that a plan worked deeper than their panel, by a spot at a deep defect. They are no part of what the panel lost,
 * so no more goes from it than is left there: what might go at the place, less what the panel was to lose, or lost where
 * that is more, and the spot's median besides. Where the place was read under the name of its point, what is held of the
 * spot by that reading takes the place of its median.
 */
import { type Sentence, says, um } from '../../base/sentence.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { Allowance } from '../../film/limits/allowance.ts';
import { bindingLimit, inWords, type Limit } from '../../film/limits/limit.ts';
import { defectText } from '../../film/place-note.ts';
import type { Panel, VehicleTemplate } from '../../film/template/template.ts';
import type { WrittenPlace } from '../../formats/film-record.ts';
import type { PlaceRead } from './compare-places-read.ts';
import type { Planned } from './compare-plan.ts';
import { kept, type VisitPanels } from './compare-visit-record.ts';

export type PanelPlace = { readonly panel: Panel; readonly place: PlaceRead };

/** Of the panels of a template, in its order. */
export const placesOnPanels = (
  places: ReadonlyMap<string, readonly PlaceRead[]>,
  { panels }: Pick<VehicleTemplate, 'panels'>,
): readonly PanelPlace[] =>
  panels.flatMap((panel) => (places.get(panel.id) ?? []).map((place) => ({ panel, place })));

/** Ids of the panels on which a plan works a place deeper. */
export const panelsWithPlaces = (planned: Planned): ReadonlySet<string> =>
  new Set([...planned].flatMap(([id, { places }]) => (places.length === 0 ? [] : [id])));

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
    .map(({ panel, place: { defect, median, high, read } }) => ({
      panel: panel.id,
      defect,
      median_um: kept(median),
      high_um: kept(high),
      ...(read === null
        ? {}
        : {
            taken_um: kept(read.measured.value),
            taken_sd_um: kept(read.measured.standardError),
          }),
    }));

/** What is left of a panel that lost so much, with the places on it. */
export function keepingPlaces(
  allowance: Allowance,
  places: readonly PlaceRead[],
  gone: Micrometres,
): Allowance {
  if (places.length === 0) return allowance;
  const limits = [...allowance.limits, ...places.map((place) => limitOf(place, gone))];
  const boundBy = bindingLimit(limits);
  return { ...allowance, limits, budget: boundBy.value, boundBy };
}

function limitOf(place: PlaceRead, gone: Micrometres): Limit {
  const rest = leftAtPlace(place, gone);
  return inWords({
    code: 'place',
    value: rest,
    said: () => says`a spot at ${wentThere(place)}: ${um(rest, 2)} are left there`,
  });
}

function wentThere({ defect, median, read }: PlaceRead): Sentence {
  const name = defectText(defect);
  return read === null
    ? says`${name} was to take ${um(median)} more at one place, which was not read`
    : says`${name} took ${um(read.taken.mean)} more at one place, by what was read there`;
}

/** Of a panel that lost so much. Nothing where the plan does not say what might go there. */
export function leftAtPlace(
  { budget, inAll, median, read }: PlaceRead,
  gone: Micrometres,
): Micrometres {
  const spent =
    read === null ? Math.max(inAll ?? 0, gone + median) : gone + Math.max(0, read.taken.mean);
  return micrometres(Math.max(0, (budget ?? 0) - spent));
}
