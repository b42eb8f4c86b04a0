/** Values more even than film is, held against the panel by hand; and where marks that read off lie. */
import { describe, expect, test } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import type { Reading } from '../../src/film/reading.ts';
import { chanceOfSoEven, lowerF } from '../../src/training/checked-values.ts';
import { readPanel } from '../../src/training/graded-survey.ts';
import { consensusReference, expertReference } from '../../src/training/reference.ts';
import { seededRandom } from '../samples/seeded-random.ts';
import {
  changed,
  drawCar,
  gradeAgainst,
  model,
  readCar,
  readingAt,
  surveyOf,
  usualHabit,
} from './true-class.ts';

const random = seededRandom(3_131);
const car = drawCar(random);
const marked = { ...usualHabit, marked: true };
const expert = expertReference(surveyOf(readCar(random, car, { ...marked, repeats: 3 })));
const own = readCar(random, car, marked);

describe('the chance of values so even', () => {
  const trainee = surveyOf(
    [108, 113, 110, 115].map((um, i) => readingAt('roof', `${i + 1}`, 1, um)),
  );
  const chance = (
    variance: number,
    spread: readonly [sd: number, dof: number],
    ofOwn: readonly [variance: number, dof: number],
  ): number => {
    const [read, theirs] = [readPanel(trainee, 'roof'), expert.panels.get('roof')];
    if (read === undefined || theirs === undefined) throw new Error('both read the roof');
    return chanceOfSoEven(variance, read, {
      theirs: {
        ...theirs,
        spread: { sd: micrometres(spread[0]), dof: spread[1] },
        own: { variance: ofOwn[0], dof: ofOwn[1] },
      },
      trainee,
    });
  };

  test('is by F on the three degrees of four points, against the film of the panel or its own points, the greater', () => {
    const [byPanel, byOwn] = [lowerF(2 / 25, 3, 40), lowerF(2 / 9, 3, 4)];
    expect(byOwn).toBeGreaterThan(byPanel);
    expect(chance(2, [5, 40], [9, 4])).toBe(byOwn);
    expect(chance(2, [3, 40], [25, 4])).toBe(lowerF(2 / 9, 3, 40));
  });

  test('is none to speak of where the reference reads several points alike, for nobody reads more even', () => {
    expect(chance(2, [5, 40], [0, 4])).toBe(1);
    expect(chance(2, [0, 40], [9, 4])).toBe(1);
  });
});

describe('values that are too regular', () => {
  const flat = (readings: readonly Reading[]): readonly Reading[] =>
    changed(readings, ({ panel, point }) => {
      const level = 113 + 0.5 * readings.findIndex((one) => one.panel === panel);
      return level + (Number(point) % 2 === 0 ? 0.4 : -0.3) - 0.1 * Number(point);
    });

  test('are told beside the reference, or beside the class where that is the reference', () => {
    const textOf = (reference: typeof expert) =>
      gradeAgainst(surveyOf(flat(own)), reference).reasons.find(
        ({ code }) => code === 'too-regular',
      )?.text;
    expect(textOf(expert)).toMatch(/\(SD\), those of the reference there by \d/u);
    const class_ = Array.from({ length: 5 }, () => surveyOf(readCar(random, car, marked)));
    expect(textOf(consensusReference(class_, model.class))).toMatch(
      /\(SD\), those of the class there by \d/u,
    );
  });
});

describe('a reference that read one point a panel', () => {
  const codesBeside = (points: number, own: readonly Reading[]): readonly string[] =>
    gradeAgainst(
      surveyOf(own),
      expertReference(surveyOf(readCar(random, car, { ...marked, points }))),
    ).reasons.map(({ code }) => code);
  const even = new Map([...car].map(([id, film]) => [id, { ...film, sd: 1.5 }]));

  test('shows no scatter to hold a survey against, however even the film of the car is', () => {
    const honest = readCar(random, even, { ...usualHabit, repeatability: 0.5 });
    expect(codesBeside(1, honest)).not.toContain('too-regular');
    expect(
      codesBeside(
        1,
        changed(honest, () => 113.3),
      ),
    ).toContain('values-alike');
  });

  test('is what is said to be too little to tell made-up values by, and not the points that were handed in', () => {
    const reference = expertReference(surveyOf(readCar(random, car, { ...marked, points: 1 })));
    const told = gradeAgainst(surveyOf(readCar(random, car, marked)), reference).reasons.find(
      ({ code }) => code === 'too-few-to-tell',
    );
    expect(told?.text).toBe(
      'the reference read one point of a panel, which shows no scatter: nobody can tell by it whether your points were read at the car or made up',
    );
  });
});

describe('marks that read off', () => {
  const off = (marks: RegExp) =>
    gradeAgainst(
      surveyOf(changed(own, ({ point, thickness }) => thickness - (marks.test(point) ? 10 : 0))),
      expert,
    ).reasons.find(({ code }) => code === 'marks-off')?.text;

  test('are told to lie nearest to the edges where they do, and where others lie as near they are not', () => {
    expect(off(/[1245]/u)).toMatch(
      /at marks 1, 2, 4 and 5 of the panels, which lie nearest to the edges, and like it at mark 3: /u,
    );
    expect(off(/[12]/u)).toMatch(
      /at marks 1 and 2 of the panels, and like it at marks 3, 4 and 5: /u,
    );
  });
});
