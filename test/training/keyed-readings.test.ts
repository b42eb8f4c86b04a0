/** Readings by a factor of the reference, told apart by hand: in the survey as a whole, and on its panels. */
import { describe, expect, test } from 'vitest';
import type { GradedSurvey } from '../../src/training/graded-survey.ts';
import { keyedLeftOut } from '../../src/training/keyed-left-out.ts';
import { keyingFactors } from '../../src/training/keying-factors.ts';
import { expertReference } from '../../src/training/reference.ts';
import { model, readingAt, surveyOf } from './true-class.ts';

const PANELS = ['bonnet', 'roof', 'boot'];
/** Four points of each of three panels. */
const read = (um: (panel: string, point: number) => number): GradedSurvey =>
  surveyOf(
    PANELS.flatMap((panel, i) =>
      [1, 2, 3, 4].map((point) =>
        readingAt(panel, `${point}`, 1, um(panel, point), { line: 4 * i + point + 1 }),
      ),
    ),
  );
const reference = expertReference(read((_, point) => 110 + point));
const keyed = (survey: GradedSurvey) => keyingFactors(survey, reference, model.slips);

describe('a survey in mil', () => {
  /** But for the fourth point of the boot. */
  const but = (um: number) =>
    read((panel, point) => (panel === 'boot' && point === 4 ? um : (110 + point) / 25.4));

  test('has a low spot in mil as well, though it is like no part of its panel', () => {
    // 60 µm: a factor of 1.9 under the film, and so in no likeness of it.
    const { allPoints, points } = keyed(but(60 / 25.4));
    expect(allPoints.has('boot 4')).toBe(true);
    expect(allPoints.size).toBe(12);
    expect(points.size).toBe(0);
  });

  test('has none in a value that lies nearer to the film as it is', () => {
    expect([...keyed(but(60)).allPoints]).not.toContain('boot 4');
    expect([...keyed(but(300)).allPoints]).not.toContain('boot 4');
    expect(keyed(but(60)).allPoints.size).toBe(11);
    // The film is 112.5 µm at its middle: √25.4 under it, 22.3 µm, is as far from both.
    expect(keyed(but(22.2)).allPoints.has('boot 4')).toBe(true);
    expect(keyed(but(22.4)).allPoints.has('boot 4')).toBe(false);
  });
});

describe('what lies near to another survey for a slip alone', () => {
  const slipped = read((panel, point) => (110 + point) * (panel === 'roof' ? 10 : 1));

  test('is left out by its panel, with all of its readings, and nothing else is', () => {
    const left = keyedLeftOut(slipped, reference, model.slips);
    const ids = left.survey.panels.map(({ panel }) => panel.id);
    expect(ids).not.toContain('roof');
    expect(ids).toHaveLength(slipped.survey.panels.length - 1);
    expect(left.readings).toEqual(slipped.readings.filter(({ panel }) => panel !== 'roof'));
    expect(left.readings).toHaveLength(8);
    expect(left.repeatability).toBe(slipped.repeatability);
  });
});
