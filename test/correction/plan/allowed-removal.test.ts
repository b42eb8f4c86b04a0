import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { allowedRemoval, heldTo } from '../../../src/correction/plan/allowed-removal.ts';
import { amongSound, fiveAround } from '../../film/car-builder.ts';

describe('the ln-SD that a removal is held to', () => {
  it('is the next whole step of .005 above its own', () => {
    expect(heldTo(0.5023, 0.6)).toBeCloseTo(0.505, 12);
    expect(heldTo(0.0001, 0.6)).toBeCloseTo(0.005, 12);
  });

  it('is never under its own, and none of more than the least sure of all', () => {
    expect(heldTo(0.5523, 0.5523)).toBe(0.5523);
    for (const logSd of [0.15, 0.2049, 0.333, 0.5513, 0.5521]) {
      expect(heldTo(logSd, 0.5523)).toBeGreaterThanOrEqual(logSd - 1e-12);
      expect(heldTo(logSd, 0.5523)).toBeLessThanOrEqual(0.5523);
      expect(heldTo(logSd, 0.5523)).toBeLessThan(logSd + 0.005);
    }
  });
});

describe('what a part allows at an ln-SD', () => {
  it('is its budget there, which is reckoned once', () => {
    const { panel } = amongSound(fiveAround('tested', 112));
    const asked: number[] = [];
    const allowed = allowedRemoval(panel, (part, logSd) => {
      expect(part).toBe(panel);
      asked.push(logSd);
      return { budget: micrometres(1 / logSd) };
    });
    expect([0.5, 0.25, 0.5, 0.5].map(allowed)).toEqual([2, 4, 2, 2]);
    expect(asked).toEqual([0.5, 0.25]);
  });
});
