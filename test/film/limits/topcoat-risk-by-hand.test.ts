/** The risk of a removal over all that a panel may be, by the normal table: of a removal that is foretold exactly. */
import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { NO_ZINC } from '../../../src/film/limits/thin-clear.ts';
import type { PlainTopcoat, TopcoatCase } from '../../../src/film/limits/topcoat-cases.ts';
import {
  risksOf,
  riskTerms,
  topcoatAllowance,
  topcoatAllowanceUpTo,
  topcoatRisk,
} from '../../../src/film/limits/topcoat-risk.ts';

const um = micrometres;

const clearAt = (mean: number): PlainTopcoat => ({
  finish: 'clear-over-base',
  clear: { mean: um(mean), sd: um(4) },
  meanClear: { mean: um(mean), sd: um(4) },
  clearFloor: um(20),
  told: {
    film: {
      mean: um(110),
      count: 5,
      spread: { sd: um(4), dof: 8 },
      calibration: um(0),
      taken: { mean: um(0), sd: um(0) },
    },
    knowledge: {
      top: { mean: um(40), sd: um(5) },
      under: { mean: um(70), sd: um(8) },
      statedClear: null,
      statedUnder: null,
      zinc: NO_ZINC,
      panelToPanel: um(2),
    },
  },
});

/** 30 µm on the thinnest, 26 µm if it was cut back (one in five), nothing known if it is filler (one in a hundred). */
const topcoat: TopcoatCase = {
  ...clearAt(30),
  besides: [
    { condition: 'filler', chance: 0.01, topcoat: null },
    { condition: 'cut-back', chance: 0.2, topcoat: clearAt(26) },
  ],
};
const certain: TopcoatCase = { ...clearAt(30), besides: [] };

/** Φ of −2.5 to 0 in steps of a half. */
const PHI = {
  '-2.5': 0.0062096653,
  '-2': 0.0227501319,
  '-1.5': 0.0668072013,
  '-1': 0.1586552539,
  '-.5': 0.3085375387,
  '0': 0.5,
} as const;

const two = { median: um(2), logSd: 0 };
const over = (own: number, cutBack: number, lost: number): number =>
  0.79 * own + 0.2 * cutBack + 0.01 * lost;

describe('the risk of 2 µm of ten over the floor', () => {
  it('is Φ(−2) of a panel that is what its word says', () => {
    expect(topcoatRisk(certain, two)).toBeCloseTo(PHI['-2'], 9);
  });
  it('is that of each that it may be, by its chance; any removal from what is not known is one too many', () => {
    expect(topcoatRisk(topcoat, two)).toBeCloseTo(over(PHI['-2'], PHI['-1'], 1), 9);
  });
  it('is higher where every topcoat is thinner, and stands in part before anything is taken', () => {
    const { risk, riskIfThin, already } = risksOf(topcoat, two, um(2));
    expect(risk).toBeCloseTo(over(PHI['-2'], PHI['-1'], 1), 9);
    expect(riskIfThin).toBeCloseTo(over(PHI['-1.5'], PHI['-.5'], 1), 9);
    expect(already).toBeCloseTo(over(PHI['-2.5'], PHI['-1.5'], 0), 9);
  });
  it('is told by the terms that it is the sum of, those besides first', () => {
    const terms = riskTerms(topcoat, 'original', two);
    expect(terms).toEqual([
      { condition: 'filler', chance: 0.01, risk: 1 },
      { condition: 'cut-back', chance: 0.2, risk: expect.closeTo(PHI['-1'], 9) },
      {
        condition: 'original',
        chance: expect.closeTo(0.79, 12),
        risk: expect.closeTo(PHI['-2'], 9),
      },
    ]);
    const sum = terms.reduce((total, { chance, risk }) => total + chance * risk, 0);
    expect(topcoatRisk(topcoat, two)).toBeCloseTo(sum, 12);
  });
});

describe('what may go at a risk', () => {
  const risk = over(PHI['-2'], PHI['-1'], 1);
  const allowed = (at: number, logSd = 0.001) => topcoatAllowance(topcoat, { risk: at, logSd });
  it('is the removal that risks just that, over all that the panel may be', () => {
    expect(allowed(risk)).toBeCloseTo(2, 2);
    const wide = allowed(0.1, 0.4);
    expect(topcoatRisk(topcoat, { median: wide, logSd: 0.4 })).toBeCloseTo(0.1, 4);
  });
  it('is nothing where what is lost for certain takes all of the risk', () => {
    expect(allowed(0.01)).toBe(0);
    expect(topcoatAllowanceUpTo(um(5), topcoat, { risk: 0.01, logSd: 0.4 })).toBe(0);
  });
  it('is no more than another limit leaves, and as much as the topcoat allows under it', () => {
    const terms = { risk, logSd: 0.001 };
    expect(topcoatAllowanceUpTo(um(1.5), topcoat, terms)).toBe(1.5);
    expect(topcoatAllowanceUpTo(um(9), topcoat, terms)).toBeCloseTo(2, 2);
  });
});
