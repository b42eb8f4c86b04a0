import { describe, expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { allowanceAt } from '../../../src/film/limits/allowance-at.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { amongSound, fiveAround, standardTerms, UNTRIED_LOG_SD } from '../car-builder.ts';

const terms = { ...standardTerms, totalFloor: micrometres(1) };
const grounds = { terms, model: filmModel };
const tested = (centre: number) => amongSound(fiveAround('tested', centre), { terms }).panel;

describe('what a plan may take off a panel near its line', () => {
  test('is what keeps the risk over both sides, not what may go if the word holds', () => {
    const panel = tested(101);
    const allowed = allowanceAt(panel, UNTRIED_LOG_SD, grounds);
    expect(allowed.boundBy.code).toBe('near-line');
    expect(allowed.budget).toBeCloseTo(panel.otherSide?.overBoth?.workTo ?? Number.NaN, 3);
    expect(allowed.budget).toBeLessThan(panel.budget);
  });

  test('is more where the removal is foretold better', () => {
    const at = (logSd: number) => allowanceAt(tested(102), logSd, grounds).budget;
    expect(at(0.2)).toBeGreaterThan(at(UNTRIED_LOG_SD));
  });

  test('is nothing on film that may be a repaint', () => {
    expect(allowanceAt(tested(150), UNTRIED_LOG_SD, grounds).budget).toBe(0);
  });

  test('is what the survey says where the panel is not near, or as much may go on either side', () => {
    for (const centre of [118, 99]) {
      const panel = tested(centre);
      expect(allowanceAt(panel, UNTRIED_LOG_SD, grounds).budget).toBe(panel.budget);
    }
  });
});
