import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { keyingSlips } from '../../../src/film/condition/keying-slips.ts';
import { outlyingPoints } from '../../../src/film/condition/outlying-points.ts';
import type { PanelPoint } from '../../../src/film/panel-points.ts';
import { naphthalene, rosner, uraniumIsotopes } from '../../reference/outlier-examples.ts';

const pointsOf = (values: readonly number[]): readonly PanelPoint[] =>
  values.map((value, k) => ({
    point: `${k + 1}`,
    thickness: micrometres(value),
    repeats: [micrometres(value)],
    place: 'face',
    curved: false,
  }));

const others = { variance: 25, dof: 6, dofCeiling: 40 };

describe('a point that stands out', () => {
  it('is judged by the spread of the other panels, so that it cannot hide in its own', () => {
    // t(.99; 40) = 2.4233 (tables); reach 2.4233 · 5 · √(1 + 1.57/5) = 13.89 below the median 112
    const at = (value: number) =>
      outlyingPoints(pointsOf([110, 114, 112, 113, value]), others, 0.05);
    expect(at(98.2)).toEqual({ low: [], high: [], rule: 'other-panels' });
    expect(at(98.0)).toEqual({ low: ['5'], high: [], rule: 'other-panels' });
    expect(at(125.9).high).toEqual([]);
    expect(outlyingPoints(pointsOf([110, 111, 112, 113, 127]), others, 0.05).high).toEqual(['5']);
  });
  it('needs three points even beside other panels', () => {
    expect(outlyingPoints(pointsOf([60, 112]), others, 0.05)).toEqual({
      low: [],
      high: [],
      rule: 'none',
    });
    expect(outlyingPoints(pointsOf([60, 112, 113]), others, 0.05)).toEqual({
      low: ['1'],
      high: [],
      rule: 'other-panels',
    });
  });
  it('is found by Grubbs’ test where the panel stands alone (NIST e-Handbook 1.3.5.17.1)', () => {
    expect(outlyingPoints(pointsOf(uraniumIsotopes.values), null, 0.05)).toEqual({
      low: [],
      high: ['8'],
      rule: 'grubbs',
    });
  });
  it('is found by Rosner’s test from ten points on (US EPA 2009 example 12-4)', () => {
    const { low, high, rule } = outlyingPoints(pointsOf(naphthalene.values), null, 0.05);
    expect(rule).toBe('esd');
    expect(low).toEqual([]);
    expect(high.map((point) => naphthalene.values[Number(point) - 1])).toEqual([23.23, 35.45]);
  });
  it('is not missed because the first steps of Rosner’s test do not pass', () => {
    const { high } = outlyingPoints(pointsOf(rosner.values), null, 0.05);
    expect(high.map((point) => rosner.values[Number(point) - 1])).toEqual([5.34, 5.42, 6.01]);
  });
  it('cannot be told among fewer than five points of a lone panel', () => {
    expect(outlyingPoints(pointsOf([110, 110.5, 111, 60]), null, 0.05)).toEqual({
      low: [],
      high: [],
      rule: 'none',
    });
    expect(outlyingPoints(pointsOf([110, 110.5, 111, 110.2, 60]), null, 0.05).low).toEqual(['5']);
  });
});

describe('a slip of the key', () => {
  it('is a lone value ten times its neighbours, or a tenth of them', () => {
    expect(keyingSlips(pointsOf([112, 1120, 108, 110]))).toEqual([
      { point: '2', thickness: 1120, factor: 10 },
    ]);
    expect(keyingSlips(pointsOf([112, 11.2, 108, 110]))).toEqual([
      { point: '2', thickness: 11.2, factor: 0.1 },
    ]);
  });
  it('is not suspected of film that is thick, or thick at two points', () => {
    expect(keyingSlips(pointsOf([112, 620, 108, 110]))).toEqual([]);
    expect(keyingSlips(pointsOf([112, 1120, 1090, 108, 110]))).toEqual([]);
  });
  it('is held against the middle of the other points, and near to ten times that by a factor of 1.25', () => {
    const slips = (...values: readonly number[]) =>
      keyingSlips(pointsOf(values)).map(({ point }) => point);
    // 8.7 times 115; against 130, the middle of all three, it would be no slip.
    expect(slips(100, 130, 1000)).toEqual(['3']);
    expect(slips(112, 112, 1120 / 1.26)).toEqual([]);
    expect(slips(112, 112, 1120 / 1.24)).toEqual(['3']);
    expect(slips(112, 112, 1120 * 1.26)).toEqual([]);
    expect(slips(112, 112, 1120 * 1.24)).toEqual(['3']);
  });
  it('needs two neighbours', () => {
    expect(keyingSlips(pointsOf([112, 1120]))).toEqual([]);
  });
});
