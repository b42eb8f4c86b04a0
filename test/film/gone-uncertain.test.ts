import { describe, expect, it } from 'vitest';
import { standardUncertainty } from '../../src/base/uncertainty.ts';
import { micrometres } from '../../src/base/units.ts';
import { goneUncertain, isOfRecord, recordsOfMiddle } from '../../src/film/put-back.ts';
import { filmModel } from '../../src/formats/models.ts';
import { knownFacts } from './car-builder.ts';

const film = micrometres(112);
const facts = (taken: number, takenSd: number) => ({
  ...knownFacts,
  taken: micrometres(taken),
  takenSd: micrometres(takenSd),
});
const gone = (taken: number, takenSd: number) =>
  goneUncertain(film, facts(taken, takenSd), filmModel.measurement);

describe('what is put back', () => {
  it('is uncertain by what it is known to, and by the gauge on so much more film', () => {
    const { fixed, proportional } = { ...filmModel.measurement, fixed: micrometres(0) };
    const exact = goneUncertain(film, facts(5, 0.8), { ...filmModel.measurement, fixed });
    // The share of the reading that a gauge may be off by is the half-width of a rectangle.
    const gauge = (proportional * 5) / Math.sqrt(3);
    expect(exact.value).toBe(5);
    expect(standardUncertainty(exact)).toBeCloseTo(Math.hypot(0.8, gauge), 9);
  });

  it('has no doubt of a record where that is exact, and none at all where nothing went', () => {
    const sources = (taken: number, takenSd: number) => [...gone(taken, takenSd).components.keys()];
    expect(sources(5, 0.8).filter(isOfRecord)).toEqual(['record']);
    expect(sources(5, 0).filter(isOfRecord)).toEqual([]);
    expect(sources(5, 0)).toHaveLength(1);
    expect(sources(0, 0)).toEqual([]);
    expect(sources(0, 0.8).filter(isOfRecord)).toEqual(['record']);
  });

  it('of several panels is uncertain as if all their records erred alike: by the mean of their SDs', () => {
    const panels = [facts(5, 0.8), facts(2, 0.2), facts(0, 0)];
    expect(recordsOfMiddle(panels)['other-records']?.contribution).toBeCloseTo(1 / 3, 12);
    expect(recordsOfMiddle([facts(5, 0), facts(2, 0)])).toEqual({});
  });
});
