import { expect, test } from 'vitest';
import type { Reading } from '../../src/film/reading.ts';
import { haveSameReadings } from '../../src/training/identical-surveys.ts';
import { seededRandom } from '../samples/seeded-random.ts';
import { changed, drawCar, readCar, surveyOf, usualHabit } from './true-class.ts';

const random = seededRandom(31);
const own = readCar(random, drawCar(random), usualHabit).slice(0, 10);
const same = (other: readonly Reading[], least = 10) =>
  haveSameReadings(surveyOf(own), surveyOf(other), least);

test('readings are the same by place, point, repeat and value, in the same order', () => {
  expect(same(own.map((one) => ({ ...one, origin: { file: 'b.csv', line: 99, column: 1 } })))).toBe(
    true,
  );
  expect(same(changed(own, ({ thickness }, i) => (i === 9 ? thickness + 0.1 : thickness)))).toBe(
    false,
  );
  expect(same(own.map((one, i) => (i === 9 ? { ...one, point: '9' } : one)))).toBe(false);
  expect(same(own.map((one, i) => (i === 9 ? { ...one, panel: 'roof' } : one)))).toBe(false);
  expect(same(own.map((one, i) => (i === 9 ? { ...one, repeat: 2 } : one)))).toBe(false);
  expect(same([...own].reverse())).toBe(false);
});

test('fewer readings than can prove a copy are none, and neither is a part of a survey', () => {
  expect(same(own, 11)).toBe(false);
  expect(same(own.slice(0, 9), 5)).toBe(false);
  expect(haveSameReadings(surveyOf(own.slice(0, 9)), surveyOf(own), 5)).toBe(false);
});
