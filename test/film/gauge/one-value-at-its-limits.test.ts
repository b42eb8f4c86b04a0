import { expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { oneValue } from '../../../src/film/gauge/one-value.ts';
import type { Reading } from '../../../src/film/reading.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { reading } from '../car-builder.ts';

const { measurement } = filmModel;
const { fewest } = measurement.rounds;

/** So many readings of 112 µm, on so many points of one panel in turn. */
const alike = (count: number, points = count): readonly Reading[] =>
  Array.from({ length: count }, (_, k) =>
    reading('panel 0', `${k % points}`, 112, { repeat: 1 + Math.floor(k / points) }),
  );

test('as many readings as a round has at least are enough, and points from two on', () => {
  expect(oneValue(alike(fewest), measurement)).toBe(112);
  expect(oneValue(alike(fewest - 1), measurement)).toBeUndefined();
  expect(oneValue(alike(fewest, 2), measurement)).toBe(112);
  expect(oneValue(alike(fewest, 1), measurement)).toBeUndefined();
  const twoPanels = alike(fewest, 1).map((one, k) => ({ ...one, panel: `panel ${k % 2}` }));
  expect(oneValue(twoPanels, measurement)).toBe(112);
});

test('decimals of µm are of a display of a micrometre at the coarsest, those of mil of one of their step', () => {
  const shown = (um: number, decimals: number, step = measurement.step) => {
    const all = alike(8).map((one) => ({ ...one, thickness: micrometres(um), decimals }));
    const { step: _, ...rest } = measurement;
    return oneValue(all, step === undefined ? rest : { ...rest, step });
  };
  expect(shown(110, 1)).toBe(110);
  expect(shown(110, 0)).toBeUndefined();
  // 4.4 mil rounds away what 4.40 mil would show, and what is known of the display stands before its digits.
  expect(shown(4.4 * 25.4, 1)).toBeUndefined();
  expect(shown(4.4 * 25.4, 2)).toBeCloseTo(111.76, 9);
  expect(shown(110, 1, micrometres(10))).toBeUndefined();
  // 254.0 µm may be 10.0 mil.
  expect(shown(254, 1)).toBeUndefined();
});

test('a layer that was read by itself is no reading of the film: it neither hides one value nor makes one', () => {
  const clear = [41, 44, 43].map((um, k) => reading('panel 0', `${k}`, um, { layer: 'clear' }));
  expect(oneValue([...clear, ...alike(fewest)], measurement)).toBe(112);
  const few = alike(fewest - 1);
  expect(oneValue([...few, reading('panel 0', '9', 112, { layer: 'clear' })], measurement)).toBe(
    undefined,
  );
});

test('the chance is that of the gauge: a share of 26 % a reading at 1 µm and an SD of 1.5', () => {
  // 2·Φ(.5/1.5) − 1 = .26112, so that .26112⁸ = 2.16e-5.
  const held = (falseAlarm: number) => ({
    ...measurement,
    repeatability: 1.5 as typeof measurement.repeatability,
    step: 1 as typeof measurement.repeatability,
    rounds: { ...measurement.rounds, fewest: 8, falseAlarm },
  });
  expect(oneValue(alike(8), held(2.2e-5))).toBe(112);
  expect(oneValue(alike(8), held(2.1e-5))).toBeUndefined();
});
