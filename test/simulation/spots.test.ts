import { describe, expect, it } from 'vitest';
import { runSpottedCars } from './spotted-cars.ts';

const world = {
  clearMean: 42,
  underMean: 70,
  clearSpread: 'points',
  carShare: 0.5,
  softness: 1,
  film: 'normal',
} as const;

/** An aim that the limits let few panels reach, so that what binds is the risk. */
const AIM = 95;

describe('150 cars whose film and paint are known, at a risk of 5 % and an aim of 95 %', () => {
  const { without, withSpots } = runSpottedCars(world, AIM, 150, 5);

  it('end no more panels under the floor than the plans state, without test spots and with one', () => {
    for (const { worked, breached, stated } of [without, withSpots]) {
      expect(worked).toBeGreaterThan(400);
      expect(breached / worked).toBeLessThanOrEqual(0.05);
      expect(breached / worked).toBeLessThanOrEqual(stated / worked);
    }
  });

  it('clear at least two points more of the marks after one test spot, for no more film', () => {
    const gain = (withSpots.corrected - without.corrected) / without.panels;
    expect(gain).toBeGreaterThan(0.02);
    expect(withSpots.removed).toBeLessThan(1.03 * without.removed);
  });
});
