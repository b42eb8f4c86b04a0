import { describe, expect, test } from 'vitest';
import { gaugeRr } from '../../src/base/stats/gauge-rr.ts';
import type { Reading } from '../../src/film/reading.ts';
import { type ClassGaugeRr, gaugeRrOfClass } from '../../src/training/class-gauge-rr.ts';
import type { GradedSurvey } from '../../src/training/graded-survey.ts';
import { expertReference } from '../../src/training/reference.ts';
import { readingAt, surveyOf } from './true-class.ts';

/** The repeats at one marked point, or the points of one's own on a panel. */
const mark = (panel: string, point: string, ...ums: readonly number[]): readonly Reading[] =>
  ums.map((um, r) => readingAt(panel, point, r + 1, um, { marked: true }));
const own = (panel: string, ...ums: readonly number[]): readonly Reading[] =>
  ums.map((um, k) => readingAt(panel, `${k + 1}`, 1, um));
const survey = (...readings: readonly (readonly Reading[])[]): GradedSurvey =>
  surveyOf(readings.flat());

const expert = expertReference(
  survey(own('bonnet', 110, 112), own('roof', 114, 116), own('boot', 109, 108)),
);
const of = (...surveys: readonly GradedSurvey[]): ClassGaugeRr | null =>
  gaugeRrOfClass(surveys, expert);

const ann = survey(mark('bonnet', '1', 110, 112), mark('roof', '1', 120, 121, 125));
const ben = survey(mark('bonnet', '1', 113, 112), mark('roof', '1', 119, 123, 90));

describe('how far a class agrees', () => {
  test('is told of the parts that all read, as often as everybody read every one of them', () => {
    const found = of(ann, ben);
    expect(found?.parts).toBe('marked points');
    expect(found?.counts).toEqual({ parts: 2, trainees: 2, trials: 2 });
    // The third repeat of the roof is left out: the bonnet was read twice.
    expect(found?.result).toEqual(
      gaugeRr([
        [
          [110, 112],
          [113, 112],
        ],
        [
          [120, 121],
          [119, 123],
        ],
      ]),
    );
    expect(found?.without).toEqual([]);
  });

  test('is nothing of one trainee, however many parts there are', () => {
    expect(of(ann)).toBeNull();
    expect(of()).toBeNull();
  });

  test('is nothing of one part, nor of parts that somebody read once', () => {
    const once = survey(mark('bonnet', '1', 110, 112), mark('roof', '1', 120));
    expect(of(ann, once)?.parts).not.toBe('marked points');
    expect(of(once, once)).toBeNull();
  });

  test('names nobody by panels, whose points differ for everybody', () => {
    const steady = survey(own('bonnet', 110, 111), own('roof', 114, 115), own('boot', 109, 110));
    const wild = survey(own('bonnet', 100, 130), own('roof', 104, 134), own('boot', 99, 129));
    const found = of(steady, steady, wild);
    expect(found?.parts).toBe('panels');
    expect(found?.most).toBeNull();
  });

  test('leaves out who read few parts, so that others may be told of more', () => {
    const many = (shift: number) =>
      survey(
        ...['bonnet', 'roof', 'boot', 'quarter-left'].map((panel) =>
          mark(panel, '1', 110 + shift, 111),
        ),
      );
    const few = survey(mark('bonnet', '1', 110, 112));
    const two = survey(mark('bonnet', '1', 110, 112), mark('roof', '1', 114, 112));
    // Two of four parts are a larger table than three of two.
    expect(of(few, many(0), two, many(1))).toMatchObject({
      counts: { parts: 4, trainees: 2, trials: 2 },
      without: [few, two],
    });
    // Of three with two parts and two with three, either 6, the more trainees.
    const three = (shift: number) =>
      survey(
        ...['bonnet', 'roof', 'boot'].map((panel) => mark(panel, '1', 110 + shift, 111 + shift)),
      );
    expect(of(two, three(0), three(2))).toMatchObject({
      counts: { parts: 2, trainees: 3 },
      without: [],
    });
  });
});

describe('one who names the marks otherwise', () => {
  const marksOf = (names: readonly string[], shift: number): GradedSurvey =>
    survey(...names.map((name, k) => mark('bonnet', name, 110 + k + shift, 111 + k)));
  const class_ = [
    marksOf(['1', '2', '3'], 0),
    marksOf(['A', 'B', 'C', 'D'], 1),
    marksOf(['1', '2', '3'], 2),
    marksOf(['3', '1', '2'], 3),
  ];

  test('is left out alone, wherever in the class', () => {
    for (const surveys of [class_, class_.toReversed()]) {
      expect(of(...surveys)).toMatchObject({
        counts: { parts: 3, trainees: 3, trials: 2 },
        without: [class_[1]],
      });
    }
  });

  test('leaves the class to its panels where nobody else is left', () => {
    const others = [marksOf(['1', '2'], 0), marksOf(['A', 'B'], 1), marksOf(['a', 'b'], 2)];
    expect(of(...others)?.parts).not.toBe('marked points');
  });

  test('leaves out who misses the most, where each misses parts of its own', () => {
    const names = ['1', '2', '3', '4', '5', '6'];
    const missing = (...some: readonly string[]): GradedSurvey =>
      marksOf(
        names.filter((name) => !some.includes(name)),
        0,
      );
    const [first, second, third] = [missing('1'), missing('2'), missing('3', '4', '5')];
    // Both have four in common; all three of them one.
    expect(of(third, first, second)).toMatchObject({
      counts: { parts: 4, trainees: 2 },
      without: [third],
    });
  });
});

describe('without marks', () => {
  test('it is told by the panels of the reference, each point of one’s own a trial', () => {
    const one = survey(
      own('bonnet', 110, 112),
      own('roof', 115, 117),
      own('wing-front-left', 90, 91),
    );
    const other = survey(
      own('bonnet', 111, 115),
      own('roof', 118, 112),
      own('wing-front-left', 99, 92),
    );
    const found = of(one, other);
    expect(found?.parts).toBe('panels');
    // The expert read no wing.
    expect(found?.counts).toEqual({ parts: 2, trainees: 2, trials: 2 });
    expect(found?.result).toEqual(
      gaugeRr([
        [
          [110, 112],
          [111, 115],
        ],
        [
          [115, 117],
          [118, 112],
        ],
      ]),
    );
  });

  test('a panel with one point is no part: nobody knows how it varies', () => {
    const one = survey(own('bonnet', 110, 112), own('roof', 115, 117), own('boot', 108));
    const other = survey(own('bonnet', 111, 115), own('roof', 118, 112), own('boot', 108, 109));
    expect(of(one, other)?.counts.parts).toBe(2);
  });
});
