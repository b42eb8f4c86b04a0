import { describe, expect, test } from 'vitest';
import { enNumber, scoreVerdict, zetaScore, zScore } from '../../src/training/scores.ts';
import { gear, leadInWine, zVerdicts } from '../reference/proficiency.ts';
import { model } from './true-class.ts';

describe('scores of proficiency', () => {
  test('z is that of the NIST page on ISO 13528, to the digits that it prints', () => {
    gear.values.forEach((value, i) => {
      const z = zScore(value - gear.assigned, gear.sigma);
      expect(Math.abs(z - (gear.printed[i] ?? Number.NaN))).toBeLessThan(0.0011);
    });
  });
  test('zeta and E_n are those of the comparison CCQM-K30, lead in wine', () => {
    const { assigned, laboratories } = leadInWine;
    for (const { x, u, expanded, zeta, en } of laboratories) {
      const difference = x - assigned.value;
      expect(zetaScore(difference, u, assigned.u)).toBeCloseTo(zeta, 6);
      expect(enNumber(difference, expanded, assigned.expanded)).toBeCloseTo(en, 6);
    }
  });
  test('an uncertain reference lowers a z, and one that is certain leaves it', () => {
    expect(zScore(6, 3)).toBe(2);
    expect(zScore(6, 3, 4)).toBe(1.2);
  });
  test.each(zVerdicts)('z of %d is %s, as ISO 13528 has it', (z, verdict) => {
    expect(scoreVerdict(z, model.scores)).toBe(verdict);
  });
});
