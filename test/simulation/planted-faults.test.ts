/** Classes with faults planted in them: each kind must be named, by its own code. */
import { describe, expect, test } from 'vitest';
import type { Reading } from '../../src/film/reading.ts';
import { copiedSurveys } from '../../src/training/copied-surveys.ts';
import type { ReasonCode } from '../../src/training/reasons.ts';
import { normal, seededRandom } from '../samples/seeded-random.ts';
import {
  changed,
  drawCar,
  expertOf,
  gradeAgainst,
  type Habit,
  model,
  type Random,
  readCar,
  rounded,
  surveyOf,
  usualHabit,
} from '../training/true-class.ts';

const TRAINEES = 100;
const NAMED = 0.95;
/** No seed that the checks were tuned on. */
const SEED = 60_421;

const pick = (random: Random, count: number): number => Math.floor(random() * count);
const panelsOf = (readings: readonly Reading[]): readonly string[] => [
  ...new Set(readings.map(({ panel }) => panel)),
];
const otherSide = (panel: string): string =>
  panel.endsWith('-left') ? panel.replace('-left', '-right') : panel.replace('-right', '-left');

/** What whoever knows what each panel is about, and reads none, may write. */
const madeUpAboutMeans = (
  readings: readonly Reading[],
  random: Random,
  sd: number,
): readonly Reading[] =>
  panelsOf(readings).flatMap((panel) => {
    const own = readings.filter((one) => one.panel === panel);
    const centre = own.reduce((sum, { thickness }) => sum + thickness, 0) / own.length;
    return changed(own, () => rounded(centre + sd * normal(random), 0.1));
  });

type Fault = (readings: readonly Reading[], random: Random) => readonly Reading[];

const faults: Readonly<Record<string, readonly [ReasonCode, Fault, Partial<Habit>?]>> = {
  'the whole survey in mil, headed µm': [
    'unit-slip',
    (readings) => changed(readings, ({ thickness }) => rounded(thickness / 25.4, 0.01)),
  ],
  'one panel in mil': [
    'unit-slip',
    (readings, random) => {
      const panels = panelsOf(readings);
      const one = panels[pick(random, panels.length)];
      return changed(readings, ({ panel, thickness }) =>
        panel === one ? rounded(thickness / 25.4, 0.01) : thickness,
      );
    },
  ],
  'a decimal mark one place off, on one reading': [
    'decimal-slip',
    (readings, random) => {
      const at = pick(random, readings.length);
      const factor = random() < 0.5 ? 10 : 0.1;
      return changed(readings, ({ thickness }, i) => (i === at ? thickness * factor : thickness));
    },
  ],
  'a repaired quarter under the name of the other side': [
    'sides-swapped',
    (readings) =>
      readings.map((reading) =>
        reading.panel.startsWith('quarter')
          ? { ...reading, panel: otherSide(reading.panel) }
          : reading,
      ),
  ],
  'left for right on the whole car': [
    'sides-swapped',
    (readings) => readings.map((reading) => ({ ...reading, panel: otherSide(reading.panel) })),
  ],
  'a repaired quarter and the boot lid under each other’s names': [
    'panels-swapped',
    (readings) =>
      readings.map((one) => ({
        ...one,
        panel: { 'quarter-left': 'boot', boot: 'quarter-left' }[one.panel] ?? one.panel,
      })),
  ],
  'half of the readings in whole micrometres, the others in tenths': [
    'step-changes',
    (readings, random) =>
      changed(readings, ({ thickness }) =>
        random() < 0.5 ? rounded(thickness, 1) : rounded(thickness, 0.1),
      ),
  ],
  'a gauge that creeps by 10 µm over the car, at marks': [
    'gauge-drift',
    (readings) =>
      changed(readings, ({ thickness }, i) => thickness + (10 * i) / (readings.length - 1)),
    { marked: true },
  ],
  'marks made up about the mean of each panel, as far apart as film is': [
    'not-following',
    (readings, random) => madeUpAboutMeans(readings, random, 4.5),
    { marked: true, points: 9 },
  ],
  'a probe at the edge on all marks but one, which reads 10 µm less': [
    'marks-off',
    (readings) => changed(readings, ({ point, thickness }) => thickness - (point === '3' ? 0 : 10)),
    { marked: true },
  ],
  'three panels with one value at every point': [
    'values-alike',
    (readings, random) => {
      const panels = panelsOf(readings);
      const from = pick(random, panels.length - 3);
      const flat = panels.slice(from, from + 3);
      return changed(readings, ({ panel, thickness }) =>
        flat.includes(panel)
          ? (readings.find((one) => one.panel === panel)?.thickness ?? thickness)
          : thickness,
      );
    },
    { step: 1 },
  ],
  'a panel copied from the one before': [
    'values-repeated',
    (readings, random) => {
      const panels = panelsOf(readings).filter((panel) => panel !== 'quarter-left');
      const k = 1 + pick(random, panels.length - 1);
      const values = readings.filter(({ panel }) => panel === panels[k - 1]);
      let next = 0;
      return changed(readings, ({ panel, thickness }) => {
        if (panel !== panels[k]) return thickness;
        next += 1;
        return values[next - 1]?.thickness ?? thickness;
      });
    },
    { step: 1 },
  ],
  'values sorted on every panel': [
    'values-in-order',
    (readings) =>
      panelsOf(readings).flatMap((panel) => {
        const own = readings.filter((one) => one.panel === panel);
        const sorted = own.map(({ thickness }) => thickness).sort((a, b) => a - b);
        return changed(own, (_, i) => sorted[i] ?? 0);
      }),
  ],
  'values made up about a mean': [
    'too-regular',
    (readings, random) =>
      panelsOf(readings).flatMap((panel) => {
        const own = readings.filter((one) => one.panel === panel);
        const centre = own.reduce((sum, { thickness }) => sum + thickness, 0) / own.length;
        return changed(own, () => rounded(centre + 1.2 * normal(random), 0.1));
      }),
  ],
  'a hand that reads 10 µm too much': ['car-off', (readings) => readings, { bias: 10 }],
  'a repair that the survey does not show': [
    'repair-missed',
    (readings, random) =>
      changed(readings, ({ panel, thickness }) =>
        panel === 'quarter-left' ? rounded(112 + 4 * normal(random), 0.1) : thickness,
      ),
  ],
  'a marked low spot that reads like the rest': [
    'low-spot-missed',
    (readings) =>
      changed(readings, ({ panel, point, thickness }) =>
        panel === 'wing-front-right' && point === '4' ? thickness + 32 : thickness,
      ),
    { marked: true },
  ],
};

describe.each(Object.entries(faults))('%s', (name, [code, fault, habit = {}]) => {
  test(`is named in at least 95 of ${TRAINEES} surveys`, () => {
    const random = seededRandom(SEED + name.length);
    const named = Array.from({ length: TRAINEES }, () => {
      const car = drawCar(random);
      const reference = expertOf(random, car, { ...usualHabit, ...habit, bias: 0 });
      const readings = readCar(random, car, { ...usualHabit, ...habit });
      const { reasons } = gradeAgainst(surveyOf(fault(readings, random)), reference);
      return reasons.some((one) => one.code === code && one.line !== null);
    }).filter((one) => one).length;
    expect(named / TRAINEES).toBeGreaterThanOrEqual(NAMED);
  });
});

test('a survey copied from a neighbour, with one value in eight changed, is found and no honest pair with it', () => {
  const random = seededRandom(SEED);
  const classes = Array.from({ length: 40 }, (_, k) => {
    const car = drawCar(random);
    const habit: Habit = { ...usualHabit, step: k % 2 === 0 ? 1 : 0.1, marked: k % 4 < 2 };
    const honest = Array.from({ length: 5 }, () => readCar(random, car, habit));
    const copied = changed(honest[2] ?? [], ({ thickness }, i) =>
      i % 8 === 0 ? rounded(thickness + 2 * normal(random), habit.step) : thickness,
    );
    return copiedSurveys(
      [...honest, copied].map((one) => surveyOf(one)),
      model,
    );
  });
  const found = classes.filter((pairs) =>
    pairs.some(({ surveys: [one, other] }) => one === 2 && other === 5),
  );
  const wrong = classes.flatMap((pairs) =>
    pairs.filter(({ surveys: [one, other] }) => !(one === 2 && other === 5)),
  );
  expect(found.length / classes.length).toBeGreaterThanOrEqual(NAMED);
  expect(wrong).toEqual([]);
});
