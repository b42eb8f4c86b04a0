/** Marks that read off on panel after panel, of differences that can be reckoned by hand. */
import { describe, expect, test } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import type { MeasuringPoint, Panel } from '../../src/film/template/template.ts';
import type { MarkCompared } from '../../src/training/marks-compared.ts';
import { marksOff } from '../../src/training/marks-off.ts';
import { plainPanel } from '../film/car-builder.ts';

const limits = { falseAlarm: 0.01, agrees: 3, off: 6, leastPanels: 3, leastMarks: 3 };
/** Of what is left over marks and panels: its rows and columns sum to nothing, its squares to 6. */
const LEFT = [
  [1, -1, 0],
  [-1, 0, 1],
  [0, 1, -1],
] as const;

const at = (u: number, v = 0.5) => ({ u, v });
/** Marks 1, 2, 3 … off by so much on each of so many panels. */
const table = (
  means: readonly number[],
  panels: readonly Panel[] = ['a', 'b', 'c'].map((id) => plainPanel(id)),
): readonly MarkCompared[] =>
  panels.flatMap((panel, i) =>
    means.map((mean, k) => ({
      panel,
      point: `${k + 1}`,
      difference: micrometres(mean + (LEFT[i]?.[k] ?? 0)),
    })),
  );
const found = (means: readonly number[]) => marksOff(table(means), limits);

test('are told where F over what is left has a chance under the false alarm', () => {
  // 3·(3² + 3² + 6²) = 162 on 2 degrees of freedom, 6 left on 4: F = 54, and P = (1 + 54/2)⁻² = 1/784.
  const told = (falseAlarm: number) => marksOff(table([0, 0, 9]), { ...limits, falseAlarm });
  expect(told(1 / 783)).toMatchObject({ off: ['3'], agreeing: ['1', '2'], mean: 9 });
  expect(told(1 / 785)).toBeNull();
});

test('are off beyond one limit and agree up to the other, and there must be both', () => {
  expect(found([3, -3, 9])).toMatchObject({ off: ['3'], agreeing: ['1', '2'], mean: 9 });
  expect(found([0, 6, 18])).toMatchObject({ off: ['3'], agreeing: ['1'], mean: 18 });
  expect(found([4, 5, 20])).toBeNull();
  expect(found([0, 4, 6])).toBeNull();
});

test('are off one way: who reads more here and less there reads by chance', () => {
  expect(found([0, 9, -9])).toBeNull();
  expect(found([0, -9, -9])).toMatchObject({ off: ['2', '3'], mean: -9 });
});

test('are looked for on as many panels, and at as many marks of each, as is asked', () => {
  const twoPanels = table([0, 0, 30]).slice(0, 6);
  expect(marksOff(twoPanels, limits)).toBeNull();
  expect(marksOff(twoPanels, { ...limits, leastPanels: 2 })).toMatchObject({ off: ['3'] });
  const two = table([0, 30]);
  expect(marksOff(two, limits)).toBeNull();
  expect(marksOff(two, { ...limits, leastMarks: 2 })).toMatchObject({ off: ['2'] });
});

test('are those that every one of the panels has', () => {
  const marks = table([0, 0, 9, -30]);
  const others = marks.map((one) =>
    one.panel.id === 'b' && one.point === '4' ? { ...one, point: '5' } : one,
  );
  expect(marksOff(others, limits)).toMatchObject({ off: ['3'], agreeing: ['1', '2'] });
});

describe('lie nearest to the edges', () => {
  const placed = (points: readonly MeasuringPoint[]) =>
    marksOff(
      table(
        [0, 0, 9],
        ['a', 'b', 'c'].map((id) => plainPanel(id, { points })),
      ),
      limits,
    )?.atEdges;
  const [one, two] = [
    { point: '1', ...at(0.5) },
    { point: '2', ...at(0.5, 0.4) },
  ];

  test('where all of them do, of whatever edge', () => {
    expect(placed([one, two, { point: '3', ...at(0.1) }])).toBe(true);
    expect(placed([one, two, { point: '3', ...at(0.9) }])).toBe(true);
    expect(placed([one, two, { point: '3', ...at(0.5, 0.95) }])).toBe(true);
    expect(placed([one, two, { point: '3', ...at(0.5, 0.4) }])).toBe(false);
    expect(placed([one, two, { point: '3', ...at(0.45) }])).toBe(false);
  });

  test('only where the template says where they are', () => {
    expect(placed([one, two])).toBe(false);
    expect(placed([{ point: '3', ...at(0.1) }])).toBe(false);
  });
});
