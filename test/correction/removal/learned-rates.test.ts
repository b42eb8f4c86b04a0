import { describe, expect, it } from 'vitest';
import { micrometres, seconds } from '../../../src/base/units.ts';
import type { ShopRates } from '../../../src/correction/rates/shop-rates.ts';
import type { CorrectionModel } from '../../../src/correction/removal/catalogue.ts';
import { ladder } from '../../../src/correction/removal/combination.ts';
import { methodChain } from '../../../src/correction/removal/method.ts';
import { foreseenLogSd, removalPriors } from '../../../src/correction/removal/removal-knowledge.ts';
import { logSdAfterSpot, spotTakes } from '../../../src/correction/spot/test-spot-forecast.ts';
import { correctionModel } from '../../../src/formats/models.ts';

const WOOL = 'da/wool/heavy';
const MEDIUM = 'da/foam-medium/medium';

/** Wool took a fifth more than reckoned on paint that gives way by a tenth less. */
const learned: ShopRates = {
  usualPaint: { mean: -0.1, sd: 0.12 },
  nextPaint: { mean: -0.1, sd: 0.3 },
  combinations: new Map([
    [
      WOOL,
      {
        own: { mean: Math.log(1.2), sd: 0.21 },
        next: { mean: Math.log(1.2) - 0.1, sd: Math.hypot(0.3, 0.21) },
        usual: { mean: Math.log(1.2) - 0.1, sd: 0.15 },
        observations: 4,
        vehicles: 3,
      },
    ],
  ]),
  unobservedVariance: 0.09,
  usualSd: 0.33,
};
const taught: CorrectionModel = { ...correctionModel, learned };

const rung = (id: string, model: CorrectionModel) => {
  const found = ladder(model).find((one) => one.id === id);
  if (found === undefined) throw new Error(`no ${id}`);
  return found;
};
const chain = (id: string, model: CorrectionModel) =>
  methodChain(rung(id, model), model, seconds(105));

describe('what earlier vehicles taught', () => {
  it('moves the rate of the combination that was observed, and of no other', () => {
    expect(rung(WOOL, taught).perSet).toBeCloseTo(1.2 * rung(WOOL, correctionModel).perSet, 12);
    expect(rung(MEDIUM, taught).perSet).toBe(rung(MEDIUM, correctionModel).perSet);
  });

  it('moves the paint that is expected next, beside what is declared of it', () => {
    const mean = (hardness: 'unknown' | 'soft') => removalPriors(hardness, taught).hardness.mean;
    expect(mean('unknown')).toBe(-0.1);
    expect(mean('soft')).toBeCloseTo(Math.log(correctionModel.removal.softFactor) - 0.1, 12);
    expect(removalPriors('unknown', taught).hardness.sd).toBe(0.3);
    expect(removalPriors('unknown', correctionModel).hardness).toEqual({ mean: 0, sd: 0.35 });
  });

  it('says how well a combination’s own rate is known: as learned, else as stated and by what was not observed', () => {
    const { combinationSd, usualCombinationSd } = removalPriors('unknown', taught);
    expect(combinationSd(WOOL)).toBe(0.21);
    // √(.40² + .09): that nobody observed it is doubt beside its own.
    expect(combinationSd(MEDIUM)).toBeCloseTo(0.5, 12);
    expect(usualCombinationSd).toBe(0.33);
    expect(foreseenLogSd(taught)).toBeCloseTo(Math.hypot(0.3, 0.33, 0.15), 12);
    const built = removalPriors('unknown', correctionModel);
    expect([built.combinationSd(WOOL), built.usualCombinationSd]).toEqual([0.4, 0.4]);
  });

  it('stands in the chain of a combination with the range on the next vehicle', () => {
    const { learned: shown, rate, derived } = chain(WOOL, taught);
    expect(shown).toMatchObject({ observations: 4, vehicles: 3 });
    expect(shown?.range).toEqual(rate);
    expect(rate.median).toBeCloseTo(1.2 * Math.exp(-0.1) * derived.median, 12);
    expect(rate.logSd).toBeCloseTo(Math.hypot(0.3, 0.21, 0.15), 12);
    expect(chain(MEDIUM, taught).learned).toBeNull();
    expect(chain(WOOL, correctionModel).learned).toBeNull();
  });
});

describe('a shop with nothing to polish with', () => {
  const bare: CorrectionModel = { ...taught, machines: [] };

  it('knows no more after a test spot, which takes nothing', () => {
    expect(logSdAfterSpot(bare, micrometres(1.5))).toBeCloseTo(foreseenLogSd(bare), 12);
    expect(spotTakes(bare)).toBeNull();
  });

  it('takes two sets by the middle of its ladder where it has one', () => {
    const rungs = ladder(correctionModel);
    expect(spotTakes(correctionModel)).toBe(2 * (rungs[Math.floor(rungs.length / 2)]?.perSet ?? 0));
  });
});
