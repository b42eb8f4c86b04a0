/**
 * The materials of a price list against what a job can use up: consumables of the stages, the shop's
 * products, its pads by diameter. A price that nothing is ever charged at is refused.
 */
import { suggest } from '../../base/did-you-mean.ts';
import type { MaterialUnit } from '../../work/work-model.ts';
import { quoted } from '../json/shorten.ts';
import { correctionModel, workModel } from '../models.ts';
import type { Owned } from './shop-rates.ts';

export type PricedMaterial = { readonly id: string; readonly unit: MaterialUnit };

export type MaterialFault = {
  readonly key: 'id' | 'unit';
  readonly message: string;
  readonly hint: string;
};

const PAD = /^(.+)-(\d{2,3})$/;

export function materialFault(
  { id, unit }: PricedMaterial,
  owned: Pick<Owned, 'pads' | 'products'>,
): MaterialFault | undefined {
  const products = owned.products ?? correctionModel.products.map((one) => one.id);
  const pads = owned.pads ?? correctionModel.pads.map((one) => one.id);
  const used = usedUnits(products);
  const [, pad = ''] = PAD.exec(id) ?? [];
  const right = used.get(id) ?? (pads.includes(pad) ? 'pieces' : undefined);
  if (right === undefined) {
    const message = `names ${quoted(id)}, which no job uses`;
    return { key: 'id', message, hint: idHint(id, [...used.keys()], pads) };
  }
  return right === unit
    ? undefined
    : {
        key: 'unit',
        message: `is ${unit}, and ${id} is counted in ${right}`,
        hint: `say what a pack holds in ${right}`,
      };
}

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

function idHint(id: string, used: readonly string[], pads: readonly string[]): string {
  if (pads.includes(id)) return `a pad is named with its diameter in mm: "${id}-150"`;
  return (
    suggest(id, [...used, ...pads.map((pad) => `${pad}-150`)]) ??
    'leastcut methods materials lists every id'
  );
}
