import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Reading } from '../../src/film/reading.ts';
import { gradeTrainee } from '../../src/training/grade-trainee.ts';
import { expertReference } from '../../src/training/reference.ts';
import { evenly } from '../evenly.ts';
import { inFull } from '../in-full.ts';
import { normal, seededRandom } from '../samples/seeded-random.ts';
import {
  changed,
  drawCar,
  gradeAgainst,
  type Habit,
  marking,
  model,
  panelIds,
  readCar,
  sigmaPt,
  surveyOf,
  template,
  usualHabit,
} from './true-class.ts';

const habit: Habit = { ...usualHabit, marked: true, repeats: 2 };
const drawn = (seed: number) => {
  const random = seededRandom(seed);
  const car = drawCar(random);
  const readings = readCar(random, car, habit, 'reference.csv');
  const reference = expertReference(surveyOf(readings));
  const own = readCar(random, car, habit);
  return {
    random,
    car,
    readings,
    reference,
    own,
    grade: (some: readonly Reading[]) => gradeAgainst(surveyOf(some), reference),
  };
};
const codes = (grade: ReturnType<typeof gradeAgainst>): readonly string[] =>
  grade.reasons.map(({ code }) => code);

describe('laws of grading', () => {
  test('a verdict has grounds exactly where it is not satisfactory', () => {
    const verdicts = new Set<string>();
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1_000_000 }),
        evenly(-14, 14),
        fc.integer({ min: 2, max: 11 }),
        (seed, bias, panels) => {
          const { own, grade } = drawn(seed);
          const read = panelIds.slice(0, panels);
          const { verdict, grounds } = grade(
            changed(own, ({ thickness }) => thickness + bias).filter(({ panel }) =>
              read.includes(panel),
            ),
          );
          verdicts.add(verdict);
          expect(grounds.length > 0).toBe(verdict !== 'satisfactory');
        },
      ),
      { numRuns: 60 },
    );
    if (inFull) expect(verdicts.size).toBe(3);
  });

  test('panels that a slip explains are named where limits of agreement leave them out', () => {
    const { own, grade } = drawn(7);
    const slipped = grade(changed(own, (one) => (one.panel === 'roof' ? 10 : 1) * one.thickness));
    expect(slipped.slipped.map(({ id }) => id)).toEqual(['roof']);
    expect(slipped.agreement?.count).toBe(slipped.scores.length - 1);
  });

  test('more panels off by a slip than not leave no limits of agreement', () => {
    const { own, grade } = drawn(7);
    const half = panelIds.slice(0, 6);
    const slipped = grade(
      changed(own, (one) => (half.includes(one.panel) ? 10 : 1) * one.thickness),
    );
    expect(slipped.slipped).toHaveLength(6);
    expect(slipped.agreement).toBeNull();
  });

  test('a reference graded against itself is satisfactory, with full coverage and all found', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1_000_000 }), (seed) => {
        const { readings, grade } = drawn(seed);
        const found = grade(readings);
        expect(found.verdict).toBe('satisfactory');
        expect(found.coverage.share).toBe(1);
        // The hand of an expert may be unsteady too: that is judged by itself.
        const judged = found.mark.criteria.filter(({ criterion }) => criterion !== 'repeatability');
        expect(judged.every(({ share }) => share === 1 || share === null)).toBe(true);
        expect(found.scores.every(({ z }) => z === 0)).toBe(true);
        expect(found.conditions?.otherwise).toEqual([]);
      }),
      { numRuns: 25 },
    );
  });

  test('the order of the rows changes no score, no mark and no verdict', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1_000_000 }), (seed) => {
        const { own, grade, random } = drawn(seed);
        const panels = [...new Set(own.map(({ panel }) => panel))].sort(() => random() - 0.5);
        const shuffled = panels.flatMap((panel) => own.filter((one) => one.panel === panel));
        const [one, other] = [grade(own), grade(shuffled)];
        expect(other.verdict).toBe(one.verdict);
        expect(other.mark.share).toBeCloseTo(one.mark.share, 12);
        one.scores.forEach(({ z }, i) => {
          expect(other.scores[i]?.z).toBeCloseTo(z, 9);
        });
      }),
      { numRuns: 25 },
    );
  });

  test('reading a panel farther off never raises the mark', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1_000_000 }),
        fc.constantFrom(...panelIds.filter((id) => id !== 'quarter-left')),
        evenly(0, 40),
        (seed, panel, by) => {
          const { own, grade, reference } = drawn(seed);
          const off = (more: number): number => {
            const score = grade(
              changed(own, (one) => (one.panel === panel ? one.thickness + more : one.thickness)),
            ).scores.find((one) => one.panel.id === panel);
            return Math.abs(score?.z ?? 0);
          };
          const start = reference.panels.get(panel)?.mean ?? 0;
          const up =
            (grade(own).scores.find((one) => one.panel.id === panel)?.difference ?? 0) >= 0;
          expect(start).toBeGreaterThan(0);
          expect(off(up ? by : -by)).toBeGreaterThanOrEqual(off(0) - 1e-9);
        },
      ),
      { numRuns: 25 },
    );
  });
});

describe('no one fails on one panel alone', () => {
  const { own, grade } = drawn(11);
  const spoiled = (...panels: readonly string[]): readonly Reading[] =>
    changed(own, ({ panel, thickness }) => (panels.includes(panel) ? thickness + 25 : thickness));

  test('an honest survey is satisfactory', () => {
    expect(grade(own)).toMatchObject({ verdict: 'satisfactory' });
  });
  test('one panel off is questionable, two are unsatisfactory, each with its reason and line', () => {
    const one = grade(spoiled('roof'));
    expect(one.verdict).toBe('questionable');
    const [reason] = one.reasons.filter(({ code }) => code === 'panel-off');
    expect(reason?.text).toMatch(
      /^roof: [\d.]+ µm, the reference [\d.]+ µm \(z [\d.]+\): read it again/,
    );
    expect(own[(reason?.line ?? 0) - 2]?.panel).toBe('roof');
    expect(grade(spoiled('roof', 'bonnet')).verdict).toBe('unsatisfactory');
  });
  test('a mark under the pass mark fails nobody whose only fault is one panel', () => {
    const small = readCarOf(['roof']);
    const found = gradeAgainst(
      surveyOf(
        changed(small, ({ panel, thickness }) => (panel === 'roof' ? thickness + 30 : thickness)),
      ),
      expertReference(surveyOf(small)),
    );
    expect(found.mark.share).toBeLessThan(0.7);
    expect(found.verdict).toBe('questionable');
  });
});

const readCarOf = (panels: readonly string[]): readonly Reading[] =>
  drawn(12).own.filter(({ panel }) => panels.includes(panel));

describe('what a survey falls short in is told', () => {
  const { own, grade, reference, random } = drawn(21);

  test('panels that were not read, and points that are too few', () => {
    const some = own.filter(({ panel, point }) => panel !== 'roof' && point !== '5');
    const found = grade(some);
    expect(found.coverage).toMatchObject({
      panelsRead: 10,
      panels: 11,
      pointsRead: 40,
      points: 55,
    });
    expect(codes(found)).toEqual(expect.arrayContaining(['panels-unread', 'few-points']));
    expect(found.mark.criteria.find(({ criterion }) => criterion === 'coverage')?.share).toBe(
      40 / 55,
    );
  });

  test('one panel left out is satisfactory, two are questionable, however good the rest', () => {
    const without = (...panels: readonly string[]) =>
      grade(own.filter(({ panel }) => !panels.includes(panel))).verdict;
    expect(without('roof')).toBe('satisfactory');
    expect(without('roof', 'boot')).toBe('questionable');
    const two = expertReference(surveyOf(readCarOf(['bonnet', 'roof'])));
    expect(gradeAgainst(surveyOf(readCarOf(['roof'])), two).verdict).toBe('questionable');
  });

  test('a low spot at a mark is found by its point, and missed takes marks', () => {
    const found = grade(own);
    expect(found.lowSpots).toMatchObject({ of: 1, found: 1, missed: [] });
    const [low, high] = found.lowSpots.interval ?? [0, 0];
    // One of one, by Clopper and Pearson: α/2 to 1.
    expect([low, high]).toEqual([expect.closeTo(0.025, 9), 1]);
    const filled = grade(
      changed(own, ({ panel, point, thickness }) =>
        panel === 'wing-front-right' && point === '4' ? thickness + 32 : thickness,
      ),
    );
    expect(filled.lowSpots).toMatchObject({ found: 0, blamed: 1 });
    expect(filled.mark.share).toBeLessThan(found.mark.share);
  });

  test('a low spot missed with points of one’s own is told and takes no marks', () => {
    const unmarked = own
      .filter(({ panel, point }) => !(panel === 'wing-front-right' && point === '4'))
      .map((one) => ({ ...one, marked: false }));
    const found = grade(unmarked);
    expect(codes(found)).toContain('low-spot-missed');
    expect(found.lowSpots).toMatchObject({ found: 0, blamed: 0 });
    expect(
      found.mark.criteria.find(({ criterion }) => criterion === 'lowPoints')?.share,
    ).toBeNull();
  });

  test('a repair that is not seen, and one that is not there', () => {
    const wrong = grade(
      changed(own, ({ panel, thickness }) => {
        if (panel === 'quarter-left') return 112 + 4 * normal(random);
        return panel === 'roof' ? thickness + 150 : thickness;
      }),
    );
    expect(codes(wrong)).toEqual(expect.arrayContaining(['repair-missed', 'repair-invented']));
    expect(wrong.repairs).toMatchObject({ of: 1, found: 0 });
  });

  test('repeats that are far apart, and that nothing was repeated', () => {
    const shaky = grade(changed(own, ({ thickness }) => thickness + 4 * normal(random)));
    expect(codes(shaky)).toContain('repeats-apart');
    expect(
      shaky.mark.criteria.find(({ criterion }) => criterion === 'repeatability')?.share,
    ).toBeLessThan(1);
    const once = grade(own.filter(({ repeat }) => repeat === 1));
    expect(codes(once)).toContain('not-repeated');
    expect(once.repeatability).toBeNull();
  });

  test('a hand that reads the whole car too thick, once and not on each panel', () => {
    const found = grade(changed(own, ({ thickness }) => thickness + 8));
    expect(codes(found)).toContain('car-off');
    expect(codes(found)).not.toContain('panel-doubtful');
    expect(found.bias?.mean).toBeCloseTo(8, 0);
    expect(found.verdict).toBe('questionable');
    expect(grade(changed(own, ({ thickness }) => thickness + 10)).verdict).toBe('unsatisfactory');
  });

  test('a panel that the reference does not have is told and not scored', () => {
    const without = expertReference(
      surveyOf(drawn(21).readings.filter(({ panel }) => panel !== 'roof')),
    );
    const found = gradeAgainst(surveyOf(own), without);
    expect(codes(found)).toContain('panel-extra');
    expect(found.scores.map(({ panel }) => panel.id)).not.toContain('roof');
  });

  test('a slip of the decimal mark is told once, with its line, and is no unsteady hand', () => {
    const at = own.findIndex(({ panel }) => panel === 'roof');
    const found = grade(
      changed(own, ({ thickness }, i) => (i === at ? 10 * thickness : thickness)),
    );
    expect(codes(found).filter((code) => code !== 'not-repeated')).toEqual(['decimal-slip']);
    expect(found.reasons[0]?.line).toBe(own[at]?.origin.line);
    expect(found.repeatability?.sd).toBeLessThan(2);
    expect(found.verdict).toBe('questionable');
  });

  test('a whole survey in the other unit is told once, and no panel by itself', () => {
    const found = grade(changed(own, ({ thickness }) => thickness / 25.4));
    expect(codes(found)).toContain('unit-slip');
    expect(codes(found)).not.toContain('panel-off');
    expect(found.verdict).toBe('unsatisfactory');
  });

  test('a decimal mark off in the whole survey is told once as well', () => {
    const found = grade(changed(own, ({ thickness }) => 10 * thickness));
    expect(codes(found).filter((code) => code === 'decimal-slip')).toHaveLength(1);
    expect(found.reasons[0]?.text).toMatch(/^\d+ readings are ten times the reference, such as/);
    expect(codes(found)).not.toContain('panel-off');
  });

  test('a reference with one point a panel falls back on the spread that the survey assumes', () => {
    const bare = expertReference(
      surveyOf(drawn(21).readings.filter(({ point, repeat }) => point === '1' && repeat === 1)),
    );
    expect(bare.film).toMatchObject({ dof: 6 });
    expect(bare.film.variance).toBeGreaterThan(15);
  });

  test('the car’s bias counts the calibration of both gauges, where they are two', () => {
    const trainee = surveyOf(changed(own, ({ thickness }) => thickness + 8));
    const of = (same: boolean) =>
      gradeTrainee({
        trainee,
        reference,
        sigmaPt,
        gauges: { same, stated: false },
        marking,
        model,
      }).bias?.z ?? 0;
    expect(of(false)).toBeLessThan(0.8 * of(true));
  });

  test('filler that the reference has as well is no slip', () => {
    const filled = (some: readonly Reading[]): readonly Reading[] =>
      changed(some, ({ panel, point, thickness }) =>
        panel === 'roof' && point === '2' ? 1120 : thickness,
      );
    const thick = expertReference(surveyOf(filled(drawn(21).readings)));
    expect(codes(gradeAgainst(surveyOf(filled(own)), thick))).not.toContain('decimal-slip');
    expect(thick.panels.get('roof')?.repaired).toBe(true);
  });

  test('limits of agreement hold the differences of the panels, and need three of them', () => {
    const found = grade(own);
    const differences = found.scores.map(({ difference }) => difference);
    expect(found.agreement?.count).toBe(template.panels.length);
    expect(found.agreement?.mean).toBeCloseTo(
      differences.reduce((sum, one) => sum + one, 0) / differences.length,
      10,
    );
    const two = grade(own.filter(({ panel }) => panel === 'roof' || panel === 'bonnet'));
    expect([two.agreement, two.bias]).toEqual([null, null]);
  });

  test('nothing read of the reference is a mark of nothing', () => {
    const nothing = gradeAgainst(surveyOf([]), reference);
    expect(nothing).toMatchObject({ verdict: 'unsatisfactory', scores: [], conditions: null });
    expect(nothing.mark.share).toBe(0);
  });
});
