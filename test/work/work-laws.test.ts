import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { squareMetres } from '../../src/base/units.ts';
import { workModel } from '../../src/formats/models.ts';
import { estimateWork } from '../../src/work/estimate-work.ts';
import type { JobScope } from '../../src/work/job-scope.ts';
import { jobTimeQuantile } from '../../src/work/job-time.ts';
import { FINE, MEDIUM, panel, plan, step } from './small-plans.ts';

const anyStep = fc.record({
  id: fc.constantFrom(MEDIUM, FINE, 'rotary/wool/heavy', 'hand/foam-medium/medium'),
  sets: fc.integer({ min: 1, max: 3 }),
  time: fc.integer({ min: 1, max: 400 }),
});
const anyPlan = fc
  .array(
    fc.record({
      sections: fc.integer({ min: 1, max: 60 }),
      facing: fc.constantFrom('horizontal', 'vertical', 'low' as const),
      steps: fc.array(anyStep, { maxLength: 3 }),
    }),
    { minLength: 1, maxLength: 5 },
  )
  .map((panels) =>
    plan(
      ...panels.map(({ sections, facing, steps }, i) =>
        panel(
          `panel-${i}`,
          sections,
          steps.map(({ id, sets, time }) => step(id, sets, time)),
          { facing: facing as 'horizontal' },
        ),
      ),
    ),
  );
const anyScope: fc.Arbitrary<JobScope> = fc.record({
  wheels: fc.constantFrom('on', 'off', 'none'),
  shuts: fc.boolean(),
  decontamination: fc.constantFrom('full', 'chemical', 'clay', 'none'),
  trim: fc.boolean(),
  engineBay: fc.boolean(),
  interior: fc.boolean(),
  glass: fc.boolean(),
  protection: fc.constantFrom('none', 'wax', 'sealant', 'coating'),
  soiling: fc.constantFrom('light', 'usual', 'heavy'),
  hands: fc.integer({ min: 1, max: 4 }),
  hoursPerDay: fc.integer({ min: 4, max: 12 }),
  order: fc.constant(null),
});
const anyArea = fc.double({ min: 8, max: 30, noNaN: true }).map(squareMetres);

describe('the work of every plan and scope', () => {
  it('exposes no hand beyond the limit on any day', () => {
    fc.assert(
      fc.property(anyPlan, anyScope, anyArea, (one, scope, vehicleArea) => {
        const { days } = estimateWork(one, workModel, { scope, vehicleArea });
        for (const { points } of days) {
          expect(Math.max(...points)).toBeLessThanOrEqual(400 + 1e-6);
        }
      }),
    );
  });

  it('never gets shorter, nor less, by a part more in its scope', () => {
    fc.assert(
      fc.property(
        anyPlan,
        anyScope,
        anyArea,
        fc.constantFrom('shuts', 'trim', 'engineBay', 'interior', 'glass'),
        (one, scope, vehicleArea, part) => {
          const without = estimateWork(one, workModel, {
            scope: { ...scope, [part]: false },
            vehicleArea,
          });
          const more = estimateWork(one, workModel, {
            scope: { ...scope, [part]: true },
            vehicleArea,
          });
          for (const p of [0.5, 0.8, 0.95]) {
            expect(jobTimeQuantile(more.job.time, p)).toBeGreaterThan(
              jobTimeQuantile(without.job.time, p),
            );
          }
          expect(more.days.length).toBeGreaterThanOrEqual(without.days.length);
          expect(more.time).toEqual(without.time);
        },
      ),
    );
  });

  it('is not in the bay for longer with one person more', () => {
    fc.assert(
      fc.property(anyPlan, anyScope, anyArea, (one, scope, vehicleArea) => {
        const alone = estimateWork(one, workModel, { scope, vehicleArea });
        const more = estimateWork(one, workModel, {
          scope: { ...scope, hands: scope.hands + 1 },
          vehicleArea,
        });
        expect(more.days.length).toBeLessThanOrEqual(alone.days.length);
        expect(more.daysP80).toBeLessThanOrEqual(alone.daysP80);
        expect(more.job).toEqual(alone.job);
      }),
    );
  });

  it('is the longer, the dirtier the vehicle comes in', () => {
    fc.assert(
      fc.property(anyPlan, anyScope, anyArea, (one, scope, vehicleArea) => {
        const [light, usual, heavy] = (['light', 'usual', 'heavy'] as const).map(
          (soiling) =>
            estimateWork(one, workModel, { scope: { ...scope, soiling }, vehicleArea }).job.time
              .median,
        );
        expect(light).toBeLessThan(usual ?? 0);
        expect(usual).toBeLessThan(heavy ?? 0);
      }),
    );
  });

  it('uses up in all what its stages use up, whole pieces rounded up', () => {
    fc.assert(
      fc.property(anyPlan, anyScope, (one, scope) => {
        const { stages, jobMaterials } = estimateWork(one, workModel, { scope });
        for (const { id, quantity, unit } of jobMaterials) {
          const parts = stages.flatMap(({ materials }) => materials.filter((m) => m.id === id));
          const sum = parts.reduce((total, part) => total + part.quantity, 0);
          expect(quantity).toBeGreaterThanOrEqual(sum - 1e-6);
          expect(quantity).toBeLessThan(sum + (unit === 'pieces' ? 1 : 1e-6));
        }
      }),
    );
  });
});
