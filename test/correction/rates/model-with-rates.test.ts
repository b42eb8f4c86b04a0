import { describe, expect, test } from 'vitest';
import { learnRates } from '../../../src/correction/rates/learn-rates.ts';
import { modelWithRates, ratePriors } from '../../../src/correction/rates/model-with-rates.ts';
import { ladder } from '../../../src/correction/removal/combination.ts';
import { correctionModel } from '../../../src/formats/models.ts';
import { measured } from '../rates-drawn.ts';

const MEDIUM = 'da/foam-medium/medium';
const FINE = 'da/foam-soft/fine';
const ids = ladder(correctionModel).map(({ id }) => id);
const seen = [measured('a', MEDIUM, 1.8, 2.6, 0.3), measured('b', MEDIUM, 1.8, 2.4, 0.3)];

describe('the model of a shop with earlier vehicles', () => {
  test('is what is built in, to the last digit, without any', () => {
    expect(modelWithRates(correctionModel, [])).toEqual({ ...correctionModel, learned: null });
  });

  test('holds what they teach of every combination of the shop, whatever was learnt before', () => {
    const { learned } = modelWithRates(correctionModel, seen);
    const alone = learnRates(seen, ratePriors(correctionModel), ids);
    expect(learned).toMatchObject(alone);
    expect([...(learned?.combinations.keys() ?? [])].sort()).toEqual([...ids].sort());
    expect(modelWithRates({ ...correctionModel, learned }, seen).learned).toEqual(learned);
  });

  test('takes as usual the least known of the rates that the shop measured', () => {
    const both = [...seen, measured('a', FINE, 0.6, 0.9, 0.5)];
    const { learned } = modelWithRates(correctionModel, both);
    const sd = (id: string): number => learned?.combinations.get(id)?.own.sd ?? Number.NaN;
    expect(sd(FINE)).toBeGreaterThan(sd(MEDIUM));
    expect(learned?.usualSd).toBe(sd(FINE));
  });

  test('takes as usual the built-in doubt and that of what was not observed, where none of its own was', () => {
    const other = [measured('a', 'sold/pad/product', 1.8, 2.6, 0.3)];
    const { learned } = modelWithRates(correctionModel, other);
    const { combinationLogSd } = correctionModel.removal;
    expect(learned?.usualSd).toBeCloseTo(
      Math.hypot(combinationLogSd, Math.sqrt(learned?.unobservedVariance ?? Number.NaN)),
      12,
    );
  });

  test('has the priors of the model, and of a rate that the shop states its own', () => {
    const { removal, shopRates } = correctionModel;
    const rates = new Map([[MEDIUM, { rate: 1 as never, logSd: 0.1 }]]);
    const priors = ratePriors({ ...correctionModel, rates });
    expect(priors).toMatchObject({
      paintSd: removal.hardnessLogSd,
      paintShare: shopRates.paintShare,
      combinationShare: shopRates.combinationShare,
      partsShare: shopRates.partsShare,
      stepSd: removal.stepLogSd,
    });
    expect([priors.combinationSd(MEDIUM), priors.combinationSd(FINE)]).toEqual([
      0.1,
      removal.combinationLogSd,
    ]);
  });
});
