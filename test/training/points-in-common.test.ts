import { expect, test } from 'vitest';
import type { Reading } from '../../src/film/reading.ts';
import { pointsInCommon } from '../../src/training/points-in-common.ts';
import { readingAt, surveyOf } from './true-class.ts';

const at = (panel: string, point: string, thickness: number, marked = false): Reading =>
  readingAt(panel, point, 1, thickness, { marked });
const common = (one: readonly Reading[], other: readonly Reading[]) =>
  pointsInCommon(surveyOf(one), surveyOf(other));

// Walked against the order of the template, to and fro.
const first = [
  at('roof', '2', 112, true),
  at('bonnet', '1', 110, true),
  at('roof', '1', 113),
  at('bonnet', '7', 111, true),
  at('boot', '1', 118),
  at('bonnet', '2', 109),
];
const second = [
  at('bonnet', '1', 111, true),
  at('bonnet', '2', 108, true),
  at('roof', '1', 115),
  at('roof', '2', 116, true),
  at('bonnet', '9', 140, true),
  at('wing-front-left', '1', 121),
];

test('points in common are those of one name on one panel, in the order of the first file', () => {
  expect(common(first, second)).toMatchObject([
    { one: 112, other: 116 },
    { one: 110, other: 111 },
    { one: 113, other: 115 },
    { one: 109, other: 108 },
  ]);
  expect(common(second, first).map(({ one }) => one)).toEqual([111, 108, 115, 116]);
});

test('a point is a mark where both marked it', () => {
  expect(common(first, second).map(({ marked }) => marked)).toEqual([true, true, false, false]);
});

test('a point read again has its place where it was first read, and counts once', () => {
  const again = [...first, { ...at('roof', '2', 114, true), repeat: 2 }];
  expect(common(again, second).map(({ one }) => one)).toEqual([113, 110, 113, 109]);
});

test('surveys of other panels have none in common', () => {
  expect(common(first.slice(4, 5), second)).toEqual([]);
});
