import { expect, test } from 'vitest';
import { pointKey } from '../../src/training/graded-survey.ts';
import { marksCompared } from '../../src/training/marks-compared.ts';
import { expertReference } from '../../src/training/reference.ts';
import { readingAt, surveyOf } from './true-class.ts';

const at = (panel: string, point: string, um: number, marked = true, repeat = 1) =>
  readingAt(panel, point, repeat, um, { marked });
const order = (panel: string, ...points: readonly string[]) =>
  points.map((point) => [panel, point] as const);
const expert = expertReference(
  surveyOf([
    ...['1', '2', '3'].flatMap((point) => [at('roof', point, 110), at('boot', point, 120)]),
    at('roof', '4', 110, false),
  ]),
);
const compared = (readings: Parameters<typeof surveyOf>[0], keyed: readonly string[] = []) =>
  marksCompared(surveyOf(readings), expert, new Set(keyed)).map(
    ({ panel, point, difference }) => [panel.id, point, difference] as const,
  );

test('marks stand in the order in which they were first read, round by round or panel by panel', () => {
  const rounds = [...order('roof', '2', '1'), ...order('boot', '3'), ...order('roof', '3')];
  const told = compared(rounds.map(([panel, point], i) => at(panel, point, 112 + i)));
  expect(told).toEqual([
    ['roof', '2', 2],
    ['roof', '1', 3],
    ['boot', '3', -6],
    ['roof', '3', 5],
  ]);
  // A second reading of a mark does not move it: 112 and 116 are 114.
  const again = compared([
    ...rounds.map(([panel, point], i) => at(panel, point, 112 + i)),
    at('roof', '2', 116, true, 2),
  ]);
  expect(again.map(([panel, point]) => [panel, point])).toEqual(rounds);
  expect(again[0]?.[2]).toBe(4);
});

test('points that either has not marked, that one alone has, or that are keyed wrongly are none', () => {
  const readings = [
    at('roof', '1', 111),
    at('roof', '2', 111, false),
    at('roof', '4', 111),
    at('roof', '9', 111),
    at('bonnet', '1', 111),
    at('boot', '1', 121),
  ];
  expect(compared(readings)).toEqual([
    ['roof', '1', 1],
    ['boot', '1', 1],
  ]);
  expect(compared(readings, [pointKey('roof', '1')])).toEqual([['boot', '1', 1]]);
});
