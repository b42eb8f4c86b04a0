import { describe, expect, test } from 'vitest';
import type { Reading } from '../../src/film/reading.ts';
import { madeUpValues } from '../../src/training/made-up-values.ts';
import { type CommonPoint, chanceAlike } from '../../src/training/points-in-common.ts';
import { expertReference } from '../../src/training/reference.ts';
import { model, readingAt, surveyOf } from './true-class.ts';

describe('the chance that points of two hands show one figure though they are different places', () => {
  const point = (panelId: string, one: number, other: number): CommonPoint => ({
    ...{ panelId, one, other },
    marked: false,
  });

  test('is the share of pairs of points of a panel whose figures are the same', () => {
    // 110 of the one is read by the other at two further points, 112 at none, 111 at one: 3 of 6.
    const roof = [point('roof', 110, 111), point('roof', 112, 110), point('roof', 111, 110)];
    expect(chanceAlike(roof)).toBeCloseTo(3 / 6, 12);
    // Beside a panel of two points without any: 3 of 8.
    const boot = [point('boot', 110, 90), point('boot', 95, 111)];
    expect(chanceAlike([...roof, ...boot])).toBeCloseTo(3 / 8, 12);
  });

  test('is that of the whole car where no panel has two points', () => {
    expect(chanceAlike([point('roof', 110, 111), point('boot', 111, 110)])).toBe(1);
    expect(chanceAlike([point('roof', 110, 111), point('boot', 111, 112)])).toBe(1 / 2);
  });

  test('is none of one point, nor of no point: there is no other', () => {
    expect(chanceAlike([point('roof', 110, 110)])).toBe(0);
    expect(chanceAlike([])).toBe(0);
  });
});

describe('points of a panel that all read the same', () => {
  const PANELS = ['bonnet', 'roof', 'boot', 'wing-front-left'];
  const read = (films: (panel: string) => readonly number[]): readonly Reading[] =>
    PANELS.flatMap((panel) => films(panel).map((um, k) => readingAt(panel, `${k + 1}`, 1, um)));
  const flat = surveyOf(read((panel) => Array.from({ length: 5 }, () => 108 + panel.length)));
  const codes = (expert: readonly Reading[]): readonly string[] =>
    madeUpValues(flat, expertReference(surveyOf(expert)), {
      slips: model.slips,
      keyed: new Set(),
    }).told.map(({ code }) => code);

  test('are told beside a reference that has one point of each: one point shows no even film', () => {
    expect(codes(read(() => [112]))).toEqual(['values-alike']);
  });

  test('are not told beside one that read every panel as even itself', () => {
    expect(codes(read(() => [112, 112, 112, 112, 112]))).toEqual([]);
    expect(codes(read(() => [112, 107, 115, 110, 118]))).toEqual(['values-alike']);
  });
});
