import type { Micrometres } from '../base/units.ts';
import type { CorrectionModel, Machine, Pad, Product } from './catalogue.ts';
import { removalPerSet } from './removal-rate.ts';

/** A machine with a pad and a product, and what one set of it takes and leaves. */
export type Combination = {
  readonly id: string;
  readonly machine: Machine;
  readonly pad: Pad;
  readonly product: Product;
  /** Median removal of one set. */
  readonly perSet: Micrometres;
  /** Haze or holograms it leaves: 0 mirror … 4 heavy. */
  readonly haze: number;
  /** Place on the ladder, 0 the mildest. */
  readonly rung: number;
};

/** All combinations of the shop's own things, mildest first by removal per set, then by name. */
export function ladder(model: CorrectionModel, hardness = 1): readonly Combination[] {
  return model.machines
    .flatMap((machine) =>
      model.pads.flatMap((pad) =>
        model.products.map((product) => ({
          id: `${machine.id}/${pad.id}/${product.id}`,
          machine,
          pad,
          product,
          perSet: removalPerSet({ machine, pad, product }, model.removal, hardness),
          haze: hazeLeft(machine, pad, product),
        })),
      ),
    )
    .sort((a, b) => a.perSet - b.perSet || (a.id < b.id ? -1 : 1))
    .map((combination, rung) => ({ ...combination, rung }));
}

/**
 * Haze grade that a combination leaves (assumption): rotary with compound 4, holograms; rotary with
 * polish 3; microfibre or wool 3 at least; dual action with compound 2, with polish 1; a fine polish
 * on soft foam none.
 */
function hazeLeft({ motion }: Machine, pad: Pad, product: Product): number {
  const rotary = motion.kind === 'rotary';
  const fibre = pad.id === 'microfibre' || pad.id === 'wool' ? 3 : 0;
  const own = { heavy: 2, medium: 1, fine: pad.id === 'foam-soft' ? 0 : 1 }[product.id] ?? 2;
  return Math.max(fibre, rotary ? Math.min(4, own + 2) : own);
}
