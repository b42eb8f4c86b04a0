import { expect, test } from 'vitest';
import { correctionModel, workModel } from '../../src/formats/models.ts';
import { unitFault, unusedMaterials } from '../../src/formats/shop/shop-materials.ts';
import { padMaterial } from '../../src/work/materials.ts';
import { supplies } from '../../src/work/supplies.ts';

const listed = () => {
  const all = supplies(workModel, correctionModel);
  return { all, byId: new Map(all.map((one) => [one.id, one])) };
};

test('every material stands once, and a price list takes it as it is listed', () => {
  const { all, byId } = listed();
  expect(byId.size).toBe(all.length);
  const owned = { pads: undefined, products: undefined };
  expect(unusedMaterials(all, owned)).toEqual([]);
  for (const { id, unit } of all) expect(unitFault({ id, unit }, owned), id).toBeUndefined();
});

test('what any stage uses is listed, with each amount that a stage takes and the stages', () => {
  const { byId } = listed();
  for (const { name, uses } of workModel.stages) {
    for (const { id, quantity, per } of uses) {
      expect(byId.get(id)?.uses, id).toContainEqual({ quantity, per });
      expect(byId.get(id)?.stages, id).toContain(name);
    }
  }
  expect(byId.get('wheel-cleaner')?.uses).toEqual([{ quantity: 60, per: 'wheels' }]);
});

test('products, towels and a pad for each size of machine stand beside them', () => {
  const { all, byId } = listed();
  expect(byId.get('fine')?.uses).toEqual([
    { quantity: 8, per: 'set-area' },
    { quantity: 6, per: 'fresh-pad' },
  ]);
  expect(byId.get('towels')?.uses).toEqual([{ quantity: 1 / 8, per: 'section' }]);
  expect(all.filter(({ id }) => id.startsWith('wool-')).map(({ id }) => id)).toEqual([
    'wool-150',
    'wool-75',
    'wool-100',
  ]);
  expect(byId.get('wool-75')).toMatchObject({
    material: 'wool pad 75\u00a0mm',
    unit: 'pieces',
    uses: [{ quantity: 1 / 120, per: 'section' }],
    stages: [],
  });
});

test('a pad that is called one by its shop is not called one twice', () => {
  expect(padMaterial({ id: 'orange', name: 'orange pad' }, 150).material).toBe(
    'orange pad 150\u00a0mm',
  );
  expect(padMaterial({ id: 'orange', name: 'orange' }, 150).material).toBe(
    'orange pad 150\u00a0mm',
  );
});

test('a shop that has one machine, one pad and one product is shown no others', () => {
  const { machines, pads, products } = correctionModel;
  const own = {
    machines: machines.slice(1, 2),
    pads: pads.slice(0, 1),
    products: products.slice(0, 1),
  };
  const ids = supplies(workModel, own).map(({ id }) => id);
  expect(ids).toContain('foam-soft-150');
  expect(ids.filter((id) => /-\d+$/.test(id))).toEqual(['foam-soft-150']);
  expect(ids).not.toContain('heavy');
});
