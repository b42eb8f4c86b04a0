import { describe, expect, it } from 'vitest';
import { squareMetres } from '../../../src/base/units.ts';
import type { CorrectionModel } from '../../../src/correction/removal/catalogue.ts';
import { ladder } from '../../../src/correction/removal/combination.ts';
import {
  contactPressure,
  removalPerSet,
  setTime,
  slidingSpeed,
} from '../../../src/correction/removal/removal-rate.ts';
import { correctionModel } from '../../../src/formats/models.ts';

const pick = <T extends { readonly id: string }>(list: readonly T[], id: string): T => {
  const found = list.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no ${id}`);
  return found;
};
const machine = (id: string) => pick(correctionModel.machines, id);
const parts = (id: string) => {
  const [name = '', pad = '', product = ''] = id.split('/');
  return {
    machine: machine(name),
    pad: pick(correctionModel.pads, pad),
    product: pick(correctionModel.products, product),
  };
};
const rate = (id: string): number => removalPerSet(parts(id), correctionModel.removal);
/** A section of Nissan 94-015, the largest it lets one work at a time. */
const SECTION = squareMetres(0.61 * 0.61);
const sectionMinutes = (id: string): number =>
  setTime(machine(id), SECTION, correctionModel.removal);

describe('the removal of one set by Preston’s law (1927)', () => {
  // The project's own check values, worked out by hand from the stated machines.
  it.each([
    ['da/foam-soft/fine', 0.282],
    ['da/foam-medium/medium', 0.897],
    ['da/microfibre/heavy', 2.017],
    ['rotary/foam-soft/heavy', 1.401],
    ['rotary/wool/heavy', 3.402],
  ])('with %s is %d µm', (id, um) => {
    expect(rate(id)).toBeCloseTo(um, 3);
  });

  it('is 2.38 times faster per minute by rotary than by dual action, with the same pad and product', () => {
    const perMinute = (id: string): number => rate(`${id}/foam-medium/medium`) / sectionMinutes(id);
    expect(perMinute('rotary') / perMinute('da')).toBeCloseTo(2.38, 2);
  });

  it('by hand is about .08 µm with a medium pad and product', () => {
    expect(rate('hand/foam-medium/medium')).toBeCloseTo(0.08, 2);
  });

  it('is in proportion to the paint’s softness', () => {
    const soft = removalPerSet(parts('da/foam-firm/heavy'), correctionModel.removal, 1.5);
    expect(soft).toBeCloseTo(1.5 * rate('da/foam-firm/heavy'), 12);
  });
});

describe('the time of one set', () => {
  it.each([
    ['rotary', 2.8],
    ['da', 4.4],
  ])('by %s is %d minutes a section', (id, minutes) => {
    expect(sectionMinutes(id)).toBeCloseTo(minutes, 1);
  });

  it('by hand is 2 minutes for every .09 m²', () => {
    expect(setTime(machine('hand'), squareMetres(0.9), correctionModel.removal)).toBeCloseTo(
      20,
      12,
    );
  });
});

describe('pressure and speed under the pad', () => {
  it('are 2773 Pa for 49 N on 150 mm', () => {
    // 49/(π·.15²/4) = 49/.0176715 = 2772.8
    expect(contactPressure(machine('da'))).toBeCloseTo(2772.8, 1);
  });

  it('are two thirds of the rim’s speed by rotary: 7.854 m/s at 1500 rpm on 150 mm', () => {
    // (2/3)·2π·25·.075
    expect(slidingSpeed(machine('rotary'))).toBeCloseTo(7.854, 3);
  });

  it('are π·throw·f by orbit: 3.299 m/s for 15 mm at 4200 a minute', () => {
    expect(slidingSpeed(machine('da'))).toBeCloseTo(Math.PI * 0.015 * 70, 9);
  });

  it('add the forced rotation as the root of both squares', () => {
    // Orbit π·.008·80 = 2.0106, rotation (2/3)·2π·8·.075 = 2.5133
    expect(slidingSpeed(machine('da-forced'))).toBeCloseTo(Math.hypot(2.0106, 2.5133), 3);
  });
});

describe('the ladder of combinations', () => {
  const haze = (id: string): number => pick(ladder(correctionModel), id).haze;

  it('holds every machine with every pad and product once, mildest first', () => {
    const rungs = ladder(correctionModel);
    expect(rungs).toHaveLength(5 * 5 * 3);
    expect(new Set(rungs.map(({ id }) => id)).size).toBe(75);
    expect(rungs.map(({ rung }) => rung)).toEqual(rungs.map((_, i) => i));
    expect(rungs.every(({ perSet }, i) => perSet >= (rungs[i - 1]?.perSet ?? 0))).toBe(true);
  });

  it('breaks a tie by name, whatever the order of the catalogue', () => {
    const twin = (id: string) => ({ ...machine('da'), id });
    const model: CorrectionModel = {
      ...correctionModel,
      machines: [twin('b'), twin('a')],
      pads: [pick(correctionModel.pads, 'foam-soft')],
      products: [pick(correctionModel.products, 'fine')],
    };
    expect(ladder(model).map(({ id }) => id)).toEqual(['a/foam-soft/fine', 'b/foam-soft/fine']);
  });

  it('knows what haze each leaves', () => {
    expect(haze('rotary/foam-medium/heavy')).toBe(4);
    expect(haze('rotary/foam-medium/medium')).toBe(3);
    expect(haze('rotary/foam-soft/fine')).toBe(2);
    expect(haze('da/microfibre/fine')).toBe(3);
    expect(haze('da/wool/fine')).toBe(3);
    expect(haze('rotary/microfibre/heavy')).toBe(4);
    expect(haze('da/foam-medium/heavy')).toBe(2);
    expect(haze('da/foam-medium/medium')).toBe(1);
    expect(haze('da/foam-medium/fine')).toBe(1);
    expect(haze('da/foam-soft/fine')).toBe(0);
  });

  it('is that of a product of the shop’s own, as the shop states it', () => {
    const own = { id: 'own-brand', name: 'own', factor: 1.2, haze: 2, stages: ['cut'] as const };
    const model = { ...correctionModel, machines: [machine('da')], products: [own] };
    expect(pick(ladder(model), 'da/foam-soft/own-brand').haze).toBe(2);
  });
});
