/** What is too little to tell made-up values by: the points that were handed in, or those of the reference. */
import { expect, test } from 'vitest';
import {
  consensusReference,
  expertReference,
  type Reference,
} from '../../src/training/reference.ts';
import { gradeAgainst, model, readingAt, surveyOf } from './true-class.ts';

/** So many points of the bonnet, and of the roof. */
const read = (count: number, off = 0) =>
  surveyOf(
    ['bonnet', 'roof'].flatMap((panel) =>
      [110, 114, 108].slice(0, count).map((um, i) => readingAt(panel, `${i + 1}`, 1, um + off * i)),
    ),
  );
const told = (points: number, reference: Reference) =>
  gradeAgainst(read(points, 0.3), reference).reasons.find(({ code }) => code === 'too-few-to-tell')
    ?.text;
const OWN =
  /too few to tell by their scatter whether they were read at the car or made up: read more/u;

test('it is the reference where every point of it was read, and the survey where some were not', () => {
  const expert = expertReference(read(2));
  expect(told(2, expert)).toBe(
    'the reference read 4 points on 2 panels, too few to tell by it whether your points were read at the car or made up',
  );
  expect(told(1, expert)).toMatch(/^2 points are /u);
  expect(told(1, expert)).toMatch(OWN);
});

test('it is the survey beside a class, which has no points of its own that one could read', () => {
  const others = consensusReference([read(2), read(2, 0.1), read(2, -0.2)], model.class);
  expect(told(2, others)).toMatch(/^4 points are /u);
  expect(told(2, others)).toMatch(OWN);
});
