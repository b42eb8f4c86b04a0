/** A place that was worked deeper has one name: on a plan, in a record, on a page, and at the point that reads it. */
import { describe, expect, test } from 'vitest';
import { micrometres as um } from '../../src/base/units.ts';
import type { PlaceWorked } from '../../src/film/film-model.ts';
import {
  defectText,
  isPointOf,
  placeNotes,
  placePoint,
  withPoints,
} from '../../src/film/place-note.ts';
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

describe('what is said of a place on record', () => {
  const place: PlaceWorked = {
    ...{ date: '2026-11-02', defect: 'deep-scratches', point: 'deep scratches 1' },
    ...{ median: um(2), high: um(4.5) },
  };
  const taken = { mean: um(6.4), sd: um(1.2) };
  const said = (one: PlaceWorked) =>
    placeNotes({
      paintedDaysAgo: null,
      recorded: { mean: um(0), sd: um(0), places: [one] },
    }).map(({ code, text }) => ({ code, text }));

  test('that nobody foretold is what was read there, and not what a spot was to take', () => {
    expect(said({ ...place, median: um(0), high: um(0), taken })).toEqual([
      {
        code: 'place-read',
        text: 'on 2026-11-02 more went at one place of deep scratches than of the rest of the panel: by what was read there 6.4 ± 1.2 µm, and it counts in what may go from the panel',
      },
    ]);
  });

  test('that was foretold and read is both', () => {
    const [{ code, text } = { code: '', text: '' }] = said({ ...place, taken });
    expect(code).toBe('place-read');
    expect(text).toContain('was to take 2.0 µm more (up to 4.5 µm) at one place');
    expect(text).toContain('6.4 ± 1.2 µm');
  });

  test('that nobody read is to be kept off, whatever was foretold', () => {
    expect(said(place)[0]?.code).toBe('place-on-record');
    expect(said({ ...place, median: um(0) })[0]?.code).toBe('place-on-record');
  });
});
