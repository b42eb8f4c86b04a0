import { describe, expect, test } from 'vitest';
import { robustSummary } from '../../src/base/stats/robust-summary.ts';
import { classView, sigmaOfClass } from '../../src/training/class-view.ts';
import { copiedSurveys } from '../../src/training/copied-surveys.ts';
import { reason } from '../../src/training/reasons.ts';
import {
  consensusReference,
  expertReference,
  type Reference,
} from '../../src/training/reference.ts';
import { seededRandom } from '../samples/seeded-random.ts';
import {
  changed,
  drawCar,
  gradeAgainst,
  type Habit,
  model,
  readCar,
  surveyOf,
  usualHabit,
} from './true-class.ts';

const marked: Habit = { ...usualHabit, marked: true, repeats: 2 };
const random = seededRandom(77);
const car = drawCar(random);
const reference = expertReference(surveyOf(readCar(random, car, marked)));
const readings = Array.from({ length: 6 }, (_, k) =>
  readCar(random, car, { ...marked, bias: k === 5 ? 4 : 0 }),
);
const surveys = readings.map((one) => surveyOf(one));
const graded = (against: Reference, some = surveys) =>
  some.map((survey) => ({ survey, grade: gradeAgainst(survey, against) }));

describe('a class', () => {
  test('has its gauge R&R at the marks that all read twice', () => {
    const { gaugeRr } = classView(graded(reference), reference, model.verdict);
    expect(gaugeRr).toMatchObject({
      parts: 'marked points',
      counts: { parts: 55, trainees: 6, trials: 2 },
    });
    // Drawn with a repeatability of 1.5 µm, and one trainee of six 4 µm over the others.
    expect(Math.abs((gaugeRr?.result.sd.ev ?? 0) - 1.5)).toBeLessThan(0.15);
    expect(Math.abs((gaugeRr?.result.sd.av ?? 0) - 4 / Math.sqrt(6))).toBeLessThan(0.5);
  });

  test('has it at two marks that all read twice, and by panels where that is one', () => {
    const twiceAt = (...marks: readonly string[]) => {
      const some = readings.map((one) =>
        surveyOf(
          one.filter(
            ({ panel, point, repeat }) => repeat === 1 || marks.includes(`${panel} ${point}`),
          ),
        ),
      );
      return classView(graded(reference, some), reference, model.verdict).gaugeRr;
    };
    expect(twiceAt('roof 1', 'boot 2')).toMatchObject({
      parts: 'marked points',
      counts: { parts: 2, trainees: 6, trials: 2 },
    });
    expect(twiceAt('roof 1')?.parts).toBe('panels');
  });

  test('has it by panels where points are one’s own, and none where only one survey is sound', () => {
    const own = readings.map((one) => surveyOf(one.map((row) => ({ ...row, marked: false }))));
    const { gaugeRr } = classView(graded(reference, own), reference, model.verdict);
    expect(gaugeRr).toMatchObject({ parts: 'panels', counts: { parts: 11, trials: 5 } });
    expect(
      classView(graded(reference, surveys.slice(0, 1)), reference, model.verdict).gaugeRr,
    ).toBeNull();
  });

  test('leaves surveys that were made up, or are too like another’s, out of the gauge and of the panels, and says so', () => {
    const roof = (readings[1] ?? []).filter(({ panel }) => panel === 'roof');
    const madeUp = surveyOf(
      changed(readings[0] ?? [], ({ panel, thickness }, i) =>
        /^(bonnet|boot|door)/.test(panel)
          ? (roof[i % roof.length]?.thickness ?? thickness)
          : thickness,
      ),
    );
    const all = [madeUp, ...surveys.slice(1)];
    const some = graded(reference, all).map((one, k) =>
      k === 1 || k === 2
        ? {
            ...one,
            grade: {
              ...one.grade,
              reasons: [...one.grade.reasons, reason('survey-copied', 'too alike')],
            },
          }
        : one,
    );
    const view = classView(some, reference, model.verdict);
    expect(view.leftOut).toEqual([
      { survey: all[0], why: 'made-up' },
      { survey: all[1], why: 'copied' },
      { survey: all[2], why: 'copied' },
    ]);
    expect(view.gaugeRr?.counts.trainees).toBe(3);
    expect(view.panels.every(({ count }) => count === 3)).toBe(true);
  });

  test('leaves a survey with slips out of what it says of panels and of the gauge', () => {
    const slipped = surveyOf(changed(readings[0] ?? [], ({ thickness }) => thickness / 25.4));
    const view = classView(
      graded(reference, [slipped, ...surveys.slice(1)]),
      reference,
      model.verdict,
    );
    expect(view.gaugeRr?.counts.trainees).toBe(5);
    expect(view.panels.every(({ count }) => count === 5)).toBe(true);
  });

  test('names who is left out of them, and why', () => {
    const slipped = surveyOf(changed(readings[0] ?? [], ({ thickness }) => thickness / 25.4));
    const few = surveyOf((readings[1] ?? []).filter(({ panel }) => panel.startsWith('wing')));
    const { leftOut } = classView(
      graded(reference, [slipped, few, ...surveys.slice(2)]),
      reference,
      model.verdict,
    );
    expect(leftOut.map(({ survey, why }) => [survey === slipped, survey === few, why])).toEqual([
      [true, false, 'slip'],
      [false, true, 'half-unread'],
    ]);
  });

  test('has its gauge R&R without who would leave few marks for all, and names them', () => {
    const most = surveyOf((readings[0] ?? []).filter(({ panel }) => !/^(boot|roof)/.test(panel)));
    const once = surveyOf((readings[1] ?? []).filter(({ repeat }) => repeat === 1));
    const middles = surveyOf((readings[2] ?? []).filter(({ point }) => point === '3'));
    const view = classView(
      graded(reference, [most, once, middles, ...surveys.slice(3)]),
      reference,
      model.verdict,
    );
    // 4 trainees at 45 marks are more than 3 at 55; 5 have none in common.
    expect(view.gaugeRr?.counts).toEqual({ parts: 45, trainees: 4, trials: 2 });
    expect(view.leftOut).toEqual([
      { survey: once, why: 'few-marks' },
      { survey: middles, why: 'half-unread' },
    ]);
    // Two marks of each of 11 panels, of five: 5 trainees at 22 are fewer than 4 at 45.
    const two = surveyOf((readings[1] ?? []).filter(({ point }) => Number(point) < 3));
    const other = classView(
      graded(reference, [most, two, ...surveys.slice(3)]),
      reference,
      model.verdict,
    );
    expect(other.gaugeRr?.counts).toMatchObject({ parts: 45, trainees: 4 });
    expect(other.leftOut).toEqual([{ survey: two, why: 'few-marks' }]);
  });

  test('counts the conditions of all surveys together, those with slips among them', () => {
    const slipped = surveyOf(changed(readings[0] ?? [], ({ thickness }) => thickness * 2));
    const all = graded(reference, [slipped, ...surveys.slice(1)]);
    const { conditions } = classView(all, reference, model.verdict);
    const own = all.flatMap(({ grade }) => grade.conditions ?? []);
    const sumOf = (of: (one: (typeof own)[number]) => number): number =>
      own.reduce((sum, one) => sum + of(one), 0);
    expect(conditions).toMatchObject({
      alike: sumOf(({ alike }) => alike),
      of: sumOf(({ of }) => of),
    });
    expect(conditions?.otherwise.length).toBeGreaterThan(0);
  });

  test('of slipped surveys alone says nothing of panels or the gauge', () => {
    const slipped = surveys.map((_, k) =>
      surveyOf(changed(readings[k] ?? [], ({ thickness }) => thickness / 25.4)),
    );
    const view = classView(graded(reference, slipped), reference, model.verdict);
    expect(view.gaugeRr).toBeNull();
    expect(view.panels.map(({ satisfactory }) => satisfactory)).toEqual(Array(11).fill(null));
  });

  test('tells of all low spots and repairs that were found with an exact interval, and of none without one', () => {
    const found = classView(graded(reference), reference, model.verdict);
    expect([found.repairs.found, found.repairs.of]).toEqual([6, 6]);
    // Six of six, by Clopper and Pearson: (α/2)^(1/6) to 1.
    expect(found.repairs.interval?.[0]).toBeCloseTo(0.025 ** (1 / 6), 9);
    expect(found.repairs.interval?.[1]).toBe(1);
    const plain = readCar(random, car, marked).filter(
      ({ panel }) => panel !== 'quarter-left' && panel !== 'wing-front-right',
    );
    const nothing = expertReference(surveyOf(plain));
    expect(classView(graded(nothing), nothing, model.verdict).repairs).toEqual({
      found: 0,
      of: 0,
      interval: null,
    });
  });

  test('counts a panel by those who read it', () => {
    const part = surveyOf((readings[0] ?? []).filter(({ panel }) => panel !== 'roof'));
    const view = classView(
      graded(reference, [part, ...surveys.slice(1)]),
      reference,
      model.verdict,
    );
    const count = (id: string) => view.panels.find((one) => one.reference.panel.id === id)?.count;
    expect([count('roof'), count('boot')]).toEqual([5, 6]);
  });

  test('says of each panel how many read it satisfactorily, and how the class scatters', () => {
    const { panels, conditions } = classView(graded(reference), reference, model.verdict);
    const roof = panels.find((one) => one.reference.panel.id === 'roof');
    const means = surveys.map(
      ({ survey }) => survey.panels.find(({ panel }) => panel.id === 'roof')?.statistics?.mean ?? 0,
    );
    expect(roof?.robust).toEqual(robustSummary(means));
    expect(roof).toMatchObject({ count: 6, satisfactory: 1 });
    expect((conditions?.alike ?? 0) / (conditions?.of ?? 1)).toBeGreaterThan(0.9);
  });

  test('has the share of each panel by the scores of that panel alone', () => {
    const off = surveyOf(
      changed(readings[0] ?? [], ({ panel, thickness }) => thickness + (panel === 'roof' ? 30 : 0)),
    );
    const { panels } = classView(
      graded(reference, [off, ...surveys.slice(1)]),
      reference,
      model.verdict,
    );
    const share = (id: string) => panels.find((one) => one.reference.panel.id === id)?.satisfactory;
    expect(share('roof')).toBe(5 / 6);
    expect(share('boot')).toBe(1);
  });

  test('keeps a survey that read just half of the panels, and scatters from two surveys on', () => {
    const ten = expertReference(
      surveyOf(readCar(random, car, marked).filter(({ panel }) => panel !== 'roof')),
    );
    const read = [...ten.panels.keys()];
    const some = (count: number) =>
      surveyOf((readings[0] ?? []).filter(({ panel }) => read.slice(0, count).includes(panel)));
    const view = (count: number) =>
      classView(graded(ten, [some(count), ...surveys.slice(1, 2)]), ten, model.verdict);
    expect(view(5).leftOut).toEqual([]);
    expect(view(4).leftOut).toHaveLength(1);
    const first = view(5).panels.find(({ reference: { panel } }) => panel.id === read[0]);
    expect(first?.count).toBe(2);
    expect(first?.robust).not.toBeNull();
  });

  test('has its gauge R&R at the parts alone that every survey read twice', () => {
    const once = surveyOf(
      (readings[0] ?? []).filter(({ panel, repeat }) => panel !== 'roof' || repeat === 1),
    );
    const { gaugeRr } = classView(
      graded(reference, [once, ...surveys.slice(1)]),
      reference,
      model.verdict,
    );
    expect(gaugeRr?.counts).toEqual({ parts: 50, trainees: 6, trials: 2 });
  });

  test('of surveys that read no panel of the reference has no words to agree on', () => {
    const of = (panel: string) =>
      surveyOf((readings[0] ?? []).filter((one) => one.panel === panel));
    const roof = expertReference(of('roof'));
    expect(
      classView(graded(roof, [of('boot'), of('bonnet')]), roof, model.verdict).conditions,
    ).toBeNull();
  });

  test('gives a σ of its own: the mean of the robust deviations over the panels', () => {
    const sigma = sigmaOfClass(surveys, reference, model.class);
    expect(sigma?.from).toBe('class');
    expect(sigma?.value).toBeGreaterThan(0.3);
    expect(sigma?.value).toBeLessThan(4);
    expect(sigmaOfClass(surveys.slice(0, 2), reference, model.class)).toBeUndefined();
  });
});

describe('a class that is its own reference', () => {
  const consensus = consensusReference(surveys, model.class);

  test('has the robust mean of each panel, known to 1.25·s*/√p', () => {
    const means = surveys.map(
      ({ survey }) => survey.panels.find(({ panel }) => panel.id === 'roof')?.statistics?.mean ?? 0,
    );
    const { mean, sd } = robustSummary(means);
    const roof = consensus.panels.get('roof');
    expect(roof?.mean).toBe(mean);
    expect(roof?.uncertainty).toBeCloseTo((1.25 * sd) / Math.sqrt(6), 12);
    expect(consensus.panels.get('quarter-left')).toMatchObject({
      repaired: true,
      condition: 'refinished',
    });
  });

  test('finds honest surveys satisfactory, and hardly moves for one that is far off', () => {
    expect(graded(consensus).map(({ grade }) => grade.verdict)).toEqual(
      Array.from({ length: 6 }, () => 'satisfactory'),
    );
    const far = surveyOf(changed(readings[0] ?? [], ({ thickness }) => thickness + 60));
    const moved = consensusReference([far, ...surveys.slice(1)], model.class);
    const [before, after] = [consensus, moved].map((one) => one.panels.get('roof')?.mean ?? 0);
    expect(Math.abs((after ?? 0) - (before ?? 0))).toBeLessThan(2);
    expect(gradeAgainst(far, moved).verdict).toBe('unsatisfactory');
  });

  test('says nothing of panels that too few read', () => {
    const few = surveys.map((survey, k) =>
      k < 2 ? survey : surveyOf((readings[k] ?? []).filter(({ panel }) => panel !== 'roof')),
    );
    expect(consensusReference(few, model.class).panels.has('roof')).toBe(false);
  });
});

test('surveys that read few points in common are not called copies', () => {
  const few = readings.map((one) => surveyOf(one.slice(0, 8)));
  expect(
    copiedSurveys(
      [few[0], few[0]].flatMap((one) => one ?? []),
      model,
    ),
  ).toEqual([]);
});
