/** A place that was worked deeper has one name: on a plan, in a record, on a page, and at the point that reads it. */
import { describe, expect, test } from 'vitest';
import { defectText, isPointOf, placePoint, withPoints } from '../../src/film/place-note.ts';
import { correctionModel } from '../../src/formats/models.ts';

describe('a defect at a place', () => {
  test('is called by its id in words, wherever it is told', () => {
    const local = correctionModel.defects.filter(({ scope }) => scope === 'local');
    expect(local.length).toBeGreaterThan(2);
    for (const { id, name } of local) expect(defectText(id)).toBe(name);
  });

  test('is read at a point with a number, counted on its panel', () => {
    expect(placePoint('bird-etching', 0)).toBe('bird etching 1');
    const places = [
      { panel: 'roof', defect: 'bird-etching' },
      { panel: 'boot', defect: 'bird-etching' },
      { panel: 'roof', defect: 'deep-scratches' },
      { panel: 'roof', defect: 'bird-etching' },
    ];
    expect(withPoints(places).map(({ point }) => point)).toEqual([
      ...['bird etching 1', 'bird etching 1', 'deep scratches 1', 'bird etching 2'],
    ]);
  });

  test.each([
    ['Bird-Etching 1', 'bird etching 1', true],
    ['bird etching', 'bird etching 1', true],
    [' bird_etching_2 ', 'bird etching 2', true],
    ['bird etching', 'bird etching 2', false],
    ['bird etching 12', 'bird etching 1', false],
    ['1', 'bird etching 1', false],
  ])('is that of point "%s" for "%s": %s', (point, name, isSo) => {
    expect(isPointOf(point, name)).toBe(isSo);
  });
});
