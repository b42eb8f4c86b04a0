import { expect, test } from 'vitest';
import { expertReference } from '../../src/training/reference.ts';
import { seededRandom } from '../samples/seeded-random.ts';
import { changed, drawCar, gradeAgainst, readCar, surveyOf, usualHabit } from './true-class.ts';

test('a panel that was read at some of its marks is told by what it reads more or less at these', () => {
  const random = seededRandom(2_031);
  const car = drawCar(random);
  const habit = { ...usualHabit, marked: true, repeats: 2 };
  const expert = readCar(random, car, { ...habit, repeats: 3 });
  const own = readCar(random, car, habit);
  const lowest = expert
    .filter(({ panel }) => panel === 'roof')
    .toSorted((one, other) => one.thickness - other.thickness)[0]?.point;
  const told = (by: number) => {
    const off = changed(own, ({ panel, thickness }) =>
      panel === 'roof' ? thickness + by : thickness,
    ).filter(({ panel, point }) => panel !== 'roof' || point !== lowest);
    const { scores, reasons } = gradeAgainst(surveyOf(off), expertReference(surveyOf(expert)));
    const difference = scores.find(({ panel }) => panel.id === 'roof')?.difference ?? Number.NaN;
    const text = reasons.find(({ text: of }) => of.startsWith('roof: '))?.text ?? '';
    return { difference, text };
  };
  const [more, less] = [told(11), told(-13)];
  expect(more.difference - less.difference).toBeCloseTo(24, 9);
  expect(more.text).toContain(
    `roof: ${more.difference.toFixed(1)} µm more than the reference at the 4 marks that both read`,
  );
  expect(less.text).toContain(
    `roof: ${(-less.difference).toFixed(1)} µm less than the reference at the 4 marks that both read`,
  );
});
