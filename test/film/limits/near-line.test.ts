import { describe, expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { allowanceAt } from '../../../src/film/limits/allowance-at.ts';
import { filmModel } from '../../../src/formats/models.ts';
import {
  amongSound,
  fiveAround,
  ifWordHolds,
  standardTerms,
  UNTRIED_LOG_SD,
} from '../car-builder.ts';

const terms = { ...standardTerms, totalFloor: micrometres(1) };
const grounds = { terms, model: filmModel };
const tested = (centre: number) => amongSound(fiveAround('tested', centre), { terms }).panel;

describe('what may go from a panel near its line', () => {
  test('is what keeps the risk over both sides, in the survey and in the plan alike', () => {
    const panel = tested(102);
    expect(panel.boundBy.code).toBe('near-line');
    expect(panel.budget).toBe(panel.otherSide?.overBoth?.workTo);
    expect(panel.budget).toBeLessThan(ifWordHolds(panel));
    expect(panel.otherSide?.overBoth?.riskLeft).toBeCloseTo(terms.risk, 3);
    const allowed = allowanceAt(panel, UNTRIED_LOG_SD, grounds);
    expect([allowed.budget, allowed.boundBy.code]).toEqual([panel.budget, 'near-line']);
  });

  test('comes out the same where the plan reckons it anew as where the survey has it', () => {
    const panel = tested(102);
    // A spread of removal that is not the survey's own, however near.
    const anew = allowanceAt(panel, UNTRIED_LOG_SD * (1 + 1e-6), grounds);
    expect(anew.budget).toBeCloseTo(panel.budget, 3);
  });

  test('is the sum of both sides by their chances', () => {
    const { sureness, otherSide } = tested(102);
    const chance = sureness?.deciding.otherSide ?? Number.NaN;
    const { riskHere, riskThere, riskLeft } = otherSide?.overBoth ?? {};
    expect(chance * (riskThere ?? 0) + (1 - chance) * (riskHere ?? 0)).toBeCloseTo(
      riskLeft ?? 0,
      9,
    );
  });

  test('is more where the removal is foretold better', () => {
    const at = (logSd: number) => allowanceAt(tested(102), logSd, grounds).budget;
    expect(at(0.2)).toBeGreaterThan(at(UNTRIED_LOG_SD));
  });

  test('is nothing on film that may be a repaint', () => {
    expect(tested(150).budget).toBe(0);
    expect(allowanceAt(tested(150), UNTRIED_LOG_SD, grounds).budget).toBe(0);
  });

  test('is what its word allows where it is not near, or as much may go on either side', () => {
    for (const centre of [118, 99]) {
      const panel = tested(centre);
      expect(panel.budget).toBe(ifWordHolds(panel));
      expect(allowanceAt(panel, UNTRIED_LOG_SD, grounds).budget).toBe(panel.budget);
    }
  });
});
