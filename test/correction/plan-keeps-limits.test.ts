import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { micrometres, millimetres } from '../../src/base/units.ts';
import { isWorked, workedParts } from '../../src/correction/plan/plan.ts';
import { onFace, plainPanel, surveyOf, UNTRIED_LOG_SD } from '../film/car-builder.ts';
import { inFull } from '../in-full.ts';
import { defect, planOf } from './shop.ts';

/** exp(1.6449·σ): the removal's upper 95 % over its median. */
const UPPER = Math.exp(1.6448536 * UNTRIED_LOG_SD);

const aCar = fc.record({
  panels: fc.array(
    fc.record({
      points: fc.array(fc.integer({ min: 70, max: 160 }), { minLength: 1, maxLength: 6 }),
      flatWidth: fc.constantFrom(60, 90, 300, 600),
      substrate: fc.constantFrom(
        'steel' as const,
        'steel' as const,
        'aluminium' as const,
        'plastic' as const,
      ),
      shift: fc.constantFrom(0, 0, 0, 180, 450),
    }),
    { minLength: 1, maxLength: 6 },
  ),
  finish: fc.constantFrom('clear-over-base', 'single-stage-solid', 'lacquer', 'unknown', 'matte'),
  taken: fc.constantFrom(null, 0, 4, 11),
  aim: fc.constantFrom(0.6, 0.85, 0.95),
  hazeAllowed: fc.constantFrom(0, 1),
  grade: fc.integer({ min: 1, max: 5 }),
});

describe('a plan for any car', () => {
  it('keeps every limit of film on every panel and zone it works', () => {
    let workedInAll = 0;
    fc.assert(
      fc.property(aCar, ({ panels, finish, taken, aim, hazeAllowed, grade }) => {
        const survey = surveyOf({
          panels: panels.map(({ flatWidth, substrate }, i) =>
            plainPanel(`p${i}`, { flatWidth: millimetres(flatWidth), substrate }),
          ),
          readings: panels.flatMap(({ points, shift }, i) =>
            onFace(`p${i}`, ...points.map((um) => um + shift)),
          ),
          facts: { finish, taken: taken === null ? null : micrometres(taken) },
        });
        const plan = planOf(survey, {
          aim,
          hazeAllowed,
          defectsOf: () => [defect('swirl-marks', grade)],
        });
        for (const part of workedParts(plan).filter(isWorked)) {
          workedInAll += 1;
          const { statistics, facts, panel, condition } = part.survey;
          const worst = part.removal.median * UPPER;
          const life = facts.finish === 'single-stage-solid' ? 25.4 : 12.7;
          const floor = facts.finish === 'clear-over-base' || facts.finish === 'unknown' ? 80 : 60;
          expect(part.risk).toBeLessThanOrEqual(0.05 + 1e-9);
          expect(worst).toBeLessThanOrEqual(life - (taken ?? 4) + 1e-6);
          expect((statistics?.min ?? 0) - worst).toBeGreaterThanOrEqual(floor - 1e-6);
          expect(facts.finish).not.toBe('matte');
          expect(['original', 'thin', 'cut-back']).toContain(condition);
          expect(part.survey.points.length).toBeGreaterThan(1);
          expect(panel.substrate).not.toBe('plastic');
          const last = part.steps.at(-1)?.combination;
          expect(last?.machine.motion.kind).not.toBe('rotary');
          expect(last?.haze).toBeLessThanOrEqual(hazeAllowed);
          for (const { combination } of part.steps) {
            const fits =
              combination.machine.id === 'hand' ||
              combination.machine.padDiameter <= panel.flatWidth;
            expect(fits).toBe(true);
          }
        }
      }),
      { numRuns: 400, seed: 11 },
    );
    if (inFull) expect(workedInAll).toBeGreaterThan(20);
  });
});
