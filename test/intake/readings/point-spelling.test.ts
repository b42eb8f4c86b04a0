import { expect, test } from 'vitest';
import { values } from '../helpers.ts';

const points = (...names: readonly string[]) =>
  values(`panel;point;reading_um\n${names.map((name) => `roof;${name};104`).join('\n')}\n`)?.map(
    ([, point]) => point,
  );

test('digits of another script are digits of a point', () => {
  expect(points('１', '２')).toEqual(['1', '2']);
  expect(points('١', '٢')).toEqual(['1', '2']);
});

test('a point called by its word and a number is called by the number', () => {
  expect(points('Точка 1', 'Точка 2')).toEqual(['1', '2']);
  expect(points('Punkt 1', 'Punkt 2')).toEqual(['1', '2']);
  expect(points('Punkt 1', 'Kante')).toEqual(['Punkt 1', 'Kante']);
  expect(points('P1', 'P2')).toEqual(['P1', 'P2']);
});

test('columns called after places are points of these names', () => {
  const text = (names: string) => `Panel;${names};Unit\nroof;104;106;105;µm\n`;
  expect(values(text('A;B;C'))?.map(([, point]) => point)).toEqual(['A', 'B', 'C']);
  expect(values(text('Top;Left side;Right side'))?.map(([, point]) => point)).toEqual([
    ...['Top', 'Left side', 'Right side'],
  ]);
});
