import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  add,
  effectiveDegreesOfFreedom,
  exactly,
  expandedUncertainty,
  multiply,
  rectangular,
  resolution,
  standardUncertainty,
  subtract,
  uncertain,
  uncertainAs,
  uncertaintyBudget,
} from '../../src/base/uncertainty.ts';
import { micrometres } from '../../src/base/units.ts';
import { evenly } from '../evenly.ts';
import { endGauge, typeBFactors } from '../reference/gum-examples.ts';

const gauge = uncertain(micrometres(endGauge.length / 1000), endGauge.components);

describe('a value that is exact', () => {
  test('adds nothing to what another is uncertain by, whichever stands first', () => {
    const five = exactly(micrometres(5));
    for (const sum of [add(gauge, five), add(five, gauge)]) {
      expect(standardUncertainty(sum)).toBe(standardUncertainty(gauge));
    }
  });
  test('has sources that share nothing', () => {
    const nothing = uncertain(micrometres(5), { gauge: { contribution: 0, dof: 4 } });
    expect(uncertaintyBudget(nothing).map(({ share }) => share)).toEqual([0]);
  });
});

describe('the uncertainty of a value', () => {
  test('combines as in GUM H.1: 32 nm, 16.7 degrees of freedom, 93 nm at 99 %', () => {
    expect(standardUncertainty(gauge)).toBeCloseTo(endGauge.full.combined, 8);
    expect(Math.round(standardUncertainty(gauge))).toBe(endGauge.printed.combined);
    const dof = effectiveDegreesOfFreedom(gauge);
    expect(Math.abs(dof - endGauge.printed.effectiveDof)).toBeLessThan(0.1);
    expect(Math.floor(dof)).toBe(endGauge.printed.truncatedDof);
    expect(expandedUncertainty(gauge, 0.99)).toBeCloseTo(endGauge.full.expanded99, 7);
    expect(Math.abs(expandedUncertainty(gauge, 0.99) - endGauge.printed.expanded99)).toBeLessThan(
      0.6,
    );
  });
  test('of the difference in GUM H.1 is 9.7 nm with 25.6 degrees of freedom', () => {
    const difference = uncertain(micrometres(0.215), endGauge.differenceParts);
    expect(standardUncertainty(difference).toFixed(1)).toBe('9.7');
    // The GUM works on from the rounded 9.7; unrounded it is 25.45.
    const dof = effectiveDegreesOfFreedom(difference);
    expect(dof).toBeCloseTo(25.45, 2);
    expect((dof * (9.7 / standardUncertainty(difference)) ** 4).toFixed(1)).toBe('25.6');
  });
  test('of a rectangular bound is a/√3 and of a display step δ/√12 (GUM 4.3.7, F.2.2.1)', () => {
    expect(rectangular(1)).toBeCloseTo(typeBFactors.rectangular, 15);
    expect(resolution(1)).toBeCloseTo(typeBFactors.resolution, 15);
    expect(
      Math.abs(rectangular(typeBFactors.copper.halfWidth) - typeBFactors.copper.printed),
    ).toBeLessThan(0.005e-6);
  });
  test('is nothing for an exact value, and infinite degrees of freedom give the normal factor', () => {
    const exact = exactly(micrometres(100));
    expect([
      standardUncertainty(exact),
      effectiveDegreesOfFreedom(exact),
      expandedUncertainty(exact),
    ]).toEqual([0, Infinity, 0]);
    const known = uncertain(micrometres(100), { calibration: { contribution: 2, dof: Infinity } });
    expect(effectiveDegreesOfFreedom(known)).toBe(Infinity);
    expect(expandedUncertainty(known)).toBeCloseTo(2 * 1.959963984540054, 12);
  });
  test('keeps whole degrees of freedom that rounding would cut: four equal parts of 3 make 12', () => {
    const part = { contribution: 0.1, dof: 3 };
    const sum = uncertain(micrometres(1), { a: part, b: part, c: part, d: part });
    expect(effectiveDegreesOfFreedom(sum)).toBeCloseTo(12, 12);
    expect(expandedUncertainty(sum) / standardUncertainty(sum)).toBeCloseTo(2.178812829667, 9);
  });
  test('of another value has the same sources, each changed, but for those changed to nothing', () => {
    const other = uncertainAs(micrometres(7), gauge, (source, { contribution, dof }) =>
      source === 'standard' ? null : { contribution: 2 * contribution, dof },
    );
    expect(other.value).toBe(7);
    expect([...other.components.keys()]).not.toContain('standard');
    expect(other.components.size).toBe(gauge.components.size - 1);
    for (const [source, { contribution, dof }] of other.components) {
      const own = gauge.components.get(source);
      expect([contribution / 2, dof]).toEqual([own?.contribution, own?.dof]);
    }
  });
  test('shows its budget by size, with shares that make one', () => {
    const budget = uncertaintyBudget(gauge);
    expect(budget.map(({ source }) => source)).toEqual([
      'standard',
      'temperature difference',
      'difference',
      'expansion difference',
    ]);
    expect(budget.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 14);
  });
});

describe('sources of one name', () => {
  const contribution = evenly(-10, 10);
  const reading = fc
    .tuple(contribution, contribution, fc.integer({ min: 1, max: 50 }))
    .map(([shared, own, dof]) => ({ shared, own, dof }));
  const value = (
    name: string,
    { shared, own, dof }: { shared: number; own: number; dof: number },
  ) =>
    uncertain(micrometres(100), {
      calibration: { contribution: shared, dof },
      [name]: { contribution: own, dof },
    });

  test('cancel in a difference and leave what is not shared', () => {
    fc.assert(
      fc.property(reading, (r) => {
        const before = value('before', r);
        expect(standardUncertainty(subtract(before, before))).toBe(0);
        const difference = subtract(before, value('after', r));
        expect(standardUncertainty(difference)).toBeCloseTo(Math.abs(r.own) * Math.SQRT2, 10);
      }),
    );
  });
  test('add up in a mean, so that it never averages them away', () => {
    fc.assert(
      fc.property(reading, reading, (one, other) => {
        const mean = multiply(add(value('one', one), value('other', other)), 0.5);
        expect(mean.value).toBe(100);
        expect(standardUncertainty(mean)).toBeCloseTo(
          Math.hypot((one.shared + other.shared) / 2, one.own / 2, other.own / 2),
          10,
        );
        expect(mean.components.get('calibration')?.dof).toBe(Math.min(one.dof, other.dof));
      }),
    );
  });
  test('make adding and then subtracting the same value change nothing but rounding', () => {
    fc.assert(
      fc.property(reading, reading, (one, other) => {
        const [a, b] = [value('one', one), value('other', other)];
        expect(standardUncertainty(subtract(add(a, b), b))).toBeCloseTo(standardUncertainty(a), 9);
      }),
    );
  });
  test('are refused when they are no uncertainty', () => {
    expect(() => uncertain(micrometres(1), { a: { contribution: Number.NaN, dof: 3 } })).toThrow(
      RangeError,
    );
    expect(() => uncertain(micrometres(1), { a: { contribution: 1, dof: 0 } })).toThrow(RangeError);
    expect(() => exactly(micrometres(Number.NaN))).toThrow(RangeError);
    expect(() => multiply(gauge, Infinity)).toThrow(RangeError);
    for (const confidence of [0, 1])
      expect(() => expandedUncertainty(gauge, confidence)).toThrow(RangeError);
  });
});
