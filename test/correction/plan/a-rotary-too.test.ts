/**
 * A rotary in the shop never lowers what is corrected: whatever the shop did without it, it may still do. Panels of the
 * built-in templates, film, paint, marks, aim and what else the shop has are drawn.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { millimetres } from '../../../src/base/units.ts';
import type { PlanRequest } from '../../../src/correction/plan/plan-request.ts';
import type { CorrectionModel } from '../../../src/correction/removal/catalogue.ts';
import { ladder } from '../../../src/correction/removal/combination.ts';
import { paintKnowledge } from '../../../src/correction/removal/removal-knowledge.ts';
import { builtInTemplates } from '../../../src/formats/data/templates.ts';
import { correctionModel } from '../../../src/formats/models.ts';
import { evenly } from '../../evenly.ts';
import { byItself, fiveAround, panelOf, plainPanel, surveyOf } from '../../film/car-builder.ts';
import { defect, planned, planOf } from '../shop.ts';

const widths = [
  ...new Set(
    builtInTemplates.flatMap(({ panels }) => panels.map(({ flatWidth }) => Number(flatWidth))),
  ),
].sort((a, b) => a - b);

const some = (ids: readonly string[]) => fc.subarray([...ids], { minLength: 1 });
const idsOf = (things: readonly { readonly id: string }[]): readonly string[] =>
  things.map(({ id }) => id);
const others = idsOf(correctionModel.machines).filter((id) => id !== 'rotary');

type Things = Readonly<Record<'machines' | 'pads' | 'products', readonly string[]>>;

const aShop: fc.Arbitrary<Things> = fc.record({
  machines: some(others),
  pads: some(idsOf(correctionModel.pads)),
  products: some(idsOf(correctionModel.products)),
});

/** A rotary with pads of any width, where one is named. */
const shopOf = (things: Things, rotaryPad?: number): CorrectionModel => ({
  ...correctionModel,
  machines: correctionModel.machines.flatMap((machine) => {
    if (things.machines.includes(machine.id)) return [machine];
    const isAdded = machine.id === 'rotary' && rotaryPad !== undefined;
    return isAdded ? [{ ...machine, padDiameter: millimetres(rotaryPad) }] : [];
  }),
  pads: correctionModel.pads.filter(({ id }) => things.pads.includes(id)),
  products: correctionModel.products.filter(({ id }) => things.products.includes(id)),
});

const aCase = fc.record({
  shop: aShop,
  width: fc.constantFrom(...widths),
  film: evenly(88, 135),
  grade: fc.constantFrom(1, 2, 3, 4, 5),
  aim: evenly(0.3, 0.98),
  hazeAllowed: fc.constantFrom(0, 1),
  rotaryPad: fc.constantFrom(75, 100, 150, 180),
  /** What one spot of the first combination took, where there was one. */
  tried: fc.option(evenly(0.3, 6)),
  hardness: fc.constantFrom(
    'soft' as const,
    'medium' as const,
    'hard' as const,
    'unknown' as const,
  ),
});

type Case = typeof aCase extends fc.Arbitrary<infer One> ? One : never;

/** What is cleared of the marks, as far as it is aimed at. */
function corrected(
  { width, film, grade, aim, hazeAllowed, hardness, tried }: Case,
  model: CorrectionModel,
): Readonly<Record<'panel' | 'spot', number>> {
  const car = surveyOf({
    panels: [plainPanel('one', { flatWidth: millimetres(width) })],
    readings: fiveAround('one', film),
    model: byItself,
  });
  const [first] = ladder(model).filter(({ machine }) => machine.motion.kind !== 'rotary');
  const trials =
    tried === null || first === undefined
      ? []
      : [
          {
            combination: first.id,
            foretold: 2,
            removed: { value: tried, standardError: 0.4 },
            cleared: null,
          },
        ];
  const paint = paintKnowledge(trials, hardness, model);
  const rest: Partial<PlanRequest> = {
    panels: [panelOf(car, 'one')],
    model,
    aim,
    hazeAllowed,
    paintOf: () => paint,
    defectsOf: () => [defect('swirl-marks', grade), defect('deep-scratches', 2)],
  };
  const { expected, steps, local } = planned(planOf(car, rest), 'one');
  return {
    panel: steps.length === 0 ? 0 : Math.min(aim, expected),
    spot: Math.min(aim, local[0]?.cleared ?? 0),
  };
}

describe('a rotary in the shop', () => {
  test('never lowers what is corrected, to within a point', () => {
    const { equalShortfall } = correctionModel.correction.choice;
    fc.assert(
      fc.property(aCase, (one) => {
        const without = corrected(one, shopOf(one.shop));
        const withIt = corrected(one, shopOf(one.shop, one.rotaryPad));
        expect(withIt.panel).toBeGreaterThanOrEqual(without.panel - equalShortfall - 1e-9);
        expect(withIt.spot).toBeGreaterThanOrEqual(without.spot - equalShortfall - 1e-9);
      }),
      { numRuns: Number(process.env['ROTARY_CASES'] ?? 20) },
    );
  });
});
