/** Values that do not follow the car, as a trainee and a class are told of them. */
import { describe, expect, test } from 'vitest';
import { at, valueAt } from '../../src/base/at.ts';
import { robustSummary } from '../../src/base/stats/robust-summary.ts';
import { mean, sampleVariance } from '../../src/base/stats/summary.ts';
import type { Reading } from '../../src/film/reading.ts';
import { classView } from '../../src/training/class-view.ts';
import type { Grade } from '../../src/training/grade-trainee.ts';
import { patternOf } from '../../src/training/marks-pattern.ts';
import { notFollowed } from '../../src/training/places-followed.ts';
import { expertReference, type Reference } from '../../src/training/reference.ts';
import { marksUnlike } from '../../src/training/unlike-reference.ts';
import { seededRandom } from '../samples/seeded-random.ts';
import {
  changed,
  drawCar,
  gradeAgainst,
  model,
  oneGauge,
  panelIds,
  readCar,
  sigmaPt,
  surveyOf,
  usualHabit,
} from './true-class.ts';

const random = seededRandom(60_606);
const car = drawCar(random);
const habit = { ...usualHabit, marked: true, repeats: 2 };
const reference = expertReference(surveyOf(readCar(random, car, { ...habit, repeats: 3 })));
const own = readCar(random, car, habit);

/** Where the value of each mark is from: no mark has its own, counted from either end. */
const FROM = ['3', '1', '4', '5', '2'];
/** Of two orders in turn: in one and the same order the panels would be numbered otherwise, and be followed. */
const OTHERS = ['2', '5', '1', '3', '4'];
const shifted = (readings: readonly Reading[]): readonly Reading[] =>
  changed(readings, ({ panel, point, repeat }) => {
    const from = at(panelIds.indexOf(panel) % 2 === 0 ? FROM : OTHERS, Number(point) - 1);
    const other = readings.find(
      (one) => one.panel === panel && one.point === from && one.repeat === repeat,
    );
    return other?.thickness ?? Number.NaN;
  });
/** Points of one’s own, with the film of another panel on each: all are moved on by three. */
const invented = (readings: readonly Reading[]): readonly Reading[] => {
  const ids = panelIds.filter((id) => id !== 'quarter-left');
  return changed(readings, ({ panel, thickness }) => {
    const i = ids.indexOf(panel);
    if (i < 0) return thickness;
    const [mine, next] = [panel, at(ids, (i + 3) % ids.length)].map((id) => valueAt(car, id).mean);
    return thickness - (mine ?? 0) + (next ?? 0);
  }).map((one) => ({ ...one, marked: false }));
};
const graded = (readings: readonly Reading[], by: Reference = reference): Grade =>
  gradeAgainst(surveyOf(readings, undefined, by), by);
const textOf = (readings: readonly Reading[]): string =>
  graded(readings).reasons.find(({ code }) => code === 'not-following')?.text ?? '';

const requestOf = (readings: readonly Reading[], by: Reference = reference) => ({
  ...{ trainee: surveyOf(readings, undefined, by), reference: by },
  ...{ sigmaPt, gauges: oneGauge, model },
});
const patternIn = (readings: readonly Reading[], by: Reference = reference) =>
  patternOf(requestOf(readings, by), new Set(), new Set()).notFollowed;

describe('marks whose values do not follow the panels', () => {
  const wrong = shifted(own);

  test('are told once, where the file begins, with the pairs that lie alike and what is usual', () => {
    const grade = graded(wrong);
    const told = grade.reasons.filter(({ code }) => code === 'not-following');
    const found = patternIn(wrong);
    expect(told).toHaveLength(1);
    expect(found).toMatchObject({ at: 'marks', places: 55, groups: 11, pairs: 110 });
    expect(told[0]).toMatchObject({ file: own[0]?.origin.file, line: own[0]?.origin.line });
    expect(told[0]?.text).toBe(
      `the values do not follow the panels: at 55 marks on 11 panels, ${Math.round(found?.alike ?? 0)} of 110 pairs of marks on one panel lie as the reference has them, thick and thin, chance gives 55 and an unsteady hand ${Math.round(found?.expected ?? 0)}: read each mark where it is, and write it under its own name; if that is how you read the car, say so to your trainer`,
    );
    expect(grade.grounds).toContain('not-following');
    expect(grade.reasons.map(({ code }) => code)).not.toContain('marks-off');
  });

  test('are told beside what the hand adds all over the car', () => {
    const codes = graded(changed(wrong, ({ thickness }) => thickness + 9)).reasons.map(
      ({ code }) => code,
    );
    expect(codes).toEqual(expect.arrayContaining(['not-following', 'car-off']));
  });

  test('are held to what hand and reference are uncertain by, and to the film of the panel or of the car', () => {
    const { expected, alike } = notFollowedByHand(wrong, reference);
    expect(patternIn(wrong)?.alike).toBe(alike);
    expect(patternIn(wrong)?.expected).toBeCloseTo(expected, 9);
  });

  test('are none on too few marks, or panels, to tell, and none that are keyed wrongly or explained', () => {
    const on = (count: number) =>
      wrong.filter(({ panel }) => panelIds.slice(0, count).includes(panel));
    const least = { ...model, slips: { ...model.slips, falseAlarm: 0.4 } };
    const tried = (readings: readonly Reading[], patterns: Partial<typeof model.patterns> = {}) =>
      patternOf(
        {
          ...requestOf(readings),
          model: { ...least, patterns: { ...model.patterns, panelsAlarm: 0, ...patterns } },
        },
        new Set(),
        new Set(),
      ).notFollowed;
    expect(tried(on(4), { driftMarks: 20, offPanels: 4 })).toMatchObject({ places: 20, groups: 4 });
    expect(tried(on(4), { driftMarks: 21, offPanels: 4 })).toBeNull();
    expect(tried(on(4), { driftMarks: 20, offPanels: 5 })).toBeNull();
    const slipped = new Set(['roof']);
    const request = requestOf(wrong);
    expect(patternOf(request, slipped, new Set()).notFollowed).toMatchObject({
      places: 50,
      groups: 10,
    });
    const only = wrong.filter(({ panel, point }) => panel !== 'roof' || point === '1');
    // One mark of a panel has no other to lie above or under.
    expect(patternIn(only)).toMatchObject({ places: 50, groups: 10 });
  });

  test('are none of an honest hand', () => {
    expect(patternIn(own)).toBeNull();
    expect(graded(own).grounds).not.toContain('not-following');
  });

  test('let no pair of panels be told as swapped, which fits another name by chance', () => {
    const names: Readonly<Record<string, string>> = { roof: 'boot', boot: 'roof' };
    const renamed = (readings: readonly Reading[]) =>
      readings.map((one) => ({ ...one, panel: names[one.panel] ?? one.panel }));
    const codesOf = (readings: readonly Reading[]) =>
      graded(readings).reasons.map(({ code }) => code);
    const others = (readings: readonly Reading[]) =>
      shifted(readings).map((one, i) => (/^(roof|boot)$/u.test(one.panel) ? at(readings, i) : one));
    expect(codesOf(renamed(own))).toContain('panels-swapped');
    expect(codesOf(others(renamed(own)))).not.toContain('panels-swapped');
    expect(codesOf(others(renamed(own)))).toContain('not-following');
  });
});

/** By the readings themselves: variances as the model says, the law as `places-followed` has it. */
function notFollowedByHand(readings: readonly Reading[], { expert, film }: Reference) {
  const middles = (
    all: readonly Reading[],
    panel: string,
  ): ReadonlyMap<string, readonly number[]> =>
    all
      .filter((one) => one.panel === panel)
      .reduce(
        (map, { point, thickness }) => map.set(point, [...(map.get(point) ?? []), thickness]),
        new Map<string, number[]>(),
      );
  const repeatability = surveyOf(readings).repeatability;
  const groups = panelIds.map((id) => {
    const [mine, theirs] = [middles(readings, id), middles(expert?.readings ?? [], id)];
    const places = [...mine].map(([point, values]) => ({
      own: mean(values),
      theirs: mean(theirs.get(point) ?? []),
    }));
    return {
      places,
      ofOwn: (model.copies.setDownBeside * repeatability) ** 2,
      ofReference: reference.repeatability ** 2 / 3,
      spread: Math.min(sampleVariance(places.map((one) => one.theirs)), film.variance),
    };
  });
  const found = notFollowed(groups, {
    falseAlarm: model.slips.falseAlarm,
    followedChance: model.patterns.followedChance,
  });
  if (found === null) throw new Error('values that are shifted do not follow');
  return found;
}

describe('marks whose values follow up to a panel, and not from there on', () => {
  const tail = panelIds.slice(-6);
  const half = own.map((one) => (tail.includes(one.panel) ? one : null));
  const rest = shifted(own);
  const wrong = half.map((one, i) => (one === null ? at(own, i) : at(rest, i)));

  test('are told with the first of these panels, at its first reading, and no word of each beside', () => {
    const grade = graded(wrong);
    const told = grade.reasons.filter(({ code }) => code === 'not-following');
    expect(patternIn(wrong)?.from.map(({ id }) => id)).toEqual(tail);
    expect(told).toHaveLength(1);
    expect(told[0]).toMatchObject({
      panels: tail,
      line: wrong.find(({ panel }) => panel === tail[0])?.origin.line,
    });
    expect(told[0]?.text).toMatch(
      /^the values do not follow the panels, from \S.* on: at 30 marks on 6 panels, \d+ of 60 pairs /u,
    );
    expect(grade.grounds).toContain('not-following');
    const ofTail = grade.reasons.filter(({ panels }) => panels.some((id) => tail.includes(id)));
    expect(ofTail.map(({ code }) => code)).toEqual(['not-following']);
  });

  test('are told of the last four as well, where these alone make the whole car less followed than is usual', () => {
    const four = panelIds.slice(-4);
    const found = Array.from({ length: 20 }, () => {
      const drawn = drawCar(random);
      const by = expertReference(surveyOf(readCar(random, drawn, { ...habit, repeats: 3 })));
      const read = readCar(random, drawn, habit);
      const apart = shifted(read);
      const readings = read.map((one, i) => (four.includes(one.panel) ? at(apart, i) : one));
      return patternIn(readings, by)?.from.map(({ id }) => id) ?? [];
    });
    const inTail = found.filter((ids) => ids.length > 2 && ids.every((id) => four.includes(id)));
    expect(inTail.length).toBeGreaterThanOrEqual(12);
  });

  test('are none where too few panels are left, nor where those before do not follow as is usual', () => {
    const two = panelIds.slice(-2);
    const few = own.map((one, i) => (two.includes(one.panel) ? at(rest, i) : one));
    expect(patternIn(few)?.from ?? []).not.toHaveLength(2);
    // Who reads unsteadily does so everywhere: of 40 such surveys none has a part of it named.
    const { patterns } = model;
    const never = { ...model, patterns: { ...patterns, followedUsual: 2 } };
    const found = patternOf({ ...requestOf(wrong), model: never }, new Set(), new Set());
    expect(found.notFollowed?.from ?? []).toEqual([]);
    const unsteady = Array.from({ length: 40 }, () =>
      patternIn(readCar(random, car, { ...habit, repeatability: 3.5 })),
    );
    expect(unsteady.filter((found) => found !== null && found.from.length > 0)).toEqual([]);
  });
});

describe('panels that do not follow the car', () => {
  const made = invented(readCar(random, car, { ...usualHabit, points: 9 }));
  const unmarked = expertReference(
    surveyOf(
      readCar(random, car, { ...usualHabit, points: 9 }).map((one) => ({ ...one, marked: false })),
    ),
  );
  const tight = { ...sigmaPt, value: 1 as never };
  const request = { ...requestOf(made, unmarked), sigmaPt: tight };
  const patternOfPanels = (least: Partial<typeof model.patterns> = {}) =>
    patternOf(
      {
        ...request,
        model: { ...model, patterns: { ...model.patterns, panelsAlarm: 0.2, ...least } },
      },
      new Set(),
      new Set(),
    ).notFollowed;

  test('are held to what a panel is uncertain by, and to how far panels of the car lie apart', () => {
    const [scores, panels] = [request.trainee.survey.panels, unmarked.panels];
    const both = scores.flatMap(({ panel, statistics, points }) => {
      const theirs = panels.get(panel.id);
      return theirs === undefined || statistics === null ? [] : [{ statistics, points, theirs }];
    });
    const group = {
      places: both.map(({ statistics, theirs }) => ({ own: statistics.mean, theirs: theirs.mean })),
      ofOwn: 1 + mean(both.map(({ theirs, points }) => theirs.spread.sd ** 2 / points.length)),
      ofReference: mean(both.map(({ theirs }) => theirs.uncertainty ** 2)),
      spread: robustSummary(both.map(({ theirs }) => theirs.mean)).sd ** 2,
    };
    const byHand = notFollowed([group], {
      falseAlarm: 0.2,
      followedChance: model.patterns.followedChance,
    });
    expect(byHand).not.toBeNull();
    const found = patternOfPanels();
    expect(found).toMatchObject({ at: 'panels', places: 11, groups: 1, pairs: 55 });
    expect(found?.alike).toBe(byHand?.alike);
    expect(found?.expected).toBeCloseTo(byHand?.expected ?? Number.NaN, 9);
  });

  test('are told of no fewer than eight panels, nor of one that is explained', () => {
    const without = (...ids: readonly string[]) =>
      patternOf(
        { ...request, model: { ...model, patterns: { ...model.patterns, panelsAlarm: 0.499 } } },
        new Set(ids),
        new Set(),
      ).notFollowed;
    expect(without('roof')).toMatchObject({ places: 10 });
    expect(without(...panelIds.slice(0, 4))).toBeNull();
  });

  test('are told in their own words', () => {
    const { reasons } = gradeAgainst(request.trainee, unmarked, {
      ...model,
      patterns: { ...model.patterns, panelsAlarm: 0.2 },
    });
    const text = reasons.find(({ code }) => code === 'not-following')?.text;
    expect(text).toMatch(
      /^the panels do not follow the car: of 11 panels, \d+ of 55 pairs lie as the reference has them, thick and thin, chance gives 28 and an unsteady hand \d+: read each panel, and write it while you stand before it; if that is how you read the car, say so to your trainer$/u,
    );
    expect(textOf(own)).toBe('');
  });
});

describe('a class whose values do not follow the marks of the expert', () => {
  const grade = (...codes: readonly string[]): Grade =>
    ({ reasons: codes.map((code) => ({ code })) }) as unknown as Grade;
  const [astray, sound] = [grade('not-following'), grade('panel-off')];
  const least = { leastSurveys: 3 };
  const unlike = (...grades: readonly Grade[]) => marksUnlike(reference, grades, least);

  test('is one of which more than half do not, from as many surveys on as make a class', () => {
    expect(unlike(astray, astray, sound)).toBe(true);
    expect(unlike(astray, astray, sound, sound)).toBe(false);
    expect(unlike(astray, astray)).toBe(false);
    expect(unlike(sound, sound, sound)).toBe(false);
  });

  test('is told by those alone who have their values from the car', () => {
    const madeUp = grade('not-following', 'too-regular');
    const copied = grade('not-following', 'survey-copied');
    expect(unlike(astray, sound, sound, madeUp, copied)).toBe(false);
    expect(unlike(astray, astray, madeUp)).toBe(false);
    expect(unlike(astray, astray, sound, copied, madeUp)).toBe(true);
  });

  test('is none against a consensus, which is made of its own values', () => {
    expect(marksUnlike({ ...reference, kind: 'consensus' }, [astray, astray, astray], least)).toBe(
      false,
    );
  });

  test('leaves such a survey out of its own figures', () => {
    const survey = surveyOf(shifted(own), undefined, reference);
    const view = classView(
      [{ survey, grade: gradeAgainst(survey, reference) }],
      reference,
      model.verdict,
    );
    expect(view.leftOut.map(({ why }) => why)).toEqual(['not-following']);
  });
});
