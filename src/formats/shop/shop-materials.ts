/**
 * The materials of a price list against what a job can use up: consumables of the stages, the shop's
 * products, its pads by diameter. A price in a unit that nothing is counted in is refused. What no job
 * uses is the shop's own affair, unless it is likely a slip of the pen.
 */
import { suggest } from '../../base/did-you-mean.ts';
import type { MaterialUnit } from '../../work/work-model.ts';
import { correctionModel, workModel } from '../models.ts';
import type { Owned } from './shop-rates.ts';

export type PricedMaterial = { readonly id: string; readonly unit: MaterialUnit };

export type MaterialFault = { readonly message: string; readonly hint: string };

type OwnedThings = Pick<Owned, 'pads' | 'products'>;

const PAD = /^(.+)-(\d{2,3})$/;

/** What is wrong with the unit of a material that jobs use. */
export function unitFault(
  { id, unit }: PricedMaterial,
  owned: OwnedThings,
): MaterialFault | undefined {
  const right = unitOf(id, owned);
  return right === undefined || right === unit
    ? undefined
    : {
        message: `is ${unit}, and ${id} is counted in ${right}`,
        hint: `say what a pack holds in ${right}`,
      };
}

/** Of the price list of a shop, by its place in it, what no job uses, and so none is charged for. */
export type UnusedMaterial = {
  readonly index: number;
  readonly id: string;
  /** What was likely meant; undefined of what the shop keeps there for itself. */
  readonly meant: string | undefined;
};

export const unusedMaterials = (
  listed: readonly Pick<PricedMaterial, 'id'>[],
  owned: OwnedThings,
): readonly UnusedMaterial[] =>
  listed.flatMap(({ id }, index) =>
    unitOf(id, owned) === undefined ? [{ index, id, meant: meantBy(id, owned) }] : [],
  );

function unitOf(id: string, owned: OwnedThings): MaterialUnit | undefined {
  const [, pad = ''] = PAD.exec(id) ?? [];
  return (
    usedUnits(productsOf(owned)).get(id) ?? (padsOf(owned).includes(pad) ? 'pieces' : undefined)
  );
}

const productsOf = ({ products }: OwnedThings): readonly string[] =>
  products ?? correctionModel.products.map((one) => one.id);

const padsOf = ({ pads }: OwnedThings): readonly string[] =>
  pads ?? correctionModel.pads.map((one) => one.id);

function usedUnits(products: readonly string[]): ReadonlyMap<string, MaterialUnit> {
  const consumables = workModel.stages.flatMap(({ uses }) =>
    uses.map(({ id, unit }) => [id, unit] as const),
  );
  return new Map<string, MaterialUnit>([
    ...consumables,
    ['towels', 'pieces'],
    ...products.map((id) => [id, 'ml'] as const),
  ]);
}

function meantBy(id: string, owned: OwnedThings): string | undefined {
  const pads = padsOf(owned);
  if (pads.includes(id)) return `a pad is named with its diameter in mm: "${id}-150"`;
  const used = [...usedUnits(productsOf(owned)).keys()];
  const [, pad = '', size = ''] = PAD.exec(id) ?? [];
  return suggest(id, [...used, ...pads.map((one) => `${one}-${pad === '' ? 150 : size}`)]);
}
