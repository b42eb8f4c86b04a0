/** A clear that was read by itself: its mean, what that may be off by, and its spread over the panel, by hand. */
import { expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import type { FilmModel } from '../../../src/film/film-model.ts';
import { isClearLayer, measuredClear } from '../../../src/film/limits/measured-clear.ts';
import type { PanelPoint } from '../../../src/film/panel-points.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { reading } from '../car-builder.ts';

const um = micrometres;
/** A tenth of the clear is assumed as its SD, for as much as six degrees of freedom; the gauge errs by up to 3 µm. */
const model: FilmModel = {
  ...filmModel,
  spread: { ...filmModel.spread, fallbackShare: 0.1, fallbackLeast: um(1), priorDofCap: 6 },
  measurement: { ...filmModel.measurement, fixed: um(3), proportional: 0 },
};

const points = (...films: readonly number[]): readonly PanelPoint[] =>
  films.map((film, i) => ({
    point: `${i + 1}`,
    thickness: um(film),
    repeats: [um(film)],
    place: 'face',
    curved: false,
  }));

test('a clear varies as much as is assumed of its thickness, less by what its own points show', () => {
  const found = measuredClear(points(38, 40, 42), 0, model);
  expect([found?.mean, found?.of]).toEqual([40, 'panel']);
  // (6·4² + 2·2²)/8 = 13 on 8 degrees.
  expect(found?.within?.sd).toBeCloseTo(Math.sqrt(13), 9);
  expect(found?.within?.dof).toBe(8);
  // 3²/3 of the gauge, and 13/3 of three points.
  expect(found?.sd).toBeCloseTo(Math.sqrt(3 + 13 / 3), 9);
});

test('points that agree show no less than the gauge scatters by, and two of them nothing', () => {
  // (6·16 + 2·9)/8.
  expect(measuredClear(points(40, 40, 40), 9, model)?.within?.sd).toBeCloseTo(
    Math.sqrt(114 / 8),
    9,
  );
  expect(measuredClear(points(30, 50), 9, model)?.within).toEqual({ sd: 4, dof: 6 });
});

test('there is none without a point', () => {
  expect(measuredClear([], 9, model)).toBeNull();
});

test('a layer is the clear by any of its names, and by no other', () => {
  const clear = (layer: string) => isClearLayer(reading('roof', '1', 40, { layer }));
  const names = ['clear', 'clear coat', 'clear-coat', 'clear_coat', 'clearcoat'];
  expect(names.filter((name) => !clear(name))).toEqual([]);
  expect(['', 'base', 'unclear', 'clear base', 'clear coats'].filter(clear)).toEqual([]);
});
