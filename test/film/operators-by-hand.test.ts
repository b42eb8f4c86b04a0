import { describe, expect, test } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import { operatorsApart } from '../../src/film/between-operators.ts';
import type { Reading } from '../../src/film/reading.ts';
import { filmModel } from '../../src/formats/models.ts';
import { studentTQuantiles } from '../reference/distributions.ts';
import { reading } from './car-builder.ts';

const { measurement } = filmModel;
const rule = {
  repeatability: micrometres(1.5),
  rounds: { ...measurement.rounds, falseAlarm: 0.005, assumedDof: 6, leastShift: micrometres(1) },
  pointsAreNamed: true,
};
const apart = (...readings: readonly (readonly Reading[])[]) =>
  operatorsApart(readings.flat(), ({ operator }) => operator, rule);

/** What one reads on the points 1, 2, 3 … of a roof. */
const by = (operator: string, ...ums: readonly number[]): readonly Reading[] =>
  ums.map((um, i) => reading('roof', `${i + 1}`, um, { operator }));
const ann = by('Ann', 100, 110, 105, 95);

describe('two who read the same points', () => {
  const ben = by('Ben', 104, 116, 109, 101);

  test('are apart by the mean of the differences, as surely as gauge and differences say together', () => {
    // 4, 6, 4, 6: 5 on average. s² = (6·2·1.5² + 4)/(6 + 3) = 3.444, s/√4 = .928, t(.975; 9) = 2.262.
    const standard = Math.sqrt(31 / 9 / 4);
    const found = apart(ann, ben);
    expect(found).toMatchObject({ lower: 'Ann', higher: 'Ben', points: 4 });
    expect(found?.difference).toBeCloseTo(5, 12);
    expect(found?.expanded).toBeCloseTo((studentTQuantiles['9']?.[2] ?? 0) * standard, 6);
    // s_L² = (d² − u_d²)/2
    expect(found?.sd).toBeCloseTo(Math.sqrt((25 - 31 / 36) / 2), 9);
  });

  test('have for an example the first reading of the higher, whoever stands first', () => {
    expect(apart(ann, ben)?.example).toBe(ben[0]);
    expect(apart(ben, ann)).toMatchObject({ lower: 'Ann', higher: 'Ben', example: ben[0] });
  });

  test('count by the mean of what each read of a point again', () => {
    const again = [...ben.slice(1), ...by('Ben', 102), ...by('Ben', 106)];
    expect(apart(ann, again)?.difference).toBeCloseTo(5, 12);
    expect(apart(ann, again)?.points).toBe(4);
  });

  test('are apart by two points, and by what both read alone', () => {
    expect(apart(by('Ann', 100, 110), by('Ben', 120, 130))).toMatchObject({ points: 2 });
    const more = [...ben, reading('roof', '9', 300, { operator: 'Ben' })];
    expect(apart(ann, more)).toEqual(apart(ann, ben));
    expect(apart(more, ann)?.difference).toBeCloseTo(5, 12);
  });

  test('share no point of another layer, place or panel', () => {
    const elsewhere = (rest: Partial<Reading>) => ben.map((one) => ({ ...one, ...rest }));
    for (const rest of [{ layer: 'clear' }, { place: 'edge' as const }, { panel: 'boot' }]) {
      expect(apart(ann, elsewhere(rest))).toBeUndefined();
    }
  });

  test('share no point whose names only run together', () => {
    const read = (operator: string, panel: string, points: readonly string[], um: number) =>
      points.map((point) => reading(panel, point, um, { operator }));
    const anns = read('Ann', 'door', ['11', '12'], 100);
    expect(apart(anns, read('Ben', 'door1', ['1', '2'], 140))).toBeUndefined();
    expect(apart(anns, read('Ben', 'door', ['11', '12'], 140))?.difference).toBeCloseTo(40, 12);
  });
});

describe('among several', () => {
  const shifted = (operator: string, off: number) =>
    by(operator, ...ann.map(({ thickness }) => thickness + off));

  test('the two furthest apart are told, whichever are compared first', () => {
    const [ben, cay] = [shifted('Ben', 20), shifted('Cay', 8)];
    for (const order of [
      [ann, ben, cay],
      [cay, ann, ben],
      [ben, cay, ann],
    ]) {
      expect(apart(...order)).toMatchObject({ lower: 'Ann', higher: 'Ben' });
    }
  });

  test('the chance is shared: by what two are held to differ, two of three are not', () => {
    // s/√4 = √(27/9)/2 = .866; t(1 − .005/2; 9) = 3.69 and t(1 − .005/6; 9) = 4.4: from 3.2 and from 3.8 µm on.
    const ben = shifted('Ben', 3.5);
    expect(apart(ann, ben)?.difference).toBeCloseTo(3.5, 12);
    expect(apart(ann, shifted('Cay', 0), ben)).toBeUndefined();
    expect(apart(ann, shifted('Cay', 0), shifted('Ben', 4))?.difference).toBeCloseTo(4, 12);
  });

  test('what nobody is named for is left out, however far off', () => {
    const nobody = shifted('', 40).map(({ operator: _, ...rest }) => rest);
    expect(apart(nobody, ann, shifted('Ben', 3.5))?.difference).toBeCloseTo(3.5, 12);
    expect(apart(nobody, ann)).toBeUndefined();
  });
});
