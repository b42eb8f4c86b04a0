import { type Micrometres, scale } from '../../base/units.ts';
import type { CorrectionModel, HazeRules, Machine, Pad, Product, Stage } from './catalogue.ts';
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

/**
 * All combinations of the shop's own things, mildest first by removal per set, then by name. A rate
 * that the shop measured itself stands above the one from Preston's law, what its earlier vehicles taught
 * of the combination comes on top; `factorOf` is what is known of this car's paint besides.
 */
export function ladder(
  model: CorrectionModel,
  factorOf: (combination: string) => number = () => 1,
): readonly Combination[] {
  return model.machines
    .flatMap((machine) =>
      model.pads.flatMap((pad) =>
        model.products.map((product) => {
          const id = `${machine.id}/${pad.id}/${product.id}`;
          const reckoned =
            model.rates.get(id)?.rate ?? removalPerSet({ machine, pad, product }, model.removal);
          const usual = scale(reckoned, learnedFactor(id, model));
          return {
            id,
            machine,
            pad,
            product,
            perSet: scale(usual, factorOf(id)),
            haze: hazeLeft(machine, pad, product, model.correction.haze),
          };
        }),
      ),
    )
    .sort((a, b) => a.perSet - b.perSet || (a.id < b.id ? -1 : 1))
    .map((combination, rung) => ({ ...combination, rung }));
}

/** What pad and product are both for. */
export const stagesOf = ({
  pad,
  product,
}: Pick<Combination, 'pad' | 'product'>): readonly Stage[] =>
  pad.stages.filter((stage) => product.stages.includes(stage));

const learnedFactor = (id: string, { learned }: CorrectionModel): number =>
  Math.exp(learned?.combinations.get(id)?.own.mean ?? 0);

/**
 * Haze grade that a combination leaves: its product's, more of it under a rotary, and never less than
 * its pad's. With the built-in grades: rotary with compound 4, holograms; rotary with polish 3;
 * microfibre or wool 3 at least; dual action with compound 2, with polish 1; a fine polish on soft
 * foam none.
 */
function hazeLeft(
  { motion }: Machine,
  pad: Pad,
  product: Product,
  { rotary, heaviest }: HazeRules,
): number {
  const own = product.haze + (motion.kind === 'rotary' ? rotary : 0);
  return Math.min(heaviest, Math.max(pad.haze, own));
}
