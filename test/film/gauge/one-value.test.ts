import { expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { oneValue } from '../../../src/film/gauge/one-value.ts';
import type { Reading } from '../../../src/film/reading.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { normal, seededRandom } from '../../samples/seeded-random.ts';
import { reading } from '../car-builder.ts';

const { measurement } = filmModel;
const PANELS = ['bonnet', 'roof', 'boot'];

const fifteen = (um: (k: number) => number, more: Partial<Reading> = {}): readonly Reading[] =>
  Array.from({ length: 15 }, (_, k) => reading(PANELS[k % 3] ?? '', `${k}`, um(k), more));

test('fifteen readings of three panels that are one value are told', () => {
  expect(
    oneValue(
      fifteen(() => 112),
      measurement,
    ),
  ).toBe(112);
  expect(
    oneValue(
      fifteen((k) => (k === 7 ? 113 : 112)),
      measurement,
    ),
  ).toBeUndefined();
  expect(
    oneValue(
      fifteen(() => 110, { decimals: 1 }),
      measurement,
    ),
  ).toBe(110);
});

test('a display so coarse that the spread rounds away is no stuck gauge', () => {
  for (const um of [110, 115])
    expect(
      oneValue(
        fifteen(() => um),
        measurement,
      ),
    ).toBeUndefined();
  const coarse = { ...measurement, step: micrometres(10) };
  expect(
    oneValue(
      fifteen(() => 112),
      coarse,
    ),
  ).toBeUndefined();
  expect(
    oneValue(
      fifteen(() => 110),
      { ...measurement, step: micrometres(1) },
    ),
  ).toBe(110);
});

test('few readings, one point, layers and nothing at all say nothing', () => {
  const all = fifteen(() => 112);
  expect(oneValue(all.slice(0, measurement.rounds.fewest - 1), measurement)).toBeUndefined();
  expect(
    oneValue(
      all.map((one) => ({ ...one, panel: 'roof', point: '1' })),
      measurement,
    ),
  ).toBeUndefined();
  expect(
    oneValue(
      fifteen(() => 45, { layer: 'clear' }),
      measurement,
    ),
  ).toBeUndefined();
  expect(oneValue([], measurement)).toBeUndefined();
});

test('the most even car, on a display of 1, 2 or 5 µm, is told no more often than stated', () => {
  const random = seededRandom(11);
  for (const step of [1, 2, 5]) {
    const shown = () =>
      Math.round((112.5 + measurement.repeatability * normal(random)) / step) * step;
    const told = Array.from({ length: 1000 }, () =>
      oneValue(fifteen(shown), { ...measurement, step: micrometres(step) }),
    ).filter((one) => one !== undefined);
    expect(told.length).toBeLessThanOrEqual(1000 * measurement.rounds.falseAlarm);
  }
});
