/**
 * Test spots on record that are older than the paint of their panel, as the job states when that was painted: they were
 * made on other paint. The day of a record and the days of the job meet only where the readings name their own day.
 */
import { daysLater } from '../../base/calendar.ts';
import type { DaysRead } from '../read/days-read.ts';
import type { EffectiveFacts } from '../settings/panel-facts.ts';
import { areSameFilms } from '../spot/same-films.ts';
import type { TrialsByPanel } from './car-paint.ts';
import { filmsAt, type PanelSpot, type PlacedSpot, type SpotsByPanel } from './spots-on-record.ts';

export type SpotsByAge = {
  /** On the paint that is there; one of which that is not sure teaches and frees nothing. */
  readonly madeSpots: SpotsByPanel;
  /** On paint that is gone. */
  readonly olderSpots: SpotsByPanel;
  /** Of which the readings do not say the day, so that either may be. */
  readonly perhapsOlder: SpotsByPanel;
  /** Both of these: colour that they left may be of the paint that the car had. */
  readonly notSurelyNew: SpotsByPanel;
  readonly trials: TrialsByPanel;
};

export function spotsByAge(
  spots: SpotsByPanel,
  facts: ReadonlyMap<string, Pick<EffectiveFacts, 'paintedDaysAgo'>>,
  day: DaysRead | null,
): SpotsByAge {
  const ageOn = (id: string, spot: PanelSpot): Age => {
    const days = facts.get(id)?.paintedDaysAgo.value ?? null;
    const recorded = spot.recorded ?? copiedFrom(spot, spots.get(id) ?? []);
    return recorded === null || days === null ? 'now' : ageOf(recorded.date, days, day);
  };
  const those = (...ages: readonly Age[]): SpotsByPanel => {
    const kept = [...spots].map(
      ([id, own]) => [id, own.filter((spot) => ages.includes(ageOn(id, spot)))] as const,
    );
    return new Map(kept.filter(([, own]) => own.length > 0));
  };
  const trials = [...those('now')].flatMap(([id, own]) => {
    const made = own.flatMap(({ trial }) => trial ?? []);
    return made.length === 0 ? [] : [[id, made] as const];
  });
  return {
    madeSpots: those('now', 'unsure'),
    olderSpots: those('older'),
    perhapsOlder: those('unsure'),
    notSurelyNew: those('older', 'unsure'),
    trials: new Map(trials),
  };
}

/** The spot on record whose marks read the same under another name: as old as that is its copy. */
export const copiedFrom = (spot: PanelSpot, others: readonly PanelSpot[]): PlacedSpot | null =>
  others.find((other) => other.recorded !== null && areSameFilms(filmsAt(spot), filmsAt(other)))
    ?.recorded ?? null;

type Age = 'older' | 'unsure' | 'now';

function ageOf(spotDay: string, paintedDaysAgo: number, day: DaysRead | null): Age {
  if (day === null) return 'unsure';
  const from = daysLater(day.from.slice(0, DAY_LENGTH), -paintedDaysAgo);
  const to = daysLater(day.to.slice(0, DAY_LENGTH), -paintedDaysAgo);
  if (from === undefined || to === undefined) return 'unsure';
  if (spotDay < from) return 'older';
  return spotDay > to ? 'now' : 'unsure';
}

const DAY_LENGTH = '2026-03-31'.length;
