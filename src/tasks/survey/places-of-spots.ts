/** Which test spots of a panel are held to be one place, what they took there in all, and what is said of it. */
import { counted } from '../../base/counted.ts';
import { groupBy } from '../../base/group-by.ts';
import { inWords } from '../../base/in-words.ts';
import { type Remark, remark } from '../../base/remark.ts';
import { bare, says, um } from '../../base/sentence.ts';
import { sum } from '../../base/sum.ts';
import { micrometres } from '../../base/units.ts';
import {
  type HeldPlace,
  heldAsOneRemark,
  heldPlaces,
  isHeldAsOne,
  type PlaceRule,
  type TriedPlace,
} from '../../correction/spot/one-place.ts';
import type { Gauge, SpotMark, SpotTrial } from '../../correction/spot/spot-trial.ts';
import type { RecordedRemoval } from '../../film/film-model.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import type { RecordedSpot } from '../../formats/film-record.ts';
import type { Settings } from '../settings/settings.ts';
import { might, mightGo } from './spot-overruns.ts';
import { hasRisen, nameOf, type PanelSpot } from './spots-on-record.ts';
import { takenInAll } from './taken-in-all.ts';

export const placeRule = ({ film }: Pick<Settings, 'film'>, gauge: Gauge): PlaceRule => ({
  repeatability: gauge.repeatability,
  rounds: film.measurement.rounds,
});

/** What trials took, and when those of one visit are held to be one place. */
export type PlacesRead = {
  readonly takenBy: (trial: SpotTrial) => RecordedRemoval;
  readonly rule: PlaceRule;
};

/**
 * What spots took at a place of the panel. At one visit no place lost more than the most that went at one of those that
 * they are held to be; nobody knows whether a later visit tried the same place, so its most adds to that.
 */
export const takenAtSpots = (spots: readonly PanelSpot[], read: PlacesRead): RecordedRemoval =>
  takenInAll(
    placesByVisit(spots, read).map((places) => mostTaken(places.map(({ taken }) => taken))),
  );

/** The places of each visit. */
export const placesByVisit = (
  spots: readonly PanelSpot[],
  { takenBy, rule }: PlacesRead,
): readonly (readonly HeldPlace[])[] =>
  [...groupBy(spots, ({ recorded }) => recorded?.visit).values()].map((visit) =>
    heldPlaces(
      visit.map((spot) => triedPlace(spot, takenBy)),
      rule,
    ),
  );

function triedPlace(spot: PanelSpot, takenBy: PlacesRead['takenBy']): TriedPlace {
  const { trial, recorded } = spot;
  const { mean, sd } = recorded === null ? takenBy(trial) : takenOnRecord(recorded);
  return {
    spot: nameOf(spot),
    place: trial?.place ?? recorded?.written.place ?? '',
    sets: recorded === null ? trial.sets : recorded.written.sets,
    films: hasRisen(spot) ? [] : marksOf(spot),
    taken: { mean, sd },
  };
}

const marksOf = ({ trial, recorded }: PanelSpot): readonly SpotMark[] =>
  recorded === null
    ? trial.marks
    : (recorded.written.marks ?? []).map(({ mark, before_um, after_um }) => ({
        name: mark,
        before: micrometres(before_um),
        after: micrometres(after_um),
      }));

const takenOnRecord = ({ written }: RecordedSpot): RecordedRemoval => ({
  mean: micrometres(written.taken_um),
  sd: micrometres(written.taken_sd_um),
});

/** With the largest doubt of any: which of them lost most may not be told. */
const mostTaken = (places: readonly RecordedRemoval[]): RecordedRemoval => ({
  mean: micrometres(Math.max(0, ...places.map(({ mean }) => mean))),
  sd: micrometres(Math.max(0, ...places.map(({ sd }) => sd))),
});

/** Of a panel as it was surveyed before any spot was counted. */
export const onePlaceNotes = (
  survey: PanelSurvey,
  spots: readonly PanelSpot[],
  read: PlacesRead,
): readonly Remark[] =>
  placesByVisit(spots, read)
    .flat()
    .filter(({ tries }) => tries.length > 1)
    .flatMap((place) => [
      ...overrunAt(place, survey, spots),
      ...(isHeldAsOne(place) ? [heldAsOneRemark(survey.panel.name, place)] : []),
    ]);

const isSaid = ({ tries }: HeldPlace): boolean => tries.every(({ place }) => place !== '');

const spotsOf = ({ tries }: HeldPlace): string =>
  `test spots ${inWords(tries.map(({ spot }) => spot))}`;

/** Too much for the place, where none of its spots alone took so much; of spots on record that was judged at their visit. */
function overrunAt(
  place: HeldPlace,
  survey: PanelSurvey,
  spots: readonly PanelSpot[],
): readonly Remark[] {
  const { tries, taken } = place;
  const allowed = mightGo(survey);
  if (allowed === null || taken.mean <= allowed) return [];
  if (tries.some((one) => one.taken.mean > allowed)) return [];
  const isNew = spots.every(({ recorded }) => recorded === null);
  if (!isNew) return [];
  const sets = counted(sum(tries.map((one) => one.sets)), 'set');
  const came = says`${survey.panel.name} (${spotsOf(place)}): ${bare(taken.mean)} ± ${um(2 * taken.sd)} came off in ${sets}`;
  const isSure = isSaid(place) && taken.mean - 2 * taken.sd > allowed;
  return [
    isSure
      ? remark(
          'spot-overrun',
          says`${came} at one place, ${might(allowed)}. Do not work it further. Wipe, let cool and read its marks again before any panel is worked`,
          taken.mean,
        )
      : remark(
          'spot-perhaps-overrun',
          says`${came} if they are one place, ${might(allowed)}. Read its marks again before any panel is worked`,
          taken.mean,
        ),
  ];
}
