/** Shops with random machines, pads and products, and what the oracle needs to know of them. */
import fc from 'fast-check';
import { metresPerSecond, millimetres, newtons, squareMetres } from '../../src/base/units.ts';
import type {
  CorrectionModel,
  Machine,
  Pad,
  Product,
} from '../../src/correction/removal/catalogue.ts';
import { ladder } from '../../src/correction/removal/combination.ts';
import { setTime } from '../../src/correction/removal/removal-rate.ts';
import { correctionModel } from '../../src/formats/models.ts';
import type { Tool } from './brute-force.ts';

const share = fc.integer({ min: 0, max: 1_000_000 }).map((n) => n / 1_000_000);
export const between = (low: number, high: number) => share.map((s) => low + (high - low) * s);

const aMachine = (id: string): fc.Arbitrary<Machine> =>
  fc
    .record({
      motion: fc.oneof(
        between(800, 2200).map((rpm) => ({ kind: 'rotary' as const, rpm })),
        fc.record({
          kind: fc.constant('orbital' as const),
          throwDiameter: between(6, 22).map(millimetres),
          orbitsPerMinute: between(3000, 6000),
          forcedRpm: fc.constantFrom(0, 480),
        }),
        fc
          .constant(correctionModel.machines.find(({ id: one }) => one === 'hand')?.motion)
          .map((hand) => {
            if (hand === undefined) throw new Error('hands are built in');
            return hand;
          }),
      ),
      padDiameter: fc.constantFrom(75, 100, 150).map(millimetres),
      force: between(15, 60).map(newtons),
      armSpeed: between(0.05, 0.2).map(metresPerSecond),
    })
    .map((rest) => ({ id, name: id, ...rest }));

/** Haze is a matter of what the thing is, not of how much it cuts. */
const hazeOf = (things: readonly (Pad | Product)[], id: string): number =>
  things.find((one) => one.id === id)?.haze ?? Number.NaN;

const someStages = fc.subarray(['cut', 'refine', 'finish'] as const, { minLength: 1 });

const somePads: fc.Arbitrary<readonly Pad[]> = fc
  .subarray(['foam-soft', 'foam-medium', 'foam-firm', 'microfibre', 'wool'], {
    minLength: 1,
    maxLength: 3,
  })
  .chain((ids) =>
    fc.tuple(
      ...ids.map((id) =>
        fc
          .record({ factor: between(0.4, 2), stages: someStages })
          .map((rest) => ({ id, name: id, haze: hazeOf(correctionModel.pads, id), ...rest })),
      ),
    ),
  );

const someProducts: fc.Arbitrary<readonly Product[]> = fc
  .subarray(['fine', 'medium', 'heavy'], { minLength: 1 })
  .chain((ids) =>
    fc.tuple(
      ...ids.map((id) =>
        fc.record({
          id: fc.constant(id),
          name: fc.constant(id),
          haze: fc.constant(hazeOf(correctionModel.products, id)),
          factor: between(0.3, 2),
          stages: someStages,
        }),
      ),
    ),
  );

/** At most eight combinations: few enough to list whatever can be done with them on a whole car. */
export const aSmallShop: fc.Arbitrary<CorrectionModel> = fc
  .record({
    machines: fc.oneof(fc.tuple(aMachine('one')), fc.tuple(aMachine('one'), aMachine('two'))),
    pads: somePads.map((pads) => pads.slice(0, 2)),
    products: someProducts.map((products) => products.slice(0, 2)),
  })
  .map((own) => ({ ...correctionModel, ...own }));

export const aShop: fc.Arbitrary<CorrectionModel> = fc
  .record({
    machines: fc.oneof(fc.tuple(aMachine('one')), fc.tuple(aMachine('one'), aMachine('two'))),
    pads: somePads,
    products: someProducts,
  })
  .map((own) => ({ ...correctionModel, ...own }));

export const pace = ({ machine }: { readonly machine: Machine }): number =>
  setTime(machine, squareMetres(1), correctionModel.removal);

export const toolsOf = (shop: CorrectionModel): readonly Tool[] =>
  ladder(shop).map((one) => ({
    id: one.id,
    perSet: one.perSet,
    doubt: shop.rates.get(one.id)?.logSd ?? shop.removal.combinationLogSd,
    motion: one.machine.motion.kind,
    pad: one.pad.id,
    padDiameter: one.machine.padDiameter,
    product: one.product.id,
    padStages: one.pad.stages,
    productStages: one.product.stages,
    minutesPerSquareMetre: pace(one),
  }));
