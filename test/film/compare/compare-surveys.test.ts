import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type FilmChange, hasGained } from '../../../src/film/compare/compare-change.ts';
import {
  compareSurveys,
  type SurveyComparison,
  withAllPoints,
} from '../../../src/film/compare/compare-surveys.ts';
import type { ComparisonRules } from '../../../src/film/compare/panel-comparison.ts';
import type { Reading } from '../../../src/film/reading.ts';
import { correctionModel, filmModel } from '../../../src/formats/models.ts';
import { onFace, plainPanel, reading, surveyOf } from '../car-builder.ts';

const IDS = ['a', 'b', 'c', 'd'] as const;
const panels = IDS.map((id) => plainPanel(id));
const survey = (readings: readonly Reading[]) => surveyOf({ panels, readings });

const rules = (marked: boolean, rest: Partial<ComparisonRules> = {}): ComparisonRules => ({
  marked: { before: () => marked, after: () => marked },
  gauges: { cancels: true, before: filmModel.measurement, after: filmModel.measurement },
  model: filmModel,
  scatterDof: correctionModel.spot.scatterDof,
  ...rest,
});

const compare = (
  before: readonly Reading[],
  after: readonly Reading[],
  marked = true,
): SurveyComparison => compareSurveys(survey(before), survey(after), rules(marked));

const panelOf = ({ panels: all }: SurveyComparison, id: string) => {
  const found = all.find(({ panel }) => panel.id === id);
  if (found === undefined) throw new Error(`${id} was not compared`);
  return found;
};

const car = (values: readonly (readonly number[])[]): readonly Reading[] =>
  values.flatMap((ofPanel, i) => onFace(IDS[i] ?? 'a', ...ofPanel));

const before = car([
  [112, 118, 110, 115, 113],
  [109, 107, 111, 112, 105],
  [120, 117, 114, 118, 122],
  [101, 106, 103, 108, 104],
]);
const after = car([
  [110, 115, 108, 112, 111],
  [108, 104, 108, 110, 103],
  [117, 115, 113, 114, 120],
  [99, 103, 101, 106, 101],
]);

describe('panels read before and after', () => {
  test('are compared point by point where the points are marked', () => {
    const one = panelOf(compare(before, after), 'a');
    expect(one.by).toBe('pairs');
    expect(one.pairs.map(({ point }) => point)).toEqual(['1', '2', '3', '4', '5']);
    expect(one.change?.removed.value).toBeCloseTo((2 + 3 + 2 + 3 + 2) / 5, 12);
    expect(one.change?.resolved).toBe(true);
  });

  test('are compared by their means where no point is, and then the film’s own spread is in the error', () => {
    const paired = panelOf(compare(before, after), 'a').change;
    const { by, pairs, change, unpaired } = panelOf(compare(before, after, false), 'a');
    expect([by, pairs]).toEqual(['means', []]);
    expect(unpaired.notMarked).toEqual(['1', '2', '3', '4', '5']);
    expect(change?.removed.value).toBeCloseTo(paired?.removed.value ?? Number.NaN, 9);
    expect(change?.resolved).toBe(false);
    expect(change?.detectable.half).toBeGreaterThan(3 * (paired?.detectable.half ?? 0));
  });

  test('are taken for marked only where both times say so', () => {
    const half = rules(true, { marked: { before: () => true, after: () => false } });
    expect(compareSurveys(survey(before), survey(after), half).panels[0]?.by).toBe('means');
  });

  test('name every point that has no counterpart', () => {
    const some = [
      ...after.filter(({ panel, point }) => panel !== 'a' || Number(point) < 3),
      reading('a', '9', 111),
      reading('a', 'e', 90, { place: 'edge' }),
    ];
    const { pairs, unpaired, counts } = panelOf(compare(before, some), 'a');
    expect(pairs).toHaveLength(2);
    expect(unpaired).toEqual({
      notReadAgain: ['3', '4', '5'],
      notReadBefore: ['9'],
      notMarked: [],
      offTheFace: ['e'],
    });
    expect(counts).toEqual({ before: 5, after: 3 });
  });

  test('read with two gauges are uncertain by what each may be off by at the means of their points', () => {
    const { measurement } = filmModel;
    const two = rules(true, {
      gauges: { cancels: false, before: measurement, after: measurement },
    });
    const { change } = panelOf(compareSurveys(survey(before), survey(after), two), 'a');
    const part = (name: string) => change?.removed.components.get(name)?.contribution;
    // (1 + 2 % of the mean)/√3: 113.6 before, 111.2 after.
    expect(part('calibration-before')).toBeCloseTo((1 + 0.02 * 113.6) / Math.sqrt(3), 9);
    expect(part('calibration-after')).toBeCloseTo((1 + 0.02 * 111.2) / Math.sqrt(3), 9);
  });

  test('are told apart from those read at one time only', () => {
    const told = compare(
      before.filter(({ panel }) => panel !== 'a'),
      after.filter(({ panel }) => panel !== 'b'),
    );
    expect(told.panels.map(({ panel }) => panel.id)).toEqual(['c', 'd']);
    expect(told.onlyBefore.map(({ id }) => id)).toEqual(['b']);
    expect(told.onlyAfter.map(({ id }) => id)).toEqual(['a']);
  });

  test('with nothing in common say nothing of the car', () => {
    const told = compare(
      before.filter(({ panel }) => panel === 'a'),
      after.filter(({ panel }) => panel === 'b'),
    );
    expect(told.panels).toEqual([]);
    expect(told.car).toBeNull();
  });

  test('read only near their edges have no change', () => {
    const edges = [reading('a', '1', 90, { place: 'edge' })];
    const { by, change } = panelOf(compare(before, edges), 'a');
    expect([by, change]).toEqual(['nothing', null]);
  });

  test('that read more film by far are flagged, and those that read a little more are not', () => {
    const more = after.map((one) =>
      one.panel === 'c' ? reading('c', one.point, one.thickness + 8) : one,
    );
    const told = compare(before, more);
    expect(told.panels.filter(({ gained }) => gained).map(({ panel }) => panel.id)).toEqual(['c']);
    const same = compare(
      before,
      before.map((one) => ({ ...one, thickness: one.thickness })),
    );
    expect(same.panels.some(({ gained }) => gained)).toBe(false);
  });

  test('that read more film together are flagged, though each reads too little more to tell', () => {
    const scatter = [-2, 1.9, 0.2, -1.8, 2.1];
    const more = before.map((one, i) =>
      reading(one.panel, one.point, one.thickness + 1.4 + (scatter[i % 5] ?? 0)),
    );
    const told = compare(before, more);
    const risk = filmModel.flagRisk / IDS.length;
    const byThemselves = told.panels.map(
      ({ change }) => change !== null && hasGained(change, risk),
    );
    expect(byThemselves).toEqual([false, false, false, false]);
    expect(told.car !== null && hasGained(told.car, risk)).toBe(true);
    expect(told.panels.map(({ gained }) => gained)).toEqual([true, true, true, true]);
  });

  test('that read more film together at other places are not: these may lie in thicker film', () => {
    const more = before.map((one) => reading(one.panel, one.point, one.thickness + 4));
    const told = compare(before, more, false);
    const risk = filmModel.flagRisk / IDS.length;
    expect(told.car !== null && hasGained(told.car, risk / IDS.length)).toBe(true);
    expect(told.panels.map(({ gained }) => gained)).toEqual(
      told.panels.map(({ change }) => change !== null && hasGained(change, risk)),
    );
    expect(told.panels.some(({ gained }) => !gained)).toBe(true);
  });

  test('share the chance of a flag: each of four is called a gain at a quarter of it', () => {
    const shifts = Array.from({ length: 41 }, (_, i) => i / 10);
    const told = shifts.map((shift) => {
      const more = before.map((one, i) =>
        reading(
          one.panel,
          one.point,
          one.thickness + (i % 3) - 1 + (one.panel === 'c' ? shift : 0),
        ),
      );
      const { change, gained } = panelOf(compare(before, more), 'c');
      if (change === null) throw new Error('the panel was read twice');
      const { flagRisk } = filmModel;
      expect(gained, `${shift}`).toBe(hasGained(change, flagRisk / 4));
      return { gained, atAll: hasGained(change, flagRisk) };
    });
    expect(told.some(({ gained, atAll }) => atAll && !gained)).toBe(true);
    expect(told.at(-1)?.gained).toBe(true);
  });

  test('share how their differences scatter: an even panel is not taken for certain', () => {
    const even = after.map((one, i) =>
      one.panel === 'a' ? reading('a', one.point, (before[i]?.thickness ?? 0) - 2) : one,
    );
    const { change } = panelOf(compare(before, even), 'a');
    expect(change?.removed.value).toBeCloseTo(2, 12);
    expect((change?.high ?? 0) - 2).toBeGreaterThan(0.2);
  });

  test('fewer than three of them rest on the gauge’s repeatability besides', () => {
    const one = (all: readonly Reading[]) => all.filter(({ panel }) => panel === 'a');
    const { change } = panelOf(compare(one(before), one(after)), 'a');
    const { repeatability } = filmModel.measurement;
    const own = [2, 3, 2, 3, 2].reduce((sum, value) => sum + (value - 2.4) ** 2, 0);
    const dof = correctionModel.spot.scatterDof;
    // (d₀·2s² + Σ(Δ − Δ̄)²)/(d₀ + n − 1), whole micrometres shown
    const variance = (dof * 2 * (repeatability ** 2 + 1 / 12) + own) / (dof + 4);
    expect(change?.removed.components.get('marks')?.contribution).toBeCloseTo(
      Math.sqrt(variance / 5),
      9,
    );
  });
});

describe('a panel in two zones', () => {
  const zoned = (shift: number, repaint: number): readonly Reading[] => [
    ...before.filter(({ panel }) => panel !== 'a').map((one) => ({ ...one })),
    ...onFace(
      'a',
      112 - shift,
      115 - shift,
      110 - shift,
      250 - repaint,
      254 - repaint,
      252 - repaint,
    ),
  ];

  test('has what came off each zone by its marked points', () => {
    const told = panelOf(compare(zoned(0, 0), zoned(2, 6)), 'a');
    expect(told.zones.map(({ zone }) => zone)).toEqual(['thinner', 'thicker']);
    expect(told.zones.map(({ change }) => change?.removed.value)).toEqual([2, 6]);
    expect(told.change?.removed.value).toBe(4);
  });

  test('is compared zone with zone where nothing is marked, and lost what its zones lost by their points', () => {
    const told = panelOf(compare(zoned(0, 0), zoned(2, 6), false), 'a');
    expect(told.zones.map(({ by }) => by)).toEqual(['means', 'means']);
    expect(told.zones.map(({ change }) => change?.removed.value)).toEqual([2, 6]);
    expect(told.by).toBe('means');
    expect(told.change?.removed.value).toBe(4);
  });

  test('has of each zone the doubt of its own: in quadrature, by their points', () => {
    const told = panelOf(compare(zoned(0, 0), zoned(2, 6), false), 'a');
    const ofMeans = (change: FilmChange | null | undefined): number => {
      const own = [...(change?.removed.components ?? [])].filter(([name]) =>
        /^film-(?:before|after)/u.test(name),
      );
      return Math.hypot(...own.map(([, { contribution }]) => contribution));
    };
    const zones = told.zones.map(({ change }) => ofMeans(change) / 2);
    expect(Math.min(...zones)).toBeGreaterThan(0);
    expect(ofMeans(told.change)).toBeCloseTo(Math.hypot(...zones), 9);
  });

  test('says nothing of a zone that has no counterpart', () => {
    const whole = [
      ...before.filter(({ panel }) => panel !== 'a'),
      ...onFace('a', 112, 115, 110, 113, 114, 116),
    ];
    const told = panelOf(compare(zoned(0, 0), whole, false), 'a');
    expect(told.zones.map(({ change }) => change)).toEqual([null, null]);
    expect(told.change).toBeNull();
  });
});

describe('whatever was read', () => {
  const values = fc.array(fc.integer({ min: 900, max: 1300 }), { minLength: 4, maxLength: 6 });
  const readings = fc
    .array(values, { minLength: 3, maxLength: 4 })
    .map((all) => car(all.map((ofPanel) => ofPanel.map((value) => value / 10))));
  const marked = fc.boolean();

  // Film does not grow: two panels that lost and gained may seem exchanged one way, and the other way not.
  test('before and after swapped turn every sign round, but where two panels seem exchanged', () => {
    const seemExchanged = ({ panels: all }: SurveyComparison): boolean =>
      all.some(({ swap }) => swap?.kind === 'panels');
    const hasApart = ({ panels: all }: SurveyComparison): boolean =>
      all.some(({ apart }) => apart !== null);
    fc.assert(
      fc.property(readings, readings, marked, (one, other, isMarked) => {
        const [there, back] = [compare(one, other, isMarked), compare(other, one, isMarked)];
        fc.pre(!seemExchanged(there) && !seemExchanged(back));
        // Which of its points a panel is held by is told by what it lost the more of.
        for (const { panel, change } of withAllPoints(there).panels) {
          const mirrored = panelOf(withAllPoints(back), panel.id).change;
          expect(mirrored === null).toBe(change === null);
          if (change === null) continue;
          expect(mirrored?.removed.value).toBeCloseTo(-change.removed.value, 9);
          expect(mirrored?.low).toBeCloseTo(-change.high, 9);
          expect(mirrored?.detectable.half).toBeCloseTo(change.detectable.half, 9);
        }
        expect(back.car === null).toBe(there.car === null);
        if (hasApart(there) || hasApart(back)) return;
        expect(back.car?.removed.value ?? 0).toBeCloseTo(-(there.car?.removed.value ?? 0), 9);
      }),
      { numRuns: 40 },
    );
  });

  test('a constant that the gauge adds both times changes nothing at marked points', () => {
    fc.assert(
      fc.property(readings, readings, fc.integer({ min: -20, max: 60 }), (one, other, constant) => {
        const shifted = (all: readonly Reading[]) =>
          all.map((each) => reading(each.panel, each.point, each.thickness + constant));
        const plain = compare(one, other);
        const moved = compare(shifted(one), shifted(other));
        for (const { panel, change } of plain.panels) {
          const found = panelOf(moved, panel.id).change;
          expect(found === null).toBe(change === null);
          expect(found?.removed.value ?? 0).toBeCloseTo(change?.removed.value ?? 0, 9);
          expect(found?.low ?? 0).toBeCloseTo(change?.low ?? 0, 6);
        }
      }),
      { numRuns: 40 },
    );
  });

  test('the order of the rows does not matter', () => {
    fc.assert(
      fc.property(
        readings,
        readings,
        marked,
        fc.infiniteStream(fc.nat()),
        (one, other, isMarked, keys) => {
          const shuffled = (all: readonly Reading[]) =>
            all
              .map((each) => ({ each, key: keys.next().value ?? 0 }))
              .sort((a, b) => a.key - b.key)
              .map(({ each }) => each);
          const plain = compare(one, other, isMarked);
          const mixed = compare(shuffled(one), shuffled(other), isMarked);
          for (const { panel, change } of plain.panels) {
            const found = panelOf(mixed, panel.id).change;
            expect(found === null).toBe(change === null);
            expect(found?.removed.value ?? 0).toBeCloseTo(change?.removed.value ?? 0, 9);
            expect(found?.low ?? 0).toBeCloseTo(change?.low ?? 0, 9);
          }
        },
      ),
      { numRuns: 30 },
    );
  });
});
