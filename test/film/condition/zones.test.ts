import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { splitZones } from '../../../src/film/condition/zones.ts';
import type { FilmModel } from '../../../src/film/film-model.ts';
import type { PanelPoint } from '../../../src/film/panel-points.ts';

const rule: FilmModel['zones'] = {
  meansApart: micrometres(25),
  meansApartSds: 4,
  gap: micrometres(10),
  gapSds: 1.5,
  leastPoints: 2,
};

const pointsOf = (values: readonly number[]): readonly PanelPoint[] =>
  values.map((value, k) => ({
    point: `${k + 1}`,
    thickness: micrometres(value),
    repeats: [micrometres(value)],
    place: 'face',
    curved: false,
  }));

const names = (points: readonly PanelPoint[] | undefined): readonly string[] =>
  (points ?? []).map(({ point }) => point);

describe('two zones of a panel', () => {
  it('are the points on either side of the cut, in the order they were read', () => {
    const zones = splitZones(pointsOf([158, 110, 161, 114, 112]), 4, rule);
    expect(names(zones?.thinner)).toEqual(['2', '4', '5']);
    expect(names(zones?.thicker)).toEqual(['1', '3']);
  });
  it('carry Ashman’s D: 47.5 apart with SDs 2 and 2.12 is 23.05', () => {
    // lower 110 112 114: mean 112, SD 2; upper 158 161: mean 159.5, SD 2.1213; √((4 + 4.5)/2) = 2.0616
    const zones = splitZones(pointsOf([158, 110, 161, 114, 112]), 4, rule);
    expect(zones?.ashmanD).toBeCloseTo(47.5 / Math.sqrt(4.25), 12);
  });
  it('need two points each: a single high point is no zone', () => {
    expect(splitZones(pointsOf([110, 111, 112, 113, 190]), 4, rule)).toBeUndefined();
    expect(splitZones(pointsOf([110, 190, 191]), 4, rule)).toBeUndefined();
  });
  it('need means more than 25 µm apart, and more than four SDs of the other panels', () => {
    expect(splitZones(pointsOf([100, 100, 125, 125]), 4, rule)).toBeUndefined();
    expect(splitZones(pointsOf([100, 100, 125.1, 125.1]), 4, rule)).toBeDefined();
    expect(splitZones(pointsOf([100, 100, 132, 132]), 8, rule)).toBeUndefined();
    expect(splitZones(pointsOf([100, 100, 132.1, 132.1]), 8, rule)).toBeDefined();
  });
  it('need a gap of more than 10 µm between their nearest points: a slope is no edge', () => {
    expect(splitZones(pointsOf([90, 100, 110, 120, 130, 140]), 4, rule)).toBeUndefined();
    expect(splitZones(pointsOf([90, 100, 109, 121, 131, 141]), 4, rule)).toBeDefined();
    expect(splitZones(pointsOf([90, 100, 109, 121, 131, 141]), 8, rule)).toBeUndefined();
  });
  it('are none where all points are one', () => {
    expect(splitZones(pointsOf([100, 100, 100, 100]), 4, rule)).toBeUndefined();
  });
  it('have no D where neither zone has a spread', () => {
    expect(splitZones(pointsOf([100, 100, 160, 160]), 4, rule)?.ashmanD).toBeNull();
  });
  it('hold every point once, whatever the order', () => {
    const sample = fc.array(fc.integer({ min: 60, max: 300 }), { minLength: 4, maxLength: 12 });
    fc.assert(
      fc.property(sample, (values) => {
        const zones = splitZones(pointsOf(values), 4, rule);
        const turned = splitZones(pointsOf([...values].reverse()), 4, rule);
        expect(turned === undefined).toBe(zones === undefined);
        if (zones === undefined) return;
        expect([...names(zones.thinner), ...names(zones.thicker)].sort()).toEqual(
          names(pointsOf(values)).toSorted(),
        );
      }),
    );
  });
});
