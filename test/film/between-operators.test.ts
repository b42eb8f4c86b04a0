import { expect, test } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import { operatorsApart } from '../../src/film/between-operators.ts';
import type { Reading } from '../../src/film/reading.ts';
import { filmModel } from '../../src/formats/models.ts';
import { normal, seededRandom } from '../samples/seeded-random.ts';
import { plainPanel, reading, surveyOf } from './car-builder.ts';

const { measurement } = filmModel;
const rule = { ...measurement, pointsAreNamed: true };
const PANELS = ['bonnet', 'roof', 'boot'];

/** Each reads five points of three panels, with an error of their own. */
function readBy(
  random: () => number,
  offsets: Readonly<Record<string, number>>,
): readonly Reading[] {
  const film = PANELS.flatMap((panel) =>
    [1, 2, 3, 4, 5].map((point) => ({ panel, point, um: 112 + 4 * normal(random) })),
  );
  return Object.entries(offsets).flatMap(([operator, off]) =>
    film.map(({ panel, point, um }) =>
      reading(panel, `${point}`, um + off + measurement.repeatability * normal(random), {
        operator,
      }),
    ),
  );
}
const apartBy = (readings: readonly Reading[]) =>
  operatorsApart(readings, ({ operator }) => operator, rule);

test('who reads 5 µm more is named, with how much and on how many points', () => {
  const found = apartBy(readBy(seededRandom(1), { Ann: 0, Ben: 5 }));
  expect(found).toMatchObject({ lower: 'Ann', higher: 'Ben', points: 15 });
  const { difference = 0, expanded = 0, sd, example } = found ?? {};
  expect(Math.abs(difference - 5)).toBeLessThan(expanded);
  expect(expanded).toBeCloseTo(1.1, 0);
  expect(sd).toBeCloseTo(difference / Math.SQRT2, 0);
  expect(example?.operator).toBe('Ben');
  expect(apartBy(readBy(seededRandom(1), { Ben: 5, Ann: 0 }))?.higher).toBe('Ben');
});

test('of three the two furthest apart are told, and a reading of nobody is left out', () => {
  const three = readBy(seededRandom(2), { Ann: 0, Ben: 5, Cay: -6 });
  expect(apartBy(three)).toMatchObject({ lower: 'Cay', higher: 'Ben' });
  const { operator: _, ...nobody } = three[0] as Reading;
  expect(apartBy([...three, nobody])).toMatchObject({ lower: 'Cay', higher: 'Ben' });
});

test('two who share one point, or none, are not held to differ', () => {
  const [first, ...rest] = readBy(seededRandom(3), { Ann: 0 });
  const bens = { ...(first as Reading), operator: 'Ben', thickness: micrometres(150) };
  expect(apartBy([first as Reading, ...rest, bens])).toBeUndefined();
  expect(apartBy(rest)).toBeUndefined();
});

test('honest pairs are held to differ no more often than stated', () => {
  const random = seededRandom(4);
  const pairs = 1000;
  const told = Array.from({ length: pairs }, () => apartBy(readBy(random, { Ann: 0, Ben: 0 })));
  const share = measurement.rounds.falseAlarm;
  const most = pairs * share + 3 * Math.sqrt(pairs * share);
  expect(told.filter((one) => one !== undefined).length).toBeLessThanOrEqual(most);
});

const sumOf = (panels: readonly { readonly budget: number }[]): number =>
  panels.reduce((sum, { budget }) => sum + budget, 0);

test('operators who differ make every mean less sure, and the film and the clear thinner that are gone by', () => {
  for (let seed = 1; seed <= 20; seed += 1) {
    const readings = readBy(seededRandom(seed), { Ann: -8, Ben: -3 });
    const car = (betweenOperators?: number) =>
      surveyOf({
        panels: PANELS.map((id) => plainPanel(id)),
        readings,
        model:
          betweenOperators === undefined
            ? filmModel
            : {
                ...filmModel,
                measurement: {
                  ...measurement,
                  betweenOperators: micrometres(betweenOperators),
                },
              },
      }).panels;
    const [pooled, counted] = [car(), car(apartBy(readings)?.sd)];
    expect(sumOf(counted)).toBeLessThan(sumOf(pooled));
    for (const [k, panel] of pooled.entries()) {
      const other = counted[k];
      expect(other?.uncertainty?.components.get('operators')?.contribution).toBeGreaterThan(2);
      expect(other?.thinnest ?? 0).toBeLessThan(panel.thinnest ?? 0);
      expect(other?.topcoat?.clear.mean).toBeLessThanOrEqual(panel.topcoat?.clear.mean ?? 0);
    }
  }
});
