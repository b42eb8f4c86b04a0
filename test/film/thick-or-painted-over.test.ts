import { expect, test } from 'vitest';
import { fiveAround, plainPanel, surveyOf } from './car-builder.ts';

const notes = (films: readonly number[]) =>
  surveyOf({
    panels: films.map((_, i) => plainPanel(`p${i}`)),
    readings: films.flatMap((film, i) => fiveAround(`p${i}`, film)),
  }).notes;
const ten = (film: number): readonly number[] => Array.from({ length: 10 }, () => film);

test('one thin panel among ten that agree on 154 µm leaves open which of them is the factory’s film', () => {
  const told = notes([128, ...ten(154)]);
  expect(told.map(({ code, value }) => [code, value])).toEqual([
    ['thick-baseline', 154],
    ['thin-or-painted', 128],
  ]);
  const note = told[1];
  expect(note?.text).toMatch(/^most panels agree on 154\.0 µm, and p0 reads 128\.0 µm: either /);
});

test('panels that agree on what factories paint leave nothing open, one a little thinner or none', () => {
  expect(notes([108, ...ten(112)])).toEqual([]);
  expect(notes(ten(112))).toEqual([]);
});

test('panels that agree far over what factories paint are told as a car painted again all over', () => {
  expect(notes(ten(182)).map(({ code, value }) => [code, value])).toEqual([
    ['thick-baseline', 182],
  ]);
  // Two are too few to make a usual film.
  expect(notes([182, 182])).toEqual([]);
});
