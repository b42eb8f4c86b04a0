/** How much film may vary where a panel was read, and where what is told of it stands. */
import { expect, test } from 'vitest';
import { says } from '../../src/base/sentence.ts';
import { fUpperTail } from '../../src/base/stats/incomplete-beta.ts';
import { lowerF, toldOf, varianceThere } from '../../src/training/checked-values.ts';
import { readPanel } from '../../src/training/graded-survey.ts';
import { expertReference } from '../../src/training/reference.ts';
import { readingAt, surveyOf } from './true-class.ts';

/** Marks 1 to 3 lie on even film, 4 and 5 far apart. */
const film = [110, 111, 112, 104, 119];
const roof = (points: readonly number[], marked: boolean | readonly number[] = true) =>
  points.map((point, i) =>
    readingAt('roof', `${point}`, 1, 100 + i, {
      marked: Array.isArray(marked) ? marked.includes(point) : marked === true,
      line: 10 + i,
    }),
  );
const expert = (marked = true) =>
  expertReference(
    surveyOf([
      ...film.map((thickness, i) => readingAt('roof', `${i + 1}`, 1, thickness, { marked })),
      ...film.map((thickness, i) => readingAt('boot', `${i + 1}`, 1, thickness, { marked })),
    ]),
  );
const there = (readings: ReturnType<typeof roof>, reference = expert()) => {
  const trainee = surveyOf(readings);
  const [read, theirs] = [readPanel(trainee, 'roof'), reference.panels.get('roof')];
  if (read === undefined || theirs === undefined) throw new Error('both read the roof');
  return { ...varianceThere(read, theirs, trainee), ofPanel: theirs.spread };
};

test('at marks of both, film varies as the reference reads it at these marks', () => {
  // Of 110, 111 and 112 the variance is 1.
  expect(there(roof([1, 2, 3]))).toMatchObject({ variance: 1, dof: 2 });
  expect(there(roof([3, 1]))).toMatchObject({ variance: 2, dof: 1 });
});

test('never more than over the panel, where marks lie far apart by chance', () => {
  const { variance, dof, ofPanel } = there(roof([4, 5]));
  // Of 104 and 119 it would be 112.5.
  expect(ofPanel.sd ** 2).toBeLessThan(112);
  expect([variance, dof]).toEqual([ofPanel.sd ** 2, ofPanel.dof]);
});

test('as over the panel where any point is not a mark of both', () => {
  for (const readings of [roof([1, 2, 3, 9]), roof([1, 2, 3], false), roof([1, 2, 3], [1, 2])]) {
    const { variance, dof, ofPanel } = there(readings);
    expect([variance, dof]).toEqual([ofPanel.sd ** 2, ofPanel.dof]);
  }
  const { variance, ofPanel } = there(roof([1, 2, 3]), expert(false));
  expect(variance).toBe(ofPanel.sd ** 2);
});

test('the chance of so small a ratio of variances is that of no greater one', () => {
  // Of F at 4 and 4 degrees of freedom 1 is the middle, and 1/6.388 the lower 5 % (tables: 6.39).
  expect(lowerF(1, 4, 4)).toBeCloseTo(0.5, 12);
  expect(lowerF(1 / 6.388, 4, 4)).toBeCloseTo(0.05, 4);
  expect(lowerF(2, 3, 7) + fUpperTail(2, 3, 7)).toBe(1);
});

test('what is told names the panels, and stands at the first reading of the first of them', () => {
  const trainee = surveyOf([
    readingAt('bonnet', '1', 1, 110, { line: 4 }),
    readingAt('roof', '1', 1, 111, { line: 7 }),
    readingAt('roof', '2', 1, 112, { line: 8 }),
    readingAt('boot', '1', 1, 112, { line: 2 }),
  ]);
  const panels = ['roof', 'boot'].flatMap((id) => readPanel(trainee, id) ?? []);
  const told = toldOf('values-alike', panels, { trainee }, (names) => says`${names}: alike`);
  expect(told).toMatchObject({
    code: 'values-alike',
    text: 'roof and boot lid: alike',
    panels: ['roof', 'boot'],
    line: 7,
  });
});
