/** Whatever a job may use up, by the ids of a price list, and what its amount goes by. */
import { groupBy } from '../base/group-by.ts';
import type { Machine, Pad, Product } from '../correction/removal/catalogue.ts';
import { padMaterial, TOWELS } from './materials.ts';
import type { MaterialUnit, StageUse, WorkModel } from './work-model.ts';

/** So much of it, in its unit, for each job, wheel, m², m of tape, set on a m², fresh pad or section. */
export type SupplyUse = {
  readonly quantity: number;
  readonly per: StageUse['per'] | 'set-area' | 'fresh-pad' | 'section';
};

export type Supply = {
  readonly id: string;
  readonly material: string;
  readonly unit: MaterialUnit;
  readonly uses: readonly SupplyUse[];
  /** The stages that ask for it; none of what polishing takes. */
  readonly stages: readonly string[];
};

type Owned = {
  readonly machines: readonly Machine[];
  readonly pads: readonly Pad[];
  readonly products: readonly Product[];
};

export const supplies = (
  model: Pick<WorkModel, 'stages' | 'materials'>,
  owned: Owned,
): readonly Supply[] => [
  ...ofStages(model),
  ...owned.products.map((one) => productSupply(one, model.materials)),
  ...padsOf(owned).map((pad) => ({
    ...pad,
    unit: 'pieces' as const,
    uses: [{ quantity: 1 / model.materials.padLife, per: 'section' as const }],
    stages: [],
  })),
  {
    id: TOWELS,
    material: 'towels',
    unit: 'pieces',
    uses: [{ quantity: 1 / model.materials.sectionsPerTowel, per: 'section' }],
    stages: [],
  },
];

/** A material of several stages once, with each amount that any of them takes. */
function ofStages({ stages }: Pick<WorkModel, 'stages'>): readonly Supply[] {
  const all = stages.flatMap(({ name, uses }) => uses.map((use) => ({ name, use })));
  return [...groupBy(all, ({ use }) => use.id).values()].map((group) => {
    const [{ use }] = group;
    const different = groupBy(group, (one) => `${one.use.quantity} ${one.use.per}`);
    return {
      ...{ id: use.id, material: use.material, unit: use.unit },
      uses: [...different.values()].map(([one]) => ({
        quantity: one.use.quantity,
        per: one.use.per,
      })),
      stages: group.map(({ name }) => name),
    };
  });
}

const productSupply = ({ id, name }: Product, materials: WorkModel['materials']): Supply => ({
  ...{ id, material: name, unit: 'ml' },
  uses: [
    { quantity: materials.productPerSet, per: 'set-area' },
    { quantity: materials.productFirstLoad, per: 'fresh-pad' },
  ],
  stages: [],
});

/** A pad of each size that a machine takes. */
function padsOf({ machines, pads }: Owned) {
  const sizes = [...new Set(machines.map(({ padDiameter }) => padDiameter))];
  return pads.flatMap((pad) => sizes.map((size) => padMaterial(pad, size)));
}
