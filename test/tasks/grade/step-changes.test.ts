import { describe, expect, test } from 'vitest';
import { gradeFiles } from '../../../src/tasks/grade/grade-files.ts';
import { seededRandom } from '../../samples/seeded-random.ts';
import { drawCar, readCar, rounded, settings, usualHabit } from '../../training/true-class.ts';
import { gradeRequest, loaded } from '../grading.ts';

const random = seededRandom(31);
const car = drawCar(random);
const read = () => readCar(random, car, { ...usualHabit, marked: true, repeats: 3 });
type Write = (value: number, index: number) => string;

const csv = (write: Write, sign: string, lineEnd = '\n'): string =>
  [
    ['panel', 'point', 'repeat', 'reading_um', 'marked'],
    ...read().map(({ panel, point, repeat, thickness }, i) => [
      ...[panel, point, String(repeat), write(thickness, i), 'yes'],
    ]),
  ]
    .map((cells) => cells.join(sign))
    .join(lineEnd);

function stepsTold(write: Write, sign = ',', lineEnd = '\n'): readonly string[] {
  const { value } = gradeFiles(
    gradeRequest({
      reference: loaded(
        'reference.csv',
        csv((value) => value.toFixed(1), ','),
      ),
      trainees: [loaded('own.csv', csv(write, sign, lineEnd))],
      settings,
      marked: true,
    }),
  );
  return (value?.trainees ?? []).flatMap(({ grade }) =>
    (grade?.reasons ?? []).flatMap(({ code, text }) => (code === 'step-changes' ? [text] : [])),
  );
}

/** Three of four readings in whole micrometres. */
const coarse = (value: number, i: number): number => rounded(value, i % 4 === 0 ? 0.1 : 1);

describe('a last figure of 0', () => {
  test('that is written is not missing, with a decimal point or a comma', () => {
    expect(stepsTold((value, i) => coarse(value, i).toFixed(1))).toEqual([]);
    const comma: Write = (value, i) => coarse(value, i).toFixed(1).replace('.', ',');
    expect(stepsTold(comma, ';')).toEqual([]);
  });

  test('is known however the lines of the file end, and with a unit behind it', () => {
    const unit: Write = (value, i) => `${coarse(value, i).toFixed(1)} µm`;
    expect(stepsTold(unit, ',', '\r')).toEqual([]);
  });

  test('that is not written is told, of all readings, though some others end in a written 0', () => {
    const [told] = stepsTold((value, i) =>
      i < 20 ? coarse(value, i).toFixed(1) : String(coarse(value, i)),
    );
    expect(told).toMatch(/^1\d\d of 165 readings stand without the last figure/u);
  });
});
