/** What a comparison left of a panel, and the test spots that were made since. */
import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import type { LeftAfterVisit } from '../../../src/film/film-model.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { leftAfterSpots } from '../../../src/tasks/survey/left-after-spots.ts';
import type { PanelSpot, PlacedSpot } from '../../../src/tasks/survey/spots-on-record.ts';
import { trial } from '../../correction/spot-trials.ts';

const um = micrometres;
const { repeatability, rounds } = filmModel.measurement;
const rule = { repeatability, rounds };
const left = (rest: Partial<LeftAfterVisit> = {}): LeftAfterVisit => ({
  date: '2026-03-31',
  most: um(2),
  zones: { thinner: um(1) },
  points: 3,
  mean: um(110),
  visit: 1,
  ...rest,
});
const fresh: PanelSpot = { trial: trial('da/foam-medium/medium'), recorded: null };
const onRecord = (visit: number): PanelSpot => {
  const written = {
    ...{ spot: 'A', panel: 'roof', combination: 'da/foam-medium/medium', sets: 1 },
    ...{ taken_um: 1.5, taken_sd_um: 0.4 },
  };
  const recorded: PlacedSpot = { written, visit, date: '2026-04-02', path: [], where: 'record' };
  return { trial: null, recorded };
};
const after = (one: LeftAfterVisit, ...spots: readonly PanelSpot[]) =>
  leftAfterSpots([one], spots, { takenBy: () => ({ mean: um(0.8), sd: um(0.3) }), rule });

describe('what a comparison left', () => {
  it('has taken off what spots took that were made since, of the panel and of each zone', () => {
    expect(after(left(), fresh)).toEqual([
      { ...left(), most: um(1.2), zones: { thinner: expect.closeTo(0.2, 9) } },
    ]);
    expect(after(left(), onRecord(2))).toMatchObject([{ most: 0.5, zones: { thinner: 0 } }]);
  });

  it('stays as it is where they were on record by then', () => {
    for (const visit of [0, 1]) expect(after(left(), onRecord(visit))).toEqual([left()]);
    expect(after(left({ isNearLine: true }), onRecord(1))).toEqual([left({ isNearLine: true })]);
  });

  it('holds no more where a word in doubt held it back, and a spot was made since', () => {
    expect(after(left({ isNearLine: true }), fresh)).toEqual([]);
    expect(after(left({ isNearLine: true }), onRecord(2))).toEqual([]);
  });
});
