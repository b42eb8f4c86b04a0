import { describe, expect, it } from 'vitest';
import { isTouched, isWorked, workedParts } from '../../../src/correction/plan/plan.ts';
import { defect } from '../shop.ts';
import { combination } from '../spot-trials.ts';

type Touched = Parameters<typeof isTouched>[0];

const untouched: Touched = { steps: [], zones: [], local: [] };
const steps = [
  {
    combination: combination('da/foam-medium/medium'),
    sets: 1,
    removal: 1,
    machineTime: 1,
  },
] as unknown as Touched['steps'];
const zone = (rest: Partial<Touched>) =>
  ({ ...untouched, ...rest }) as unknown as Touched['zones'][number];
const spot = (worked: Touched['steps']) =>
  ({ defect: defect('deep-scratches', 2), steps: worked }) as Touched['local'][number];

describe('a panel', () => {
  it('is worked where steps go over it, or over one of its zones', () => {
    expect(isWorked(untouched)).toBe(false);
    expect(isWorked({ ...untouched, steps })).toBe(true);
    expect(isWorked({ ...untouched, zones: [zone({}), zone({ steps })] })).toBe(true);
    expect(isWorked({ ...untouched, zones: [zone({}), zone({})] })).toBe(false);
  });

  it('is touched where it is worked, or one place of it, and not where a defect was left', () => {
    expect(isTouched(untouched)).toBe(false);
    expect(isTouched({ ...untouched, steps })).toBe(true);
    expect(isTouched({ ...untouched, local: [spot([])] })).toBe(false);
    expect(isTouched({ ...untouched, local: [spot([]), spot(steps)] })).toBe(true);
  });
});

describe('the parts of a car that are worked by themselves', () => {
  type Panels = Parameters<typeof workedParts>[0]['panels'];
  const [thinner, thicker] = [zone({}), zone({})];
  const whole = untouched as Panels[number];
  const halved = { ...whole, zones: [thinner, thicker] };

  it('are its panels, or the zones of one in two', () => {
    expect(workedParts({ panels: [whole, whole] })).toEqual([whole, whole]);
    const parts = workedParts({ panels: [whole, halved] });
    expect(parts).toHaveLength(3);
    expect(parts[0]).toBe(whole);
    expect(parts[1]).toBe(thinner);
    expect(parts[2]).toBe(thicker);
  });
});
