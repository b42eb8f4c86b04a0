/** Blunders and faults one at a time, on a class that is drawn once: what is told, and where. */
import { describe, expect, test } from 'vitest';
import { algorithmA } from '../../src/base/stats/algorithm-a.ts';
import { micrometres } from '../../src/base/units.ts';
import type { Reading } from '../../src/film/reading.ts';
import { copiedSurveys } from '../../src/training/copied-surveys.ts';
import { followedSurveys } from '../../src/training/followed-surveys.ts';
import { gradeTrainee } from '../../src/training/grade-trainee.ts';
import { consensusReference, expertReference } from '../../src/training/reference.ts';
import { leastPointSd } from '../../src/training/steady-hand.ts';
import { normal, seededRandom } from '../samples/seeded-random.ts';
import {
  changed,
  drawCar,
  gradeAgainst,
  type Habit,
  marking,
  model,
  readCar,
  rounded,
  sigmaPt,
  surveyOf,
  usualHabit,
} from './true-class.ts';

const random = seededRandom(3_117);
const car = drawCar(random);
const coarse: Habit = { ...usualHabit, step: 1 };
const marked: Habit = { ...usualHabit, marked: true };
const expert = expertReference(surveyOf(readCar(random, car, { ...marked, repeats: 3 })));
const own = readCar(random, car, coarse);
const atMarks = readCar(random, car, marked);

const told = (readings: readonly Reading[], reference = expert) =>
  gradeAgainst(surveyOf(readings), reference).reasons;
const textOf = (readings: readonly Reading[], code: string): string =>
  told(readings).find((one) => one.code === code)?.text ?? '';
const on = (panels: RegExp, change: (value: number, k: number) => number) => {
  const places = new Map<string, number>();
  return changed(own, ({ panel, thickness }) => {
    if (!panels.test(panel)) return thickness;
    const k = places.get(panel) ?? 0;
    places.set(panel, k + 1);
    return change(thickness, k);
  });
};

describe('a slip of the pen', () => {
  test('is told with its unit and what it did', () => {
    const roof = (change: (value: number) => number) => on(/^roof$/, change);
    expect(
      textOf(
        roof((value) => rounded(value / 25.4, 0.01)),
        'unit-slip',
      ),
    ).toMatch(
      /^roof: point 1 reads .* \(and 4 more on this panel\), 1\/25\.4 of the reference: mil and µm mixed up/u,
    );
    expect(
      textOf(
        roof((value) => value / 1000),
        'unit-slip',
      ),
    ).toContain('mm and µm mixed up');
    expect(
      textOf(
        roof((value) => value / 25_400),
        'unit-slip',
      ),
    ).toContain('inch and µm mixed up');
    expect(
      textOf(
        roof((value) => value * 100),
        'decimal-slip',
      ),
    ).toContain('a hundred times');
    const one = on(/^roof$/, (value, k) => (k === 2 ? value * 10 : value));
    expect(textOf(one, 'decimal-slip')).toMatch(/^roof: point 3 reads \d+ µm, ten times/u);
  });

  test('of the whole survey is one word, and nothing is called made up', () => {
    const inMil = changed(own, ({ thickness }) => rounded(thickness / 25.4, 0.1));
    const reasons = told(inMil);
    expect(reasons.map(({ code }) => code)).not.toContain('too-regular');
    expect(reasons.map(({ code }) => code)).not.toContain('panel-off');
    expect(reasons[0]?.text).toMatch(/^55 readings are 1\/25\.4 of the reference/u);
    expect([reasons[0]?.file, reasons[0]?.line]).toEqual([
      inMil[0]?.origin.file,
      inMil[0]?.origin.line,
    ]);
    // From two thirds of the readings on: 10 of 15.
    const three = own.filter(({ panel }) => /^(bonnet|roof|boot)$/.test(panel));
    const ofUnit = (panels: RegExp) =>
      told(
        changed(three, ({ panel, thickness }) =>
          panels.test(panel) ? rounded(thickness / 25.4, 0.1) : thickness,
        ),
      ).flatMap(({ code, panels: about }) => (code === 'unit-slip' ? [about] : []));
    expect(ofUnit(/^(bonnet|roof)$/)).toEqual([[]]);
    expect(ofUnit(/^roof$/)).toEqual([['roof']]);
  });

  test('of the whole survey is one of its low spot as well', () => {
    const inMm = changed(atMarks, ({ thickness }) => thickness / 1000);
    const spot = changed(inMm, ({ panel, point, thickness }) =>
      panel === 'roof' && point === '1' ? thickness / 2 : thickness,
    );
    const grade = gradeAgainst(surveyOf(spot), expert);
    expect(grade.reasons.map(({ code }) => code)).toEqual(['unit-slip', 'not-repeated']);
    expect(grade.reasons[0]?.text).toMatch(/^55 readings are a thousandth of the reference/u);
    expect(grade.mark.criteria.find(({ criterion }) => criterion === 'coverage')?.share).toBe(0);
  });

  test('is left out of the limits of agreement', () => {
    const slipped = changed(atMarks, ({ thickness }, i) => (i === 2 ? 10 * thickness : thickness));
    const clean = gradeAgainst(surveyOf(atMarks), expert).agreement;
    const found = gradeAgainst(surveyOf(slipped), expert).agreement;
    expect(found?.count).toBe(10);
    expect(found?.sd).toBeLessThan(2 * (clean?.sd ?? 0));
  });
});

describe('sides', () => {
  const swap = (of: RegExp, readings: readonly Reading[]) =>
    readings.map((one) => {
      const { panel } = one;
      if (!of.test(panel)) return one;
      const side = panel.endsWith('-left') ? '-right' : '-left';
      return { ...one, panel: panel.replace(/-(left|right)$/, side) };
    });

  test('swapped all over the car are told once, at the first panel that shows it', () => {
    const reasons = told(swap(/-(left|right)$/, atMarks)).filter(
      ({ code }) => code === 'sides-swapped',
    );
    expect(reasons).toHaveLength(1);
    expect(reasons[0]?.text).toContain('all over the car');
    expect(reasons[0]?.panels).toHaveLength(8);
  });

  test('swapped on two doors whose means are alike show at their marks', () => {
    const reasons = told(swap(/^door-front/, atMarks)).filter(
      ({ code }) => code === 'sides-swapped',
    );
    expect(reasons.map(({ panels }) => [...panels].sort())).toEqual([
      ['door-front-left', 'door-front-right'],
    ]);
    expect(told(swap(/^door-front/, own)).map(({ code }) => code)).not.toContain('sides-swapped');
  });

  test('say nothing of panels that the reference does not have', () => {
    const part = expertReference(
      surveyOf(readCar(random, car, marked).filter(({ panel }) => panel !== 'door-front-left')),
    );
    expect(told(swap(/^door-front/, atMarks), part).map(({ code }) => code)).not.toContain(
      'sides-swapped',
    );
  });
});

describe('values that nobody read', () => {
  test('alike at all points are named with their panels', () => {
    const flat = on(/^(roof|boot|bonnet)$/, () => 118);
    expect(textOf(flat, 'values-alike')).toMatch(/^bonnet, .*: all points read the same/u);
    expect(told(flat).map(({ code }) => code)).not.toContain('too-regular');
    // The others are looked at for themselves.
    const others = changed(flat, ({ panel, thickness }, i) =>
      /^(door|wing|quarter-right)/.test(panel) ? 112 + 0.1 * (i % 7) : thickness,
    );
    expect(textOf(others, 'too-regular')).not.toContain('roof');
    expect(told(others).map(({ code }) => code)).toContain('values-alike');
    expect(told(others).map(({ code }) => code)).toContain('too-regular');
  });

  test('repeated from another panel are named with both', () => {
    const values = own.filter(({ panel }) => panel === 'roof').map(({ thickness }) => thickness);
    const copied = on(/^boot$/, (_, k) => values[k] ?? 0);
    expect(textOf(copied, 'values-repeated')).toMatch(
      /(roof|boot lid) and (roof|boot lid): the same/u,
    );
  });

  test('that only rise are counted over the panels', () => {
    const rising = on(/./, (_, k) => 110 + 2 * k);
    // Panels that the reference has in order, as near as repeats tell, are not counted.
    const mayBe = [...expert.panels.values()].filter(({ inOrder }) => inOrder.count === 1).length;
    expect(mayBe).toBeGreaterThan(0);
    expect(textOf(rising, 'values-in-order')).toContain(
      `on ${11 - mayBe} of ${11 - mayBe} panels the values only rise`,
    );
  });

  test('that are too regular on all panels are told of the survey, on some by their names', () => {
    // Each panel at a level of its own: those of another panel again are told as that.
    const about = (of: RegExp) =>
      changed(own, ({ panel, point, thickness }) => {
        const k = Number(point) - 1;
        const level = 113 + 0.5 * own.findIndex((one) => one.panel === panel);
        return of.test(panel) ? level + (k % 2 === 0 ? 0.4 : -0.3) - 0.1 * k : thickness;
      });
    expect(textOf(about(/./), 'too-regular')).toContain('on a panel differ by');
    expect(textOf(about(/^(door|wing-front-left)/), 'too-regular')).toMatch(
      // Of .4, −.4, .2, −.6 and .0 over the level the SD is √(.688/4).
      /on 5 of the 9 panels that have even film by the reference \(.*front left wing.*\) differ by 0\.41 µm \(SD\)/u,
    );
    const others = seededRandom(3_118);
    const readers = [1, 2, 3].map(() => surveyOf(readCar(others, car, usualHabit)));
    const some = about(/^(door|wing-front-left)/);
    expect(
      told(some, consensusReference(readers, model.class)).map(({ text }) => text),
    ).toContainEqual(expect.stringContaining('even film by the class'));
  });

  test('are no matter where the reference has no even film to hold them against', () => {
    const repaired = changed(atMarks, ({ thickness }) => thickness + 200);
    const reference = expertReference(surveyOf(repaired));
    expect(told(repaired, reference).map(({ code }) => code)).not.toContain('too-regular');
  });
});

describe('a survey as a whole', () => {
  test('that reads less all over the car is told so, with the nearer end of what it may be first', () => {
    const text = textOf(readCar(random, car, { ...marked, bias: -12 }), 'car-off');
    const [, near, far] =
      /reads .* less than the reference .* \(([\d.]+) to ([\d.]+) µm\)/u.exec(text) ?? [];
    expect(Number(near)).toBeLessThan(Number(far));
    expect(Number(near)).toBeGreaterThan(8);
  });

  test('of a rubric that weighs only what nothing was read for comes to nothing', () => {
    const { mark } = gradeTrainee({
      trainee: surveyOf(own),
      reference: expert,
      sigmaPt,
      gauges: { same: true, stated: false },
      marking: {
        ...marking,
        weights: { accuracy: 0, coverage: 0, lowPoints: 0, repairs: 0, repeatability: 1 },
      },
      model,
    });
    expect(mark.share).toBe(0);
  });

  test('has no zeta score where nothing is uncertain on either side', () => {
    const certain = { ...surveyOf(atMarks), repeatability: micrometres(0) };
    const { scores } = gradeAgainst(certain, expertReference(certain));
    expect(scores.map(({ zeta }) => zeta)).toEqual(Array(11).fill(null));
  });

  test('with a gauge of its own is allowed for by the panels that the reference has as well', () => {
    const part = expertReference(
      surveyOf(readCar(random, car, marked).filter(({ panel }) => panel !== 'roof')),
    );
    const grade = gradeTrainee({
      trainee: surveyOf(atMarks),
      reference: part,
      sigmaPt,
      gauges: { same: false, stated: false },
      marking,
      model,
    });
    expect(Math.abs(grade.bias?.z ?? 9)).toBeLessThan(1);
  });

  test('misses a low spot without a word of it where the panel itself is told as keyed wrongly', () => {
    const spoiled = changed(atMarks, ({ panel, point, thickness }) =>
      panel !== 'wing-front-right' ? thickness : point === '4' ? thickness + 32 : thickness / 25.4,
    );
    const codes = told(spoiled).map(({ code }) => code);
    expect(codes).toContain('unit-slip');
    expect(codes).not.toContain('low-spot-missed');
  });
});

describe('the consensus', () => {
  test('has the condition that most surveys say, whoever comes first', () => {
    const painted = changed(own, ({ panel, thickness }) =>
      panel === 'roof' ? thickness + 200 : thickness,
    );
    const reference = consensusReference(
      [own, painted, painted].map((one) => surveyOf(one)),
      model.class,
    );
    expect(reference.panels.get('roof')).toMatchObject({ condition: 'refinished', repaired: true });
  });
});

test('the consensus has no repair that most surveys do not see', () => {
  const painted = changed(own, ({ panel, thickness }) =>
    panel === 'roof' ? thickness + 200 : thickness,
  );
  const reference = consensusReference(
    [painted, own, own].map((one) => surveyOf(one)),
    model.class,
  );
  expect(reference.panels.get('roof')?.repaired).toBe(false);
  expect(reference.panels.get('quarter-left')?.repaired).toBe(true);
});

describe('too few points to tell by their scatter', () => {
  const codesOn = (panels: RegExp, points: number, change = (value: number) => value) =>
    told(
      changed(
        atMarks.filter(({ panel, point }) => panels.test(panel) && Number(point) <= points),
        ({ thickness }) => change(thickness),
      ),
    ).map(({ code }) => code);

  test('are told, of three panels and of panels at one or two points', () => {
    expect(codesOn(/^(bonnet|roof|boot)$/, 3)).toContain('too-few-to-tell');
    expect(codesOn(/./, 2)).toContain('too-few-to-tell');
    expect(codesOn(/^(bonnet|roof|boot)$/, 5)).toContain('too-few-to-tell');
    expect(codesOn(/^(bonnet|roof|boot|door.*)$/, 5)).not.toContain('too-few-to-tell');
    expect(codesOn(/./, 5)).not.toContain('too-few-to-tell');
  });

  test('are of panels of even film: a repaired one tells nothing by its scatter', () => {
    expect(codesOn(/^quarter-left$/, 5)).toContain('too-few-to-tell');
  });

  test('make no verdict, and are no matter where something was proved', () => {
    const few = atMarks.filter(
      ({ panel, point }) => /^(bonnet|roof|boot)$/.test(panel) && Number(point) <= 3,
    );
    const part = expertReference(
      surveyOf(
        readCar(random, car, marked).filter(({ panel }) => /^(bonnet|roof|boot)$/.test(panel)),
      ),
    );
    const { verdict, grounds } = gradeAgainst(surveyOf(few), part);
    expect([verdict, grounds]).toEqual(['satisfactory', []]);
    const inMil = (value: number) => rounded(value / 25.4, 0.01);
    expect(codesOn(/^(bonnet|roof|boot)$/, 3, inMil)).not.toContain('too-few-to-tell');
    const [reason] = told(few).filter(({ code }) => code === 'too-few-to-tell');
    expect(reason?.text).toBe(
      '9 points are too few to tell by their scatter whether they were read at the car or made up: read more panels, at more points',
    );
    expect(reason?.line).toBe(few[0]?.origin.line);
  });
});

describe('surveys of one class', () => {
  const class_ = Array.from({ length: 5 }, () => readCar(random, car, coarse));
  const first = class_[0] ?? [];
  const copy = changed(first, ({ thickness }, i) => (i % 6 === 0 ? thickness + 2 : thickness));
  const nearly = changed(first, ({ thickness }) => rounded(thickness + normal(random), 0.1));

  test('that hold the same values are told with how many', () => {
    const surveys = [...class_, copy].map((one) => surveyOf(one));
    expect(copiedSurveys(surveys, model)).toEqual([{ surveys: [0, 5], same: 45, of: 55 }]);
    expect(copiedSurveys(surveys.slice(0, 5), model)).toEqual([]);
  });

  test('that lie nearer to each other than the class does are told with how near', () => {
    const surveys = [...class_, nearly].map((one) => surveyOf(one));
    const [pair, ...others] = followedSurveys(surveys, model);
    expect(others).toEqual([]);
    expect(pair?.surveys).toEqual([surveys[0], surveys[5]]);
    expect(pair?.of).toBe(55);
    expect(pair?.apart).toBeLessThan(1.5);
    expect(pair?.usual).toBeGreaterThan(4);
    expect(pair?.same).toBe(
      nearly.filter(({ thickness }, i) => thickness === first[i]?.thickness).length,
    );
    expect(pair?.same).toBeLessThan(10);
  });

  test('are usually as far apart as the two of them are from the others', () => {
    const surveys = [...class_, nearly].map((one) => surveyOf(one));
    const [pair] = followedSurveys(surveys, model);
    /** V of two of the class: of the differences at their 55 points, which are in one order. */
    const spread = (a: number, b: number): number => {
      const [one, other] = [a, b].map((k) => [...class_, nearly][k] ?? []);
      const apart = (one ?? []).map(({ thickness }, i) => thickness - (other?.[i]?.thickness ?? 0));
      // Less the line of a drift, through the medians of the first 18 and the last 18, 37 apart.
      const slope = (middleOf(apart.slice(-18)) - middleOf(apart.slice(0, 18))) / 37;
      return algorithmA(apart.map((value, x) => value - slope * x)).sd ** 2;
    };
    const others = [1, 2, 3, 4];
    const middleOf = (values: readonly number[]): number => {
      const sorted = [...values].sort((a, b) => a - b);
      const half = (sorted.length - 1) / 2;
      return ((sorted[Math.floor(half)] ?? 0) + (sorted[Math.ceil(half)] ?? 0)) / 2;
    };
    const broughtBy = (one: number): number =>
      middleOf(
        others.flatMap((k) =>
          others
            .filter((l) => l > k)
            .map((l) => (spread(one, k) + spread(one, l) - spread(k, l)) / 2),
        ),
      );
    const middle = middleOf(others.flatMap((k) => [spread(0, k), spread(5, k)]));
    expect((pair?.usual ?? 0) ** 2).toBeCloseTo(Math.min(broughtBy(0) + broughtBy(5), middle), 9);
  });

  test('are not told for panels that one or both left out and the others scatter on', () => {
    const left = /^(roof|boot|bonnet|quarter)/;
    const scatter = [0, 400, 150, 700, 250];
    const scattered = class_.map((one, k) =>
      changed(one, ({ panel, thickness }) =>
        left.test(panel) ? thickness + (scatter[k] ?? 0) * ((thickness % 3) - 1) : thickness,
      ),
    );
    const [a = [], b = []] = [0, 1].map(() => readCar(random, car, coarse));
    const part = (one: readonly Reading[]) => one.filter(({ panel }) => !left.test(panel));
    const pairs = (...two: readonly (readonly Reading[])[]) =>
      followedSurveys(
        [...two, ...scattered].map((one) => surveyOf(one)),
        model,
      ).length;
    expect(pairs(part(a), part(b))).toBe(0);
    expect(pairs(part(a), b)).toBe(0);
    // Nor where two others do follow each other: those are told, and no more.
    const [one = []] = scattered;
    const copy = changed(one, ({ thickness }) => rounded(thickness + 0.5 * normal(random), 0.1));
    const surveys = [part(a), part(b), ...scattered, copy].map((each) => surveyOf(each));
    const found = followedSurveys(surveys, model).map((pair) =>
      pair.surveys.map((each) => surveys.indexOf(each)),
    );
    expect(found).toEqual([[2, 7]]);
  });

  test('prove a copy by ten points in common, and nothing by nine', () => {
    // Shown to a tenth of a micrometre, so that the same figure is no chance.
    const some = readCar(random, car, usualHabit).filter(
      ({ panel }) => panel === 'roof' || panel === 'boot',
    );
    const copied = (points: readonly Reading[]) =>
      copiedSurveys(
        [some, points].map((one) => surveyOf(one)),
        model,
      );
    expect(copied(some)).toEqual([{ surveys: [0, 1], same: 10, of: 10 }]);
    expect(copied(some.slice(1))).toEqual([]);
  });

  test('too few, or with too few points in common, say nothing of that', () => {
    const of = (...all: readonly (readonly Reading[])[]) =>
      followedSurveys(
        all.map((one) => surveyOf(one)),
        model,
      );
    expect(of(first, nearly, class_[1] ?? [])).toEqual([]);
    const few = class_.slice(1).map((one) => one.filter(({ panel }) => panel === 'roof'));
    expect(of(first, nearly, ...few)).toEqual([]);
    const roofs = [first, nearly, ...class_.slice(1)].map((one) =>
      one.filter(({ panel }) => panel === 'roof'),
    );
    expect(
      copiedSurveys(
        roofs.map((one) => surveyOf(one)),
        model,
      ),
    ).toEqual([]);
  });

  test('where the others share no points among themselves are held to what a steady hand repeats to', () => {
    const nine = (): readonly Reading[] => readCar(random, car, { ...usualHabit, points: 9 });
    const one = nine();
    const parts = [/^(bonnet|wing|roof)/, /^door/, /^(quarter|boot)/].map((of) =>
      nine().filter(({ panel }) => of.test(panel)),
    );
    const pairsWith = (other: readonly Reading[]) =>
      followedSurveys(
        [one, other, ...parts].map((readings) => surveyOf(readings)),
        model,
      ).length;
    expect(
      pairsWith(changed(one, ({ thickness }) => rounded(thickness + normal(random), 0.1))),
    ).toBe(0);
    expect(
      pairsWith(changed(one, ({ thickness }, i) => (i === 0 ? thickness + 3 : thickness))),
    ).toBe(1);
  });

  test('are known to repeat as well as their own repeats say, and no worse than is usual', () => {
    const repeated = (sd: number) =>
      surveyOf(readCar(random, car, { ...usualHabit, repeats: 3, repeatability: sd }));
    const usual = surveyOf(first).repeatability;
    expect(leastPointSd(repeated(0.4), model.copies)).toBeLessThan(0.3);
    expect(leastPointSd(repeated(6), model.copies)).toBeCloseTo(usual / Math.sqrt(3), 6);
    expect(leastPointSd(surveyOf(first), model.copies)).toBeCloseTo(usual / 3, 6);
  });
});

describe('two panels under each other’s names', () => {
  const swapped = (one: string, other: string, readings: readonly Reading[]) =>
    readings.map((reading) => ({
      ...reading,
      panel: { [one]: other, [other]: one }[reading.panel] ?? reading.panel,
    }));
  const of = (readings: readonly Reading[]) =>
    told(readings).filter(({ code }) => code === 'panels-swapped');

  test('are named with both, and neither is told to be read again', () => {
    const [reason, ...others] = of(swapped('quarter-left', 'boot', own));
    expect(others).toEqual([]);
    expect(reason?.text).toMatch(
      /^(boot lid and left quarter|left quarter and boot lid) seem swapped: /u,
    );
    const codes = told(swapped('quarter-left', 'boot', own)).map(({ code }) => code);
    expect(codes).not.toContain('panel-off');
    expect(codes).not.toContain('repair-missed');
    expect(codes).not.toContain('repair-invented');
  });

  test('at marks are told by how film goes up and down, where their means are alike', () => {
    const found = of(swapped('wing-front-right', 'roof', atMarks));
    expect(found.map(({ panels }) => [...panels].sort())).toEqual([['roof', 'wing-front-right']]);
  });

  test('of a wing and two doors, each under the name of the next, are told as three at their marks', () => {
    const names = ['wing-front-right', 'door-front-right', 'door-rear-right'];
    const moved = atMarks.map((one) => {
      const place = names.indexOf(one.panel);
      return place < 0 ? one : { ...one, panel: names[(place + 1) % 3] ?? one.panel };
    });
    const [one, ...others] = of(moved);
    expect(others).toEqual([]);
    expect([...(one?.panels ?? [])].sort()).toEqual([...names].sort());
    expect(one?.text).toContain('what stands under rear right door with that of front right door');
    expect(told(moved).map(({ code }) => code)).not.toContain('panel-off');
  });

  test('are told as sides where they are the left and the right', () => {
    expect(of(swapped('quarter-left', 'quarter-right', own))).toEqual([]);
  });

  test('are none where one of them was read wrongly, or a low spot was filled up', () => {
    const off = changed(atMarks, ({ panel, thickness }) =>
      panel === 'roof' ? thickness + 25 : thickness,
    );
    expect(of(off)).toEqual([]);
    const filled = changed(atMarks, ({ panel, point, thickness }) =>
      panel === 'wing-front-right' && point === '4' ? thickness + 32 : thickness,
    );
    expect(of(filled)).toEqual([]);
  });
});

describe('readings by two steps of the display', () => {
  const halfWhole = (whole: (index: number) => boolean, readings: readonly Reading[]) =>
    changed(readings, ({ thickness }, i) => rounded(thickness, whole(i) ? 1 : 0.1));
  const steps = (readings: readonly Reading[]): string => textOf(readings, 'step-changes');
  const fine = readCar(random, car, usualHabit);

  test('are told with how many lack the last figure', () => {
    const text = steps(halfWhole((i) => i >= 40, fine));
    expect(text).toMatch(/^\d\d of \d\d readings stand without the last figure that the others/u);
  });

  test('are told of three panels, half of which were made up in whole micrometres', () => {
    const few = fine.filter(({ panel }) => /^(bonnet|roof|boot)$/.test(panel));
    expect(steps(few)).toBe('');
    expect(steps(halfWhole((i) => i >= 7, few))).not.toBe('');
  });

  test('are no matter where a gauge shows wholes from some film on, or throughout', () => {
    const autoRange = changed(fine, ({ thickness }) =>
      rounded(thickness, thickness < 110 ? 0.1 : 1),
    );
    expect(steps(autoRange)).toBe('');
    expect(steps(own)).toBe('');
    // Of a display of wholes many readings may well be full tens.
    const tens = changed(own, ({ thickness }, i) => rounded(thickness, i % 9 === 0 ? 1 : 10));
    expect(steps(tens)).toBe('');
  });

  test('are no matter of readings that are keyed in another unit', () => {
    const inMil = changed(fine, ({ panel, thickness }) =>
      panel === 'roof' ? rounded(thickness / 25.4, 0.01) : thickness,
    );
    expect(steps(inMil)).toBe('');
  });
});
