/** What is taken of test spots on record: that they count, and which of a file they are. */
import { groupBy } from '../../base/group-by.ts';
import type { VehicleTemplate } from '../../film/template/template.ts';
import type { Assumption } from '../settings/assumption.ts';
import type { SpotsByAge } from './spots-by-age.ts';
import type { PanelSpot, PlacedSpot, SpotsByPanel } from './spots-on-record.ts';

export function spotAssumptions(
  { madeSpots, olderSpots, perhapsOlder }: SpotsByAge,
  { panels }: VehicleTemplate,
): readonly Assumption[] {
  const about = (
    code: string,
    isOf: (spot: PanelSpot) => boolean,
    text: (names: string) => string,
    spots: SpotsByPanel = madeSpots,
  ): readonly Assumption[] => {
    const names = panels.flatMap(({ id, name }) => {
      const own = (spots.get(id) ?? []).filter(isOf).flatMap(({ recorded }) => recorded ?? []);
      return own.length === 0 ? [] : [`${name} (${byDay(own)})`];
    });
    return names.length === 0 ? [] : [{ code, text: text(names.join(', ')), origin: 'job' }];
  };
  return [
    ...about(
      'spots-on-record',
      ({ trial }) => trial === null,
      (names) =>
        `test spots on record count as gone from their places, on ${names}; what they showed of the paint counts only with --spots`,
    ),
    ...about(
      'spots-counted-once',
      ({ trial }) => trial !== null,
      (names) =>
        `test spots of --spots that are on record too count once, and are not held against what may go now, on ${names}`,
    ),
    ...about(
      'spots-before-paint',
      () => true,
      (names) =>
        `test spots older than the paint of their panel free nothing and hold nothing there, on ${names}`,
      olderSpots,
    ),
    ...about(
      'spots-before-paint',
      () => true,
      (names) =>
        `test spots perhaps older than the paint of their panel, as the readings name no day that tells, free nothing, on ${names}`,
      perhapsOlder,
    ),
  ];
}

/** `A, B of 2026-03-31`. */
const byDay = (spots: readonly PlacedSpot[]): string =>
  [...groupBy(spots, ({ date }) => date)]
    .map(([day, own]) => `${own.map(({ written }) => written.spot).join(', ')} of ${day}`)
    .join('; ');
