import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { allowanceAt } from '../../../src/film/limits/allowance-at.ts';
import { topcoatRisk } from '../../../src/film/limits/topcoat-risk.ts';
import type { PanelSurvey } from '../../../src/film/survey.ts';
import { filmModel } from '../../../src/formats/models.ts';
import {
  amongSound,
  fiveAround,
  ifWordHolds,
  onFace,
  standardTerms,
  UNTRIED_LOG_SD,
} from '../car-builder.ts';
import { gridRisk } from '../grid-risk.ts';

const terms = { ...standardTerms, totalFloor: micrometres(1) };
const grounds = { terms, model: filmModel };
const tested = (centre: number) => amongSound(fiveAround('tested', centre), { terms }).panel;
const topcoatOf = ({ topcoat }: PanelSurvey) => {
  if (topcoat === null) throw new Error('factory film has a topcoat');
  return topcoat;
};
const chanceOf = (panel: PanelSurvey, condition: string): number =>
  topcoatOf(panel).besides.find((one) => one.condition === condition)?.chance ?? 0;

describe('what may go from a panel that may be something else', () => {
  test('is the stated risk over all that it may be, by plain sums of its own', () => {
    // Near its line or not: 102, 103 and 105 are cut-back with 14, 6 and .7 %.
    for (const centre of [102, 103, 105]) {
      const panel = tested(centre);
      const { besides, clear, clearFloor } = topcoatOf(panel);
      const [cut] = besides;
      if (cut?.topcoat == null) throw new Error('cut-back film has a topcoat');
      const at = (one: typeof clear) =>
        gridRisk(one.mean, one.sd, clearFloor, panel.budget, UNTRIED_LOG_SD);
      const risk = cut.chance * at(cut.topcoat.clear) + (1 - cut.chance) * at(clear);
      expect(risk).toBeCloseTo(0.05, 5);
      expect(panel.budget).toBeLessThan(ifWordHolds(panel, terms));
    }
  });

  test('counts the chance that the deciding comparison has', () => {
    const panel = tested(102);
    expect(chanceOf(panel, 'cut-back')).toBe(panel.sureness?.deciding.otherSide);
  });

  test('is bound by its line where that is near, and by the clear where it is not', () => {
    expect(tested(102).boundBy.code).toBe('near-line');
    expect(tested(105).boundBy.code).toBe('clear');
    expect(chanceOf(tested(105), 'cut-back')).toBeGreaterThan(0);
  });

  test('holds what may not go for certain where it would be a repaint against the risk whole', () => {
    const panel = amongSound(fiveAround('tested', 146)).panel;
    const chance = chanceOf(panel, 'refinished');
    expect(chance).toBeGreaterThan(0.005);
    expect(chance).toBeLessThan(0.05);
    const { clear, clearFloor } = topcoatOf(panel);
    const own = gridRisk(clear.mean, clear.sd, clearFloor, panel.budget, UNTRIED_LOG_SD);
    expect(chance + (1 - chance) * own).toBeCloseTo(0.05, 5);
    expect(amongSound(fiveAround('tested', 150)).panel.budget).toBe(0);
  });

  test('is the same in the survey and where the plan reckons it anew', () => {
    for (const centre of [102, 105]) {
      const panel = tested(centre);
      const allowed = allowanceAt(panel, UNTRIED_LOG_SD, grounds);
      expect([allowed.budget, allowed.boundBy.code]).toEqual([panel.budget, panel.boundBy.code]);
      // A spread of removal that is not the survey's own, however near.
      const anew = allowanceAt(panel, UNTRIED_LOG_SD * (1 + 1e-6), grounds);
      expect(anew.budget).toBeCloseTo(panel.budget, 3);
    }
  });

  test('is more where the removal is foretold better', () => {
    const at = (logSd: number) => allowanceAt(tested(102), logSd, grounds).budget;
    expect(at(0.2)).toBeGreaterThan(at(UNTRIED_LOG_SD));
  });

  test('is what its word allows far from every line, and where the clear is known by itself', () => {
    const far = tested(118);
    expect([far.budget, topcoatOf(far).besides]).toEqual([ifWordHolds(far, terms), []]);
    const clear = { mean: micrometres(38), sd: micrometres(2), of: 'panel' } as const;
    const { panel } = amongSound(fiveAround('tested', 100.5), { terms, facts: { clear } });
    expect([panel.budget, topcoatOf(panel).besides]).toEqual([ifWordHolds(panel, terms), []]);
  });

  test('counts both sides on film cut back too, so that it is the same on either side of the line', () => {
    // A line 5 µm under the others, of which more may go than nothing even so.
    const model = {
      ...filmModel,
      conditions: { ...filmModel.conditions, cutBack: micrometres(5) },
    };
    const at = (centre: number) => amongSound(fiveAround('tested', centre), { terms, model }).panel;
    const [under, over] = [at(106.999), at(107.001)];
    expect([under.condition, over.condition]).toEqual(['cut-back', 'original']);
    expect(under.budget).toBeGreaterThan(0.5);
    expect(Math.abs(under.budget - over.budget)).toBeLessThan(0.01);
  });
});

/** Allowed film at steps of a tenth of a micrometre, and the largest step in it. */
function sweep(from: number, to: number, of: (centre: number) => number) {
  const count = Math.round((to - from) / 0.1);
  const budgets = Array.from({ length: count + 1 }, (_, i) => of(from + 0.1 * i));
  const steps = budgets.slice(1).map((one, i) => one - (budgets[i] ?? one));
  return { budgets, steps, largest: Math.max(...steps.map(Math.abs)) };
}

describe('what may go, as every point of a panel reads a tenth of a micrometre more', () => {
  const kinds = [
    ['of a history that is known', { facts: { taken: micrometres(0) } }],
    ['of an unknown history', { facts: { taken: null } }],
    ['of an unknown finish', { facts: { finish: 'unknown', taken: null } }],
    ['of single-stage paint', { facts: { finish: 'single-stage-solid' } }],
  ] as const;
  test.each(kinds)('does not jump at the line of film cut back, and never falls, %s', (_, kind) => {
    const swept = sweep(94, 112, (centre) => {
      const { panel } = amongSound(fiveAround('tested', centre), { ...kind, terms });
      return panel.budget;
    });
    // 3 µm are gained over some 4 µm of film about the line.
    expect(Math.max(...swept.budgets)).toBeGreaterThan(2);
    expect(swept.largest).toBeLessThan(0.3);
    expect(Math.min(...swept.steps)).toBeGreaterThan(-1e-3);
  });

  test('does not jump where the chance is too small to be counted', () => {
    const swept = sweep(104, 116, (centre) => tested(centre).budget);
    const at = swept.steps.map((one, i) => ({ one, next: swept.steps[i + 1] ?? one }));
    for (const { one, next } of at) expect(Math.abs(next - one)).toBeLessThan(0.02);
  });

  test('falls without a jump towards the line of a repaint', () => {
    const swept = sweep(
      138,
      154,
      (centre) => amongSound(fiveAround('tested', centre)).panel.budget,
    );
    expect(swept.budgets[0]).toBeGreaterThan(4);
    expect(swept.budgets.at(-1)).toBe(0);
    expect(Math.max(...swept.steps)).toBeLessThan(1e-3);
    // The last of the risk is used up fastest, yet without a jump: a tenth of the step shows a part of the fall.
    const end = swept.budgets.indexOf(0);
    const fine = Array.from({ length: 21 }, (_, i) => 138 + 0.1 * (end - 1) + 0.005 * i).map(
      (centre) => amongSound(fiveAround('tested', centre)).panel.budget,
    );
    const falls = fine.slice(1).map((one, i) => (fine[i] ?? one) - one);
    expect(swept.largest).toBeLessThan(2);
    expect(Math.max(...falls)).toBeLessThan(swept.largest / 3);
  });

  test('does not jump as the smallest point nears the floor of the total', () => {
    const swept = sweep(0, 20, (by) => {
      const points = onFace('tested', 78 + by, 112, 113, 111, 112);
      return amongSound(points).panel.budget;
    });
    expect(swept.budgets[0]).toBe(0);
    expect(swept.largest).toBeLessThan(0.5);
  });
});

describe('the risk of what may go', () => {
  test('is never over the stated risk, whatever the panel reads and whoever knows what', () => {
    const taken = fc.constantFrom(null, 0, 3).map((um) => (um === null ? null : micrometres(um)));
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 900, max: 1500 }), { minLength: 3, maxLength: 7 }),
        taken,
        fc.constantFrom(0.01, 0.05, 0.2),
        (tenths, gone, risk) => {
          const { panel } = amongSound(onFace('tested', ...tenths.map((one) => one / 10)), {
            facts: { taken: gone },
            terms: { risk },
          });
          fc.pre(panel.topcoat !== null && panel.budget > 0);
          const removal = { median: panel.budget, logSd: UNTRIED_LOG_SD };
          expect(topcoatRisk(topcoatOf(panel), removal)).toBeLessThan(risk + 1e-6);
        },
      ),
      { numRuns: 200, seed: 7 },
    );
  });
});
