import { describe, expect, it } from 'vitest';
import { micrometres, milToMicrometres } from '../../src/base/units.ts';
import { displayStep, gatherPoints, pooledRepeatability } from '../../src/film/panel-points.ts';
import type { Reading } from '../../src/film/reading.ts';
import { reading } from './car-builder.ts';

const steps = (...ums: readonly number[]): number => displayStep(ums.map(micrometres));

describe('points of a panel', () => {
  it('take the mean of their repeats', () => {
    const points = gatherPoints([
      reading('bonnet', '1', 110),
      reading('bonnet', '1', 113, { repeat: 2 }),
      reading('bonnet', '2', 120),
    ]);
    expect(points.map(({ point, thickness }) => [point, thickness])).toEqual([
      ['1', 111.5],
      ['2', 120],
    ]);
    expect(points[0]?.repeats).toEqual([110, 113]);
  });

  it('keep an edge point apart from a face point of the same name', () => {
    const points = gatherPoints([
      reading('bonnet', '1', 110),
      reading('bonnet', '1', 90, { place: 'edge' }),
    ]);
    expect(points.map(({ place, thickness }) => [place, thickness])).toEqual([
      ['face', 110],
      ['edge', 90],
    ]);
  });

  it('keep an edge point apart from one in a shut of the same name, read twice or among many others', () => {
    const edgeAndShut = [
      reading('bonnet', '1', 90, { place: 'edge' }),
      reading('bonnet', '1', 70, { place: 'shut' }),
    ];
    const again = reading('bonnet', '1', 92, { place: 'edge', repeat: 2 });
    const films = (readings: readonly Reading[]) =>
      gatherPoints(readings).map(({ place, thickness }) => [place, thickness]);
    expect(films(edgeAndShut)).toEqual([
      ['edge', 90],
      ['shut', 70],
    ]);
    expect(films([...edgeAndShut, again])).toEqual([
      ['edge', 91],
      ['shut', 70],
    ]);
    const many = Array.from({ length: 12 }, (_, i) => reading('bonnet', `p${i}`, 100));
    expect(films([...many, ...edgeAndShut]).slice(12)).toEqual(films(edgeAndShut));
  });

  it('are curved when any of their readings says so', () => {
    const points = gatherPoints([
      reading('bonnet', '1', 110),
      reading('bonnet', '1', 112, { curved: true }),
    ]);
    expect(points[0]?.curved).toBe(true);
  });
});

describe('pooled repeatability', () => {
  it('weighs each point by its degrees of freedom', () => {
    const points = gatherPoints([
      reading('a', '1', 100),
      reading('a', '1', 102),
      reading('a', '2', 100),
      reading('a', '2', 103),
      reading('a', '2', 106),
      reading('a', '3', 500),
    ]);
    // s² = 2 on 1 and 9 on 2 degrees: (2 + 18)/3; the lone reading says nothing.
    const pooled = pooledRepeatability(points);
    expect(pooled?.dof).toBe(3);
    expect(pooled?.sd).toBeCloseTo(Math.sqrt(20 / 3), 12);
  });

  it('is absent without repeats', () => {
    expect(pooledRepeatability(gatherPoints([reading('a', '1', 100)]))).toBeUndefined();
  });
});

describe('the display step read off the data', () => {
  it('is the largest that all readings are multiples of', () => {
    expect(steps(110, 113, 121)).toBe(1);
    expect(steps(110, 115, 120)).toBe(5);
    expect(steps(110, 120)).toBe(10);
    expect(steps(110.5, 113)).toBe(0.5);
    expect(steps(110.2, 113)).toBe(0.1);
    expect(steps(110.23, 113)).toBe(0.01);
  });

  it('is found in mils as well: 0.1 and 0.01 mil are 2.54 and 0.254 µm', () => {
    expect(displayStep([4.3, 4.4, 5.1].map(milToMicrometres))).toBe(2.54);
    expect(displayStep([4.31, 4.42, 5.13].map(milToMicrometres))).toBe(0.254);
    expect(displayStep([4.312, 4.421].map(milToMicrometres))).toBe(0.0254);
  });

  it('is 0 for no readings and for readings finer than any known step', () => {
    expect(steps()).toBe(0);
    expect(steps(110.2345, 113.777)).toBe(0);
  });
});
