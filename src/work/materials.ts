/** What a job uses up, stage by stage and in all. */

import { groupBy } from '../base/group-by.ts';
import { sum } from '../base/sum.ts';
import type { Pad } from '../correction/removal/catalogue.ts';
import type { Polishing } from './polishing.ts';
import type { JobStage, MaterialUnit, StageUse, WorkModel } from './work-model.ts';

export type Material = {
  /** By which a price list names it: a product's id, a pad's with its diameter, else a word of its own. */
  readonly id: string;
  /** For people. */
  readonly material: string;
  /** Pieces are whole ones in a sum, and shares of one in a single stage. */
  readonly quantity: number;
  readonly unit: MaterialUnit;
};

/** What wipes: washed after a job, and used again. */
export const TOWELS = 'towels';

/** Pads of one kind: how many lie ready, and how many of them the job wears out. */
export type PadUse = {
  readonly id: string;
  readonly material: string;
  readonly ready: number;
  readonly wornOut: number;
};

/** What there is of whatever supplies are counted by. */
export type Amounts = Readonly<Record<StageUse['per'], number>>;

export const suppliesOf = ({ uses }: JobStage, amounts: Amounts): readonly Material[] =>
  uses.map(({ id, material, unit, quantity, per }) => ({
    id,
    material,
    unit,
    quantity: quantity * amounts[per],
  }));

/** Product, pads and towels of the polishing, by the stage that first asks for each combination. */
export function polishingMaterials(
  polishing: readonly Polishing[],
  { materials }: WorkModel,
): ReadonlyMap<string, readonly Material[]> {
  const groups = [...groupBy(polishing, ({ step }) => step.combination.id).values()];
  const used = groups.flatMap((group): readonly (readonly [string, Material])[] => {
    const [first] = group;
    const { product } = first.step.combination;
    const pads = padsFor(group, materials);
    const area = sum(group.map(({ step, area }) => step.sets * area));
    const quantity = pads * materials.productFirstLoad + area * materials.productPerSet;
    const { id, material } = padOf(first);
    return [
      [first.stage, { id: product.id, material: product.name, quantity, unit: 'ml' }],
      [first.stage, { id, material, quantity: pads, unit: 'pieces' }],
    ];
  });
  const towels = polishing.map(({ stage, sections }): readonly [string, Material] => [
    stage,
    {
      id: TOWELS,
      material: 'towels',
      quantity: sections / materials.sectionsPerTowel,
      unit: 'pieces',
    },
  ]);
  const byStage = groupBy([...used, ...towels], ([stage]) => stage);
  return new Map(
    [...byStage].map(([stage, list]) => [
      stage,
      totals(
        list.map(([, one]) => one),
        false,
      ),
    ]),
  );
}

/** Pads to have ready: one for so many panels, and never fewer than the work wears out. */
const padsFor = (
  group: readonly Polishing[],
  { panelsPerPad, padLife }: WorkModel['materials'],
): number =>
  Math.max(Math.ceil(group.length / panelsPerPad), Math.ceil(sectionsOf(group) / padLife));

const sectionsOf = (group: readonly Polishing[]): number =>
  sum(group.map(({ sections }) => sections));

const padOf = ({ step: { combination } }: Polishing): Pick<Material, 'id' | 'material'> =>
  padMaterial(combination.pad, combination.machine.padDiameter);

export const padMaterial = (
  { id, name }: Pick<Pad, 'id' | 'name'>,
  diameter: number,
): Pick<Material, 'id' | 'material'> => ({
  id: `${id}-${diameter}`,
  material: `${/pad$/i.test(name) ? name : `${name} pad`} ${diameter}\u00a0mm`,
});

/** How many pads of each kind lie ready, and how much of their life the job takes. */
export function padUses(
  polishing: readonly Polishing[],
  { materials }: WorkModel,
): readonly PadUse[] {
  const groups = [...groupBy(polishing, (one) => padOf(one).id).values()];
  return groups.map((group) => {
    const kinds = [...groupBy(group, ({ step }) => step.combination.id).values()];
    const { id, material } = padOf(group[0]);
    return {
      id,
      material,
      ready: sum(kinds.map((kind) => padsFor(kind, materials))),
      wornOut: sectionsOf(group) / materials.padLife,
    };
  });
}

/** One line a material; of what is counted in pieces, whole ones where they are to be bought. */
export function totals(list: readonly Material[], whole: boolean): readonly Material[] {
  const groups = groupBy(list, ({ id, material }) => `${id}\n${material}`);
  return [...groups.values()].map((group) => {
    const [{ id, material, unit }] = group;
    const quantity = sum(group.map((one) => one.quantity));
    const pieces = whole && unit === 'pieces';
    return { id, material, quantity: pieces ? Math.ceil(quantity - 1e-9) : quantity, unit };
  });
}
