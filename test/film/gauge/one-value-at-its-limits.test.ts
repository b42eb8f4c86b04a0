import { expect, test } from 'vitest';
import { oneValue } from '../../../src/film/gauge/one-value.ts';
import type { Reading } from '../../../src/film/reading.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { reading } from '../car-builder.ts';

const { measurement } = filmModel;
const { fewest } = measurement.rounds;

/** So many readings of 112 µm, on so many panels in turn. */
const alike = (count: number, panels = 3): readonly Reading[] =>
  Array.from({ length: count }, (_, k) => reading(`panel ${k % panels}`, `${k}`, 112));

test('as many readings as a round has at least are enough, and panels from two on', () => {
  expect(oneValue(alike(fewest), measurement)).toBe(112);
  expect(oneValue(alike(fewest - 1), measurement)).toBeUndefined();
  expect(oneValue(alike(fewest, 2), measurement)).toBe(112);
  expect(oneValue(alike(fewest, 1), measurement)).toBeUndefined();
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
