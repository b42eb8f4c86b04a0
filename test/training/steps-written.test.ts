/** Readings by two steps of a display, where the text of each is known as well. */
import { expect, test } from 'vitest';
import { binomialUpperTail } from '../../src/base/stats/incomplete-beta.ts';
import { pointKey } from '../../src/training/graded-survey.ts';
import { stepChanges } from '../../src/training/step-changes.ts';
import { readingAt, surveyOf } from './true-class.ts';

const FALSE_ALARM = 0.001;
type Written = readonly [um: number, decimals?: number];

/** Points 1, 2, 3 … of the roof, in lines from 2 on. */
const told = (
  all: readonly Written[],
  { falseAlarm = FALSE_ALARM, keyed = [] as readonly string[] } = {},
) =>
  stepChanges(
    surveyOf(
      all.map(([um, decimals], i) => ({
        ...readingAt('roof', `${i + 1}`, 1, um, { line: i + 2 }),
        ...(decimals === undefined ? {} : { decimals }),
      })),
    ),
    { falseAlarm, keyed: new Set(keyed.map((point) => pointKey('roof', point))) },
  );

const tenths: readonly Written[] = [
  [108.3, 1],
  [116.7, 1],
  [111.9, 1],
  [110.2, 1],
];
const wholes = (decimals?: number): readonly Written[] =>
  [109, 111, 112, 113, 115].map((um) => (decimals === undefined ? [um] : [um, decimals]));

test('wholes among tenths are told where so many have a chance under the false alarm, at the first of them', () => {
  // Five of nine: by the binomial law with one in ten.
  const chance = binomialUpperTail(5, 9, 0.1);
  expect(chance).toBeLessThan(FALSE_ALARM);
  const [one, ...others] = told([...tenths, ...wholes(0)]);
  expect(others).toEqual([]);
  expect(one).toMatchObject({ code: 'step-changes', line: 6 });
  expect(one?.text).toMatch(
    /^5 of 9 readings stand without the last figure that the others have: /u,
  );
  const all = [...tenths, ...wholes(0)];
  expect(told(all, { falseAlarm: 1.01 * chance })).toHaveLength(1);
  expect(told(all, { falseAlarm: 0.99 * chance })).toEqual([]);
});

test('a whole whose nought is written has its last figure, where the others are known to be written so', () => {
  expect(told([...tenths, ...wholes(1)])).toEqual([]);
  expect(told([...tenths, ...wholes(2)])).toEqual([]);
  expect(told([...tenths, ...wholes()])).toHaveLength(1);
  // Nobody knows how the tenths were written: a number shows no nought.
  const untold = tenths.map(([um]): Written => [um]);
  expect(told([...untold, ...wholes(1)])).toHaveLength(1);
});

test('wholes beyond the tenths, and points that are keyed wrongly, say nothing of the display', () => {
  const beyond = [117, 118, 119, 121, 107].map((um): Written => [um, 0]);
  expect(told([...tenths, ...beyond])).toEqual([]);
  for (const ums of [
    [117, 118, 119, 121, 122],
    [108, 107, 106, 105, 104],
  ])
    expect(told([...tenths, ...ums.map((um): Written => [um, 0])])).toEqual([]);
  expect(told([...tenths, ...wholes(0)], { keyed: ['5', '6', '7', '8'] })).toEqual([]);
});
