/** Points numbered from the other end: told as that, and not as panels swapped or values that do not follow. */
import { expect, test } from 'vitest';
import type { Reading } from '../../src/film/reading.ts';
import { expertReference } from '../../src/training/reference.ts';
import { seededRandom } from '../samples/seeded-random.ts';
import {
  drawCar,
  gradeAgainst,
  model,
  panelIds,
  readCar,
  surveyOf,
  usualHabit,
} from './true-class.ts';

const random = seededRandom(4_711);
const car = drawCar(random);
const habit = { ...usualHabit, marked: true, repeats: 3 };
const reference = expertReference(surveyOf(readCar(random, car, habit)));
const honest = readCar(random, car, habit);
const turned = (of: RegExp, readings: readonly Reading[] = honest): readonly Reading[] =>
  readings.map((one) =>
    of.test(one.panel) ? { ...one, point: `${habit.points + 1 - Number(one.point)}` } : one,
  );
const graded = (readings: readonly Reading[], by = reference) =>
  gradeAgainst(surveyOf(readings, undefined, by), by);
const codesOf = (readings: readonly Reading[]) => graded(readings).reasons.map(({ code }) => code);

test('points numbered from the other end all over the car are told once, and nothing else is', () => {
  const { reasons, voided, markIfSound, mark } = graded(turned(/./));
  expect(reasons.map(({ code }) => code)).toEqual(['points-turned']);
  expect(reasons[0]?.text).toMatch(/^points of .* are numbered from the other end: /u);
  expect(reasons[0]?.panels.length).toBeGreaterThan(8);
  expect(voided.every(({ as }) => as === 'turned')).toBe(true);
  // As it is for the same readings under the numbers of the marks.
  expect(markIfSound?.share).toBe(graded(honest).mark.share);
  expect(mark.share).toBeLessThan(markIfSound?.share ?? 0);
});

test('what was read right under such numbers counts: the low spot as found, and each panel as one that is questionable', () => {
  const [right, back] = [graded(honest), graded(turned(/./))];
  const [theirs, own] = [right, back].map(({ mark }) =>
    Object.fromEntries(mark.criteria.map(({ criterion, share }) => [criterion, share])),
  );
  const { questionableShare } = model.scores;
  // All but at most two of eleven panels fit far better the other way round.
  expect(own?.['accuracy']).toBeCloseTo(
    ((theirs?.['accuracy'] ?? 0) * (11 - back.voided.length)) / 11 +
      (questionableShare * back.voided.length) / 11,
    1,
  );
  expect({ ...own, accuracy: 0 }).toEqual({ ...theirs, accuracy: 0 });
  expect(back.verdict).toBe('questionable');
  expect(back.grounds).toEqual(['slip']);
  expect(back.bias).toEqual(right.bias);
  expect(back.agreement).toEqual(right.agreement);
});

test('none is told where the rest of the car does not follow its marks either', () => {
  // Two orders in turn: one on all panels would be told as that.
  const FROM = [
    ['3', '4', '5', '1', '2'],
    ['2', '5', '1', '3', '4'],
  ];
  for (let k = 0; k < 5; k += 1) {
    const drawn = drawCar(random);
    const expert = expertReference(surveyOf(readCar(random, drawn, habit)));
    const moved = readCar(random, drawn, habit).map((one) => ({
      ...one,
      // The roof alone runs the other way, as it may by chance.
      point:
        one.panel === 'roof'
          ? `${6 - Number(one.point)}`
          : (FROM[panelIds.indexOf(one.panel) % 2]?.[Number(one.point) - 1] ?? ''),
    }));
    const codes = graded(moved, expert).reasons.map(({ code }) => code);
    expect(codes).toContain('not-following');
    expect(codes).not.toContain('points-turned');
  }
});

test('on one panel they are told with its name, and the others are judged as they are', () => {
  const { reasons, verdict } = graded(turned(/^roof$/));
  expect(reasons.map(({ code, panels }) => [code, panels])).toEqual([['points-turned', ['roof']]]);
  expect(verdict).toBe('questionable');
});

test('no honest hand is told of it, nor one who read points of their own', () => {
  for (const repeatability of [0.5, 1.5, 4]) {
    expect(codesOf(readCar(random, car, { ...habit, repeatability }))).not.toContain(
      'points-turned',
    );
  }
  const unmarked = turned(/./).map((one) => ({ ...one, marked: false }));
  expect(codesOf(unmarked)).not.toContain('points-turned');
});

test('a swap of two panels is told beside it', () => {
  const names: Readonly<Record<string, string>> = { roof: 'boot', boot: 'roof' };
  const both = turned(/^(wing|door)/).map((one) => ({
    ...one,
    panel: names[one.panel] ?? one.panel,
  }));
  const told = graded(both).reasons.map(({ code }) => code);
  expect(told).toContain('points-turned');
  expect(told).toContain('panels-swapped');
  expect(panelIds).toContain('roof');
});

test('a low spot whose value stands under another number is told with that number', () => {
  // Points 4 and 1 of the wing changed: no panel is turned.
  const names: Readonly<Record<string, string>> = { '4': '1', '1': '4' };
  const changed = honest.map((one) =>
    one.panel === 'wing-front-right' ? { ...one, point: names[one.point] ?? one.point } : one,
  );
  const missed = graded(changed).reasons.find(({ code }) => code === 'low-spot-missed');
  expect(missed?.text).toMatch(
    /^front right wing: the low spot \(\S+ µm at point 4\) was read under another number, your point 1 \(/u,
  );
});
