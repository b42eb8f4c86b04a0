/** How many points are marked, so that what may go can be told when they are read again. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { marksFor, seenAtOnePoint } from '../../../src/tasks/plan/marked-points.ts';
import type { PlanResult } from '../../../src/tasks/plan/plan-vehicle.ts';

const result = { settings: { film: filmModel } } as unknown as PlanResult;
const seen = seenAtOnePoint(result);

describe('points to mark on a panel', () => {
  test('are as few as show by their mean the loss of what may go, and no more than nine', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 20, noNaN: true }), (mayGo) => {
        const marks = marksFor(micrometres(mayGo), result);
        expect(Number.isInteger(marks) && marks >= 1 && marks <= 9).toBe(true);
        if (marks < 9) expect(seen / Math.sqrt(marks)).toBeLessThanOrEqual(mayGo + 1e-9);
        if (marks > 1) expect(seen / Math.sqrt(marks - 1)).toBeGreaterThan(mayGo);
      }),
    );
  });

  test('follow from what one point shows: 1.96·√2 of the repeatability of 1.5 µm', () => {
    expect(seen).toBeCloseTo(4.158, 3);
    expect([4.2, 3.5, 2.2, 1.2].map((one) => marksFor(micrometres(one), result))).toEqual([
      1, 2, 4, 9,
    ]);
    expect(marksFor(micrometres(0), result)).toBe(1);
  });
});
