import { describe, expect, test } from 'vitest';
import { algorithmA } from '../../../src/base/stats/algorithm-a.ts';
import { gaugeRr } from '../../../src/base/stats/gauge-rr.ts';
import {
  binomialUpperTail,
  fUpperTail,
  regularisedBeta,
} from '../../../src/base/stats/incomplete-beta.ts';
import { classTable, cohenKappa } from '../../../src/base/stats/kappa.ts';
import { limitsOfAgreement } from '../../../src/base/stats/limits-of-agreement.ts';
import { exactInterval } from '../../../src/base/stats/proportion-interval.ts';
import { studentTCdf } from '../../../src/base/stats/student-t.ts';
import {
  aiag,
  antibody,
  cohen1968,
  copperInFlour,
  couples,
  creosote,
  kappaTables,
  newcombe,
  peakFlow,
  smallShares,
  youdenPaper,
} from '../../reference/proficiency.ts';

const close = (found: readonly number[], wanted: readonly number[], digits: number): void => {
  expect(found).toHaveLength(wanted.length);
  found.forEach((value, i) => {
    expect(value).toBeCloseTo(wanted[i] ?? Number.NaN, digits);
  });
};

describe('Algorithm A', () => {
  test('starts at the median and 1.483 MAD and goes round as on the creosote of ISO 5725-5', () => {
    const start = algorithmA(creosote.values, { iterations: 0 });
    close([start.mean, start.sd], creosote.start, 9);
    creosote.rounds.forEach((wanted, i) => {
      const found = algorithmA(creosote.values, { iterations: i + 1 });
      close([found.mean, found.sd], wanted, 8);
    });
  });
  test('comes to rest at the converged values of three published data sets', () => {
    const creosoteFound = algorithmA(creosote.values);
    expect(creosoteFound.mean).toBeCloseTo(creosote.converged.mean, 8);
    expect(creosoteFound.sd).toBeCloseTo(creosote.converged.sd, 8);
    for (const { values, mean, sd } of [copperInFlour, antibody]) {
      const found = algorithmA(values);
      expect(found.mean).toBeCloseTo(mean, 8);
      expect(found.sd).toBeCloseTo(sd, 8);
    }
  });
  test('comes to rest as near in any unit: thousandths and thousands give the same figures', () => {
    const whole = algorithmA(creosote.values);
    for (const unit of [1e-9, 1e-3, 1e6]) {
      const found = algorithmA(creosote.values.map((value) => unit * value));
      expect(found.mean / unit).toBeCloseTo(whole.mean, 10);
      expect(found.sd / unit).toBeCloseTo(whole.sd, 10);
    }
  });
  test('gives no spread where all values are one, and some where more than half are', () => {
    expect(algorithmA([5, 5, 5])).toEqual({ mean: 5, sd: 0 });
    const found = algorithmA([5, 5, 5, 5, 6, 7, 9]);
    expect(found.sd).toBeGreaterThan(0);
    expect(found.mean).toBeGreaterThan(5);
    expect(found.mean).toBeLessThan(6);
  });
  test('refuses a single value', () => {
    expect(() => algorithmA([5])).toThrow(RangeError);
  });
});

describe('gauge R&R', () => {
  const all = (found: ReturnType<typeof gaugeRr>) => [
    found.sd.ev,
    found.sd.av,
    found.sd.int,
    found.sd.grr,
    found.sd.pv,
    found.sd.tv,
  ];
  test('has the sums of squares of the AIAG example, and drops its interaction', () => {
    const { parts, operators, interaction, within, ...found } = gaugeRr(aiag.readings);
    const lines = [parts, operators, interaction, within];
    close(
      lines.map(({ ss }) => ss),
      aiag.ss,
      9,
    );
    expect(lines.map(({ dof }) => dof)).toEqual(aiag.dof);
    expect(found.interactionChance).toBeCloseTo(aiag.interactionChance, 9);
    expect(found.pooled).toBe(true);
  });
  test('gives the figures that the AIAG manual prints, and ndc 4 where its other method gives 5', () => {
    const found = gaugeRr(aiag.readings);
    close(all(found), Object.values(aiag.pooled.sd), 9);
    expect(found.studyVariation).toBeCloseTo(aiag.pooled.studyVariation, 9);
    expect(found.ndc).toBe(aiag.pooled.ndc);
    const { printed } = aiag.pooled;
    close(
      [found.sd.ev, found.sd.av, found.sd.grr, found.sd.pv],
      [printed.ev, printed.av, printed.grr, printed.pv],
      5,
    );
    expect(found.studyVariation).toBeCloseTo(printed.studyVariation, 3);
  });
  test('keeps the interaction where that is asked for', () => {
    const found = gaugeRr(aiag.readings, { poolOver: 0.99 });
    close(all(found), Object.values(aiag.withInteraction.sd), 9);
    expect(found.studyVariation).toBeCloseTo(aiag.withInteraction.studyVariation, 9);
    expect(found.pooled).toBe(false);
  });
  test('keeps an interaction that is proved', () => {
    const found = gaugeRr([
      [
        [10, 10.1],
        [20, 20.1],
      ],
      [
        [20, 20.1],
        [10, 10.1],
      ],
    ]);
    expect(found.pooled).toBe(false);
    expect(found.sd.int).toBeCloseTo(Math.sqrt((200 - 0.005) / 2), 9);
    expect([found.sd.av, found.sd.pv]).toEqual([0, 0]);
    // Of two readings .1 apart the variance is .005: the gauge's own comes to what the interaction adds.
    expect(found.sd.ev).toBeCloseTo(Math.sqrt(0.005), 9);
    expect(found.sd.grr).toBeCloseTo(Math.sqrt(0.005 + (200 - 0.005) / 2), 9);
    expect(found.ndc).toBe(1);
  });
  test('says nothing of shares where nothing varies, and refuses uneven tables', () => {
    const same = [
      [
        [1, 1],
        [1, 1],
      ],
      [
        [1, 1],
        [1, 1],
      ],
    ];
    expect(gaugeRr(same)).toMatchObject({ studyVariation: null, ndc: null });
    expect(() => gaugeRr([[[1, 2]], [[1, 2]]])).toThrow(RangeError);
    expect(() => gaugeRr(same.slice(1))).toThrow(RangeError);
    expect(() => gaugeRr(same.map((part) => part.map((trials) => trials.slice(1))))).toThrow(
      RangeError,
    );
    expect(() => gaugeRr([[[1, 2], [1]], same[0] ?? []])).toThrow(RangeError);
  });
});

describe('limits of agreement', () => {
  const differences = peakFlow.a.map((a, i) => a - (peakFlow.b[i] ?? 0));
  test('are those of Bland and Altman 1986, with the intervals of their formulas', () => {
    const found = limitsOfAgreement(differences);
    close([found.mean, found.sd], [peakFlow.mean, peakFlow.sd], 9);
    close(found.limits, peakFlow.limits, 9);
    close(found.meanInterval, peakFlow.meanInterval, 8);
    close(found.lowerInterval, peakFlow.lowerInterval, 8);
    close(found.upperInterval, peakFlow.upperInterval, 8);
    const two = limitsOfAgreement(differences, { z: 2 });
    close(two.limits, peakFlow.limitsAtTwo, 9);
    expect(Math.abs(two.limits[0] - peakFlow.printed.limitsAtTwo[0])).toBeLessThan(0.1);
  });
  test('need two differences', () => {
    expect(() => limitsOfAgreement([1])).toThrow(RangeError);
  });
});

describe('Cohen’s kappa', () => {
  test('is that of Cohen 1968 and of the couples of Agresti 1990', () => {
    expect(cohenKappa(cohen1968.table).kappa).toBeCloseTo(cohen1968.kappa, 10);
    expect(cohenKappa(cohen1968.table).kappa).toBeCloseTo(cohen1968.printed, 3);
    expect(cohenKappa(couples.table).kappa).toBeCloseTo(couples.kappa, 8);
  });
  test('differs between tables that agree alike, so the agreement stands beside it', () => {
    for (const { table, kappa, observed } of kappaTables) {
      const found = cohenKappa(table);
      expect(found.kappa).toBeCloseTo(kappa, 12);
      expect(found.observed).toBeCloseTo(observed, 12);
    }
  });
  test('is .5 where three of four agree, two of which would by the margins alone, and one cell is empty', () => {
    const found = cohenKappa([
      [1, 1],
      [0, 2],
    ]);
    // p_o = 3/4; the margins alone give 1/2 · 1/4 + 1/2 · 3/4 = 1/2.
    expect(found).toEqual({ kappa: 0.5, observed: 0.75, expected: 0.5 });
  });
  test('is not there where both have one class only', () => {
    expect(cohenKappa([[13]])).toMatchObject({ kappa: null, observed: 1 });
    expect(
      cohenKappa(
        classTable([
          ['a', 'a'],
          ['a', 'a'],
        ]),
      ).kappa,
    ).toBeNull();
  });
  test('comes from pairs as from the table that they make', () => {
    const pairs = [
      ['a', 'a'],
      ['a', 'b'],
      ['b', 'b'],
      ['b', 'b'],
    ] as const;
    expect(classTable(pairs)).toEqual([
      [1, 1],
      [0, 2],
    ]);
  });
  test('refuses a table that is empty, not square, or below zero', () => {
    expect(() => cohenKappa([])).toThrow(RangeError);
    expect(() => cohenKappa([[1, 2]])).toThrow(RangeError);
    expect(() => cohenKappa([[-1]])).toThrow(RangeError);
  });
});

describe('the interval of a share', () => {
  test('is the exact one of Clopper and Pearson as Newcombe 1998 prints it', () => {
    for (const { x, n, exact, printedExact } of newcombe) {
      close(exactInterval(x, n), exact, 9);
      close(exactInterval(x, n), printedExact, 4);
    }
    for (const { x, n, confidence, exact } of smallShares) {
      close(exactInterval(x, n, confidence), exact, 9);
    }
  });
  test('begins at nothing where none succeeded and ends at all where all did, to the last digit', () => {
    for (const [trials, confidence] of [1, 3, 7, 12, 49, 300].flatMap((n) =>
      [0.5, 0.8, 0.9, 0.95, 0.99].map((share) => [n, share] as const),
    )) {
      expect(exactInterval(0, trials, confidence)[0]).toBe(0);
      expect(exactInterval(trials, trials, confidence)[1]).toBe(1);
    }
  });
  test('is never narrower by the exact one than the confidence asks for', () => {
    // The chance of all x whose interval holds the true share, for shares about those of a class.
    for (const share of [0.05, 0.3, 0.5, 0.87]) {
      const n = 12;
      const held = Array.from({ length: n + 1 }, (_, x) => x).reduce((sum, x) => {
        const [low, high] = exactInterval(x, n);
        const chance = binomialUpperTail(x, n, share) - binomialUpperTail(x + 1, n, share);
        return low <= share && share <= high ? sum + chance : sum;
      }, 0);
      expect(held).toBeGreaterThanOrEqual(0.95);
    }
  });
  test('refuses what is no share', () => {
    expect(() => exactInterval(1, 0)).toThrow(RangeError);
    expect(() => exactInterval(3, 2)).toThrow(RangeError);
    expect(() => exactInterval(-1, 2)).toThrow(RangeError);
    expect(() => exactInterval(0.5, 2)).toThrow(RangeError);
  });
});

describe('the incomplete beta function', () => {
  test('gives binomial tails of 2.5 % at the exact limits of Newcombe 1998', () => {
    for (const { x, n, exact } of newcombe) {
      if (x > 0) expect(binomialUpperTail(x, n, exact[0])).toBeCloseTo(0.025, 10);
      expect(1 - binomialUpperTail(x + 1, n, exact[1])).toBeCloseTo(0.025, 10);
    }
  });
  test('gives an F tail on one degree of freedom that is twice a tail of t', () => {
    for (const [t, dof] of [
      [0.5, 3],
      [2, 12],
      [4, 60],
    ] as const) {
      expect(fUpperTail(t * t, 1, dof)).toBeCloseTo(2 * studentTCdf(-t, dof), 12);
    }
    expect(fUpperTail(0, 3, 4)).toBe(1);
    expect(fUpperTail(Number.POSITIVE_INFINITY, 3, 4)).toBe(0);
  });
  test('gives the F test of Youden’s 24 student operators, by what is published of their readings', () => {
    const { operators, readings, sdOfMeans, repeatability, f, chance, ...rest } = youdenPaper;
    const found = (readings * sdOfMeans ** 2) / repeatability ** 2;
    expect(found).toBeCloseTo(f, 5);
    const tail = fUpperTail(found, operators - 1, operators * (readings - 1));
    expect(Math.abs(tail / chance - 1)).toBeLessThan(1e-4);
    expect(sdOfMeans ** 2 - repeatability ** 2 / readings).toBeCloseTo(rest.betweenVariance, 12);
    expect(Math.sqrt(rest.betweenVariance + repeatability ** 2)).toBeCloseTo(
      rest.reproducibility,
      12,
    );
  });
  test('is a sum of binomial terms, and certain or impossible at the ends', () => {
    expect(binomialUpperTail(2, 3, 0.5)).toBeCloseTo(0.5, 12);
    expect(binomialUpperTail(0, 3, 0.5)).toBe(1);
    expect(binomialUpperTail(4, 3, 0.5)).toBe(0);
    expect([binomialUpperTail(0, 0, 0.5), binomialUpperTail(1, 0, 0.5)]).toEqual([1, 0]);
    expect([regularisedBeta(0, 1, 2), regularisedBeta(1, 1, 2)]).toEqual([0, 1]);
  });
  test('refuses what lies outside its domain', () => {
    expect(() => regularisedBeta(2, 1, 1)).toThrow(RangeError);
    expect(() => fUpperTail(-1, 1, 1)).toThrow(RangeError);
    expect(() => binomialUpperTail(1, 1.5, 0.5)).toThrow(RangeError);
  });
});
