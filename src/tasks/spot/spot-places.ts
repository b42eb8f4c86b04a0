/** Test spots without the readings of their car: which of a panel are held to be one place, by their marks alone. */
import { groupBy } from '../../base/group-by.ts';
import type { Remark } from '../../base/remark.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import {
  type HeldPlace,
  heldAsOneRemark,
  heldPlaces,
  isHeldAsOne,
  type PlaceRule,
  type TriedPlace,
} from '../../correction/spot/one-place.ts';
import type { ReadTrial } from '../../correction/spot/spot-advice.ts';
import { usualRemoval } from '../../correction/spot/spot-contradiction.ts';

export type PanelPlace = HeldPlace & { readonly panel: string };

export const spotPlaces = (trials: readonly ReadTrial[], rule: PlaceRule): readonly PanelPlace[] =>
  [...groupBy(trials, ({ trial }) => trial.panel)].flatMap(([panel, own]) =>
    heldPlaces(own.map(triedPlace), rule).map((place) => ({ ...place, panel })),
  );

const triedPlace = ({ trial, removed }: ReadTrial): TriedPlace => ({
  spot: trial.spot,
  place: trial.place ?? '',
  sets: trial.sets,
  films: trial.marks,
  taken: {
    mean: removed === null ? usualRemoval(trial) : micrometres(Math.max(0, removed.mean)),
    sd: removed === null ? micrometres(0) : removed.standardError,
  },
});

/** All that went at the place of a spot, which is the most where it may be one of several. */
export const goneWith = (spot: string, places: readonly PanelPlace[]): Micrometres =>
  micrometres(
    Math.max(
      0,
      ...places
        .filter(({ tries }) => tries.some((one) => one.spot === spot))
        .map(({ taken }) => taken.mean),
    ),
  );

export const onePlaceRemarks = (
  places: readonly PanelPlace[],
  nameOf: (panel: string) => string,
): readonly Remark[] =>
  places.filter(isHeldAsOne).map((place) => heldAsOneRemark(nameOf(place.panel), place));
