/**
 * Places that a plan worked deeper than their panel, by a spot at a deep defect. They are no part of what the panel lost,
 * so no more goes from it than is left there: what might go at the place, less what the panel was to lose, or lost where
 * that is more, and the spot's median besides. Where the place was read under the name of its point, what is held of the
 * spot by that reading takes the place of its median.
 */
import { type Remark, remark } from '../../base/remark.ts';
import { bare, type Sentence, says, um } from '../../base/sentence.ts';
import { normalQuantile } from '../../base/stats/normal.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { FilmChange } from '../../film/compare/compare-change.ts';
import type { Allowance } from '../../film/limits/allowance.ts';
import { bindingLimit, inWords, type Limit } from '../../film/limits/limit.ts';
import { placeName } from '../../film/place-note.ts';
import type { Panel, VehicleTemplate } from '../../film/template/template.ts';
import type { WrittenPlace } from '../../formats/film-record.ts';
import type { Allowed } from './compare-overrun.ts';
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
  const limits = [
    ...allowance.limits,
    ...places.map((place) => limitOf(place, placeName(place, places), gone)),
  ];
  const boundBy = bindingLimit(limits);
  return { ...allowance, limits, budget: boundBy.value, boundBy };
}

const CONFIDENCE = 0.95;

/**
 * More gone at a place that was read than might go there, surely or perhaps: as of a panel by its marks. What the spot
 * took is told less what the panel lost, so that is part of its doubt, and no less sure is their sum.
 */
export const overAtPlaces = (
  places: readonly PlaceRead[],
  { removed }: Pick<FilmChange, 'removed'>,
  allowed: Allowed | null,
): readonly Remark[] =>
  places.flatMap(({ read, budget, point }) => {
    const might = budget ?? allowed?.most ?? null;
    if (read === null || might === null) return [];
    const gone = removed.value + read.measured.value;
    if (gone <= might) return [];
    const reach = normalQuantile((1 + CONFIDENCE) / 2) * read.measured.standardError;
    const isSure = gone - reach > might;
    // By what a place lacks to other points a figure over it is no doubt yet.
    if (!isSure && !read.isPaired) return [];
    const went = might === 0 ? says`nothing might go` : says`${um(might, 2)} might go`;
    return [
      remark(
        isSure ? 'more-than-allowed' : 'perhaps-more-than-allowed',
        says`at ${point} ${bare(gone)} ± ${um(reach)} came off in all, ${went} there`,
        might,
      ),
    ];
  });

function limitOf(place: PlaceRead, name: string, gone: Micrometres): Limit {
  const rest = leftAtPlace(place, gone);
  return inWords({
    code: 'place',
    value: rest,
    said: () => says`a spot at ${wentThere(place, name)}: ${um(rest, 2)} are left there`,
  });
}

function wentThere({ median, read }: PlaceRead, name: string): Sentence {
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
