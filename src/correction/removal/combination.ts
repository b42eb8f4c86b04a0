import { valueAt } from '../../base/at.ts';
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
  /** The same where a rotary counts for as strong as one SD of its own rate makes it: what a choice goes by. */
  readonly care: number;
};

/**
 * All combinations of the shop's own things, mildest first by removal per set, then by name. A rate
 * that the shop measured itself stands above the one from Preston's law, what its earlier vehicles taught
 * of the combination comes on top; `factorOf` is what is known of this car's paint besides.
 *
 * A rotary brings heat, and cuts at edges, as no dual action does: whether it is milder by less than its own rate is
 * known to nobody knows, and then it is no milder.
 */
export function ladder(
  model: CorrectionModel,
  factorOf: (combination: string) => number = () => 1,
): readonly Combination[] {
  const rungs = model.machines
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
  const byCare = rungs
    .map(({ id, machine, perSet, rung }) => ({
      rung,
      asStrongAs:
        machine.motion.kind === 'rotary' ? perSet * Math.exp(ownLogSd(id, model)) : perSet,
    }))
    .sort((a, b) => a.asStrongAs - b.asStrongAs || a.rung - b.rung);
  const places = new Map(byCare.map(({ rung }, care) => [rung, care]));
  return rungs.map((one) => ({ ...one, care: valueAt(places, one.rung) }));
}

/** What pad and product are both for. */
export const stagesOf = ({
  pad,
  product,
}: Pick<Combination, 'pad' | 'product'>): readonly Stage[] =>
  pad.stages.filter((stage) => product.stages.includes(stage));

/** ln-SD of a combination's own rate. */
const ownLogSd = (id: string, { learned, rates, removal }: CorrectionModel): number =>
  learned?.combinations.get(id)?.own.sd ?? rates.get(id)?.logSd ?? removal.combinationLogSd;

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
