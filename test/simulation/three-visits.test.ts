import { describe, expect, it } from 'vitest';
import { runVisits } from './visits.ts';

const CARS = 150;
const SEED = 7_310;
const STATED_RISK = 0.05;

describe(`${CARS} cars never polished, at three visits with a film record`, () => {
  const visits = runVisits(3, CARS, SEED);

  it.each([0, 1, 2])('keep within the stated risk on the panels worked at visit %d', (at) => {
    const { worked, breached, overLife } = visits[at] ?? { worked: 0, breached: 0, overLife: 0 };
    expect(worked).toBeGreaterThan(50);
    expect(breached / worked).toBeLessThanOrEqual(STATED_RISK);
    expect(overLife / worked).toBeLessThanOrEqual(STATED_RISK);
  });

  it('are worked on fewer panels each time, as what is gone is gone', () => {
    const worked = visits.map((visit) => visit.worked);
    expect(worked).toEqual([...worked].sort((a, b) => b - a));
    expect(new Set(worked).size).toBe(3);
  });
});

describe('the same cars without their record', () => {
  it('end under a limit more often at the third visit: the record is what keeps them', () => {
    const [, , kept] = runVisits(3, CARS, SEED);
    const [, , lost] = runVisits(3, CARS, SEED, false);
    const bad = (count: typeof kept): number =>
      ((count?.breached ?? 0) + (count?.overLife ?? 0)) / (count?.worked ?? 1);
    expect(bad(lost)).toBeGreaterThan(2 * bad(kept));
    expect(bad(lost)).toBeGreaterThan(STATED_RISK);
  });
});
