/**
 * What a quote charges for materials, summed again from the stages of the plan of the same job: what is used up of
 * each, and nothing of what serves the next job as well.
 */
import { describe, expect, test } from 'vitest';
import type { QuoteOption } from '../../src/work/quote-option.ts';
import { quoteOf, readingsOf } from '../tasks/quotes.ts';

const prices = [
  { id: 'medium', pack: 1000, unit: 'ml', price_minor: 3750 },
  { id: 'fine', pack: 1000, unit: 'ml', price_minor: 3450 },
  { id: 'foam-soft-150', pack: 1, unit: 'pieces', price_minor: 1150 },
  { id: 'foam-medium-150', pack: 1, unit: 'pieces', price_minor: 1200 },
  { id: 'clay', pack: 1, unit: 'pieces', price_minor: 1400 },
  { id: 'towels', pack: 10, unit: 'pieces', price_minor: 1500 },
  { id: 'masking-tape', pack: 50, unit: 'm', price_minor: 420 },
  { id: 'wax', pack: 250, unit: 'ml', price_minor: 2600 },
];
const MARKUP = 20;
const { options } = quoteOf({
  readings: readingsOf({ bonnet: 112, roof: 114, boot: 111, 'door front left': 113 }),
  job: { taken_um: 0 },
  shop: {
    name: 'Invented Paintwork',
    prices: {
      ...{ currency: 'GBP', kind: 'estimate', labour_minor_per_h: { other: 4200 } },
      ...{ materials: prices, markup_pct: MARKUP },
    },
  },
});

/** By the plan alone: the stages' own lines, of pads the sections worked by their life. */
function usedByPlan({ work }: QuoteOption, id: string): number {
  if (id === 'towels') return 0;
  const worn = work.pads.find((pad) => pad.id === id);
  if (worn !== undefined) return worn.wornOut;
  const lines = work.stages.flatMap(({ materials }) => materials).filter((one) => one.id === id);
  return lines.reduce((sum, { quantity }) => sum + quantity, 0);
}

const materialLines = ({ priced }: QuoteOption) =>
  (priced?.lines ?? []).filter(({ kind }) => kind === 'material');

describe.each(options.map((option) => [option.aim.name, option] as const))('%s', (_, option) => {
  test('charges of each material what the stages of its plan use up, to the nearest penny', () => {
    expect(materialLines(option).length).toBeGreaterThan(4);
    for (const { id, amount, unitPrice } of materialLines(option)) {
      const { pack = 1, price_minor = 0, unit } = prices.find((one) => one.id === id) ?? {};
      const quantity = Number(unitPrice?.quantity) / 1000;
      const by = unit === 'pieces' ? 0.005 : 0.5;
      expect(Math.abs(quantity - usedByPlan(option, id))).toBeLessThanOrEqual(by + 1e-9);
      const reckoned = (quantity / pack) * price_minor * (1 + MARKUP / 100);
      expect(Math.abs(Number(amount) - reckoned)).toBeLessThanOrEqual(0.5 + 1e-9);
    }
  });

  test('leaves out no material that is used up and listed, and charges no towels', () => {
    const charged = materialLines(option).map(({ id }) => id);
    for (const { id, unit } of prices) {
      const least = unit === 'pieces' ? 0.005 : 0.5;
      expect([id, charged.includes(id)]).toEqual([id, usedByPlan(option, id) >= least]);
    }
    const towels = option.work.jobMaterials.find(({ id }) => id === 'towels');
    expect(towels?.quantity).toBeGreaterThan(0);
    expect(charged).not.toContain('towels');
  });
});
