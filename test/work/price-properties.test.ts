/**
 * Laws of every quote, on random jobs at random price lists. `npm run quotes` tries a million of them.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { divided, type Minor, type RoundingMode, WHOLE } from '../../src/work/money.ts';
import { type Chargeable, type PricedJob, priceJob } from '../../src/work/price-job.ts';
import type { PriceList } from '../../src/work/price-list.ts';
import type { TaxRule } from '../../src/work/tax.ts';

const numRuns = Number(process.env['QUOTES'] ?? 20_000);
/** Quotes at a stretch: in between the runner hears that the test is alive. */
const STRETCH = 20_000;

const amount = fc.oneof(fc.bigInt(0n, 30n), fc.bigInt(0n, 20_000n), fc.bigInt(0n, 10n ** 9n));
const share = fc.oneof(
  fc.constantFrom(0n, 50_000n, 88_750n, 100_000n, 175_000n, 190_000n, 200_000n),
  fc.bigInt(0n, 1_000_000n),
);
const mode = fc.constantFrom<RoundingMode>('half-up', 'half-even', 'down', 'up');
const skill = fc.constantFrom('wash', 'survey', 'polish', 'interior', 'protect');
const materialId = fc.constantFrom('medium', 'fine', 'wax', 'tape');

const taxRule: fc.Arbitrary<TaxRule> = fc.record({
  name: fc.constant('VAT'),
  share,
  level: fc.constantFrom('line', 'rate', 'total'),
  rounding: mode,
  included: fc.boolean(),
});

const discount = fc.oneof(
  fc.constant(null),
  fc.record({ kind: fc.constant('amount' as const), amount }),
  fc.record({ kind: fc.constant('share' as const), share }),
);

const priceList: fc.Arbitrary<PriceList> = fc.record({
  currency: fc.constant({ code: 'EUR', digits: 2 }),
  labour: fc.record({
    bySkill: fc.array(fc.tuple(skill, amount), { maxLength: 3 }).map((rates) => new Map(rates)),
    other: fc.option(amount),
  }),
  materials: fc.uniqueArray(
    fc.record({
      id: materialId,
      pack: fc.bigInt(1n, 5_000n),
      unit: fc.constant('ml' as const),
      price: amount,
      stock: fc.constant(null),
    }),
    { maxLength: 4, selector: ({ id }) => id },
  ),
  markup: share,
  fixed: fc.array(
    fc.record({ name: fc.constant('item'), price: amount, taxShare: fc.option(share) }),
    { maxLength: 5 },
  ),
  minimum: fc.oneof(fc.constant(0n), amount),
  discount,
  tax: taxRule,
  rounding: mode,
  cashStep: fc.constantFrom(null, 5n, 10n, 50n),
  deposit: share,
});

const job: fc.Arbitrary<Chargeable> = fc.record({
  labour: fc.array(fc.record({ skill, minutes: fc.bigInt(0n, 5_000n) }), { maxLength: 6 }),
  materials: fc.array(
    fc.record({
      id: materialId,
      name: fc.constant('material'),
      quantity: fc.bigInt(0n, 3_000_000n),
      unit: fc.constant('ml' as const),
    }),
    { maxLength: 5 },
  ),
});

const sum = (values: readonly bigint[]): bigint => values.reduce((all, one) => all + one, 0n);

/** Plain conditions: `expect` on each of a million quotes would take most of the time. */
function faults(priced: PricedJob, list: PriceList): readonly string[] {
  const { lines, subtotal, tax, total, payable, deposit } = priced;
  const off = lines.filter(({ kind }) => kind === 'discount');
  const inList = list.tax.included ? total : subtotal;
  const listed = sum(
    lines
      .filter(({ kind }) => kind !== 'discount' && kind !== 'minimum')
      .map((line) => asListed(line, list)),
  );
  const discounted = -sum(off.map((line) => asListed(line, list)));
  const before = lines.filter(({ kind }) => kind !== 'discount');
  const laws: Readonly<Record<string, boolean>> = {
    'the lines add up to the subtotal': sum(lines.map((line) => line.amount)) === subtotal,
    'the tax of the lines adds up to the tax': sum(lines.map((line) => line.tax)) === tax,
    'subtotal and tax are the total': subtotal + tax === total,
    'no total is under nothing': subtotal >= 0n && tax >= 0n && total >= 0n,
    'a discount takes off, never puts on': off.every((line) => asListed(line, list) < 0n),
    'taxed by line, each line has the tax of its whole amount':
      list.tax.level !== 'line' || before.every((line) => line.tax === taxByItself(line, list)),
    'a discount has tax under nothing, and no more than the lines of its rate have':
      list.tax.level !== 'line' ||
      off.every((line) => line.tax <= 0n && -line.tax <= taxAt(line.taxShare, before)),
    'and its tax is its rate of it, but for a unit a line':
      list.tax.level !== 'line' ||
      off.every((line) => size(line.tax - taxByItself(line, list)) <= BigInt(lines.length)),
    'a discount takes no more than there is': discounted >= 0n && discounted <= listed,
    'the minimum is kept': inList >= list.minimum,
    'only what is wanting is added to it':
      !lines.some(({ kind }) => kind === 'minimum') || inList === list.minimum,
    'what is paid is a multiple of the coin, and near the total':
      list.cashStep === null
        ? payable === total
        : payable % list.cashStep === 0n && 2n * size(payable - total) <= list.cashStep,
    'a deposit is part of what is paid, in coins, and never over the total':
      deposit === null
        ? list.deposit === 0n
        : deposit >= 0n &&
          deposit <= payable &&
          deposit <= total &&
          deposit % (list.cashStep ?? 1n) === 0n,
  };
  return Object.entries(laws).flatMap(([law, holds]) => (holds ? [] : [law]));
}

/** a·r, or a·r/(1 + r) of an amount with its tax in it, rounded by itself. */
function taxByItself(line: PricedJob['lines'][number], list: PriceList): Minor {
  const { included, rounding } = list.tax;
  const dividend = asListed(line, list) * line.taxShare;
  return divided(dividend, included ? WHOLE + line.taxShare : WHOLE, rounding);
}
const taxAt = (taxShare: bigint, lines: PricedJob['lines']): Minor =>
  sum(lines.filter((one) => one.taxShare === taxShare).map((one) => one.tax));

const size = (value: Minor): Minor => (value < 0n ? -value : value);
const asListed = (line: PricedJob['lines'][number], { tax }: PriceList): bigint =>
  tax.included ? line.amount + line.tax : line.amount;

describe('every quote', () => {
  test(`keeps the laws of sums, discount, minimum and tax (${numRuns} quotes)`, async () => {
    const kept = fc.property(job, priceList, (one, list) => {
      const found = faults(priceJob(one, list), list);
      if (found.length > 0) throw new Error(found.join('; '));
    });
    const { seed = 0 } = fc.readConfigureGlobal();
    for (let done = 0; done < numRuns; done += STRETCH) {
      fc.assert(kept, { numRuns: Math.min(STRETCH, numRuns - done), seed: seed + done });
      await new Promise(setImmediate);
    }
  }, 3_600_000);

  test('does not depend on the order of work, materials and items', () => {
    const shuffled = fc
      .tuple(job, priceList)
      .chain(([one, list]) =>
        fc.tuple(
          fc.constant([one, list] as const),
          fc.shuffledSubarray([...one.labour], full(one.labour)),
          fc.shuffledSubarray([...one.materials], full(one.materials)),
          fc.shuffledSubarray([...list.fixed], full(list.fixed)),
        ),
      );
    fc.assert(
      fc.property(shuffled, ([[one, list], labour, materials, fixed]) => {
        const before = priceJob(one, list);
        const after = priceJob({ labour, materials }, { ...list, fixed });
        expect([after.subtotal, after.tax, after.total, after.payable]).toEqual([
          before.subtotal,
          before.tax,
          before.total,
          before.payable,
        ]);
      }),
      { numRuns: Math.min(numRuns, 20_000) },
    );
  });

  test('costs no less for more time, more material or a higher rate', () => {
    fc.assert(
      fc.property(job, priceList, fc.bigInt(0n, 500n), (one, list, more) => {
        const base = { ...list, discount: null };
        const longer = {
          ...one,
          labour: one.labour.map((part) => ({ ...part, minutes: part.minutes + more })),
          materials: one.materials.map((part) => ({ ...part, quantity: part.quantity + more })),
        };
        const dearer = { ...base, markup: base.markup + more };
        const { subtotal, total } = priceJob(one, base);
        if (base.tax.included) {
          expect(priceJob(longer, base).total >= total).toBe(true);
          expect(priceJob(one, dearer).total >= total).toBe(true);
        } else {
          expect(priceJob(longer, base).subtotal >= subtotal).toBe(true);
          expect(priceJob(one, dearer).subtotal >= subtotal).toBe(true);
        }
      }),
    );
  });

  test('is taxed within a minor unit of the exact tax for each time something is rounded', () => {
    fc.assert(
      fc.property(job, priceList, (one, list) => {
        const { lines, tax } = priceJob(one, list);
        const exact = lines.reduce((all, line) => {
          const rate = Number(line.taxShare) / 1e6;
          const listed = Number(asListed(line, list));
          return all + (list.tax.included ? (listed * rate) / (1 + rate) : listed * rate);
        }, 0);
        const rates = new Set(lines.map(({ taxShare }) => taxShare)).size;
        const roundings = { line: lines.length, rate: rates, total: 1 }[list.tax.level];
        // A millionth of a part for the binary fractions of this second reckoning.
        expect(Math.abs(Number(tax) - exact)).toBeLessThanOrEqual(
          roundings + Math.abs(exact) * 1e-9,
        );
      }),
    );
  });
});

const full = (list: readonly unknown[]) => ({ minLength: list.length, maxLength: list.length });
