/** A quote as an auditor takes it: its record and the shop file, reckoned again in fractions of whole numbers. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { quoteRecord } from '../../../src/report/quote/quote-record.ts';
import { quoteOf, readingsOf } from '../../tasks/quotes.ts';

type Fraction = { readonly n: bigint; readonly d: bigint };
const over = (n: bigint, d = 1n): Fraction => ({ n, d });
const plus = (a: Fraction, b: Fraction) => over(a.n * b.d + b.n * a.d, a.d * b.d);
/** A decimal figure as it is written, exactly. */
function exact(figure: number): Fraction {
  const [whole = '', part = ''] = figure.toFixed(4).split('.');
  return over(BigInt(whole + part), 10n ** BigInt(part.length));
}
const times = (...all: readonly Fraction[]): Fraction =>
  all.reduce((a, b) => over(a.n * b.n, a.d * b.d), over(1n));

type Mode = 'half-up' | 'half-even' | 'down' | 'up';
function rounded({ n, d }: Fraction, mode: Mode): bigint {
  const size = n < 0n ? -n : n;
  const below = size / d;
  const twice = 2n * (size - below * d);
  const up =
    mode === 'up'
      ? twice > 0n
      : mode !== 'down' &&
        (twice > d || (twice === d && (mode === 'half-up' || below % 2n === 1n)));
  return (n < 0n ? -1n : 1n) * (up ? below + 1n : below);
}

type Line = {
  readonly kind: string;
  readonly id: string;
  readonly quantity: number;
  readonly price_minor: number;
  readonly per: number;
  readonly markup_pct: number;
  readonly tax_pct: number;
  readonly amount_minor: number;
  readonly tax_minor: number;
};
type Option = {
  readonly charged_min: number;
  readonly time: { readonly p50_h: number; readonly p80_h: number; readonly p95_h: number };
  readonly days: number;
  readonly days_p80: number;
  readonly lines: readonly Line[];
  readonly subtotal_minor: number;
  readonly tax_minor: number;
  readonly total_minor: number;
  readonly materials: readonly {
    readonly quantity: number;
    readonly pack: number | null;
    readonly stock: number | null;
    readonly to_buy: number | null;
  }[];
};

const modes = fc.constantFrom<Mode>('half-up', 'half-even', 'down', 'up');
const amount = fc.integer({ min: 1, max: 9_999 });
const percent = fc.constantFrom(0, 5, 7.7, 8.875, 19, 20, 25.5, 33.3333);
const pack = (id: string, unit: string) =>
  fc.record(
    {
      id: fc.constant(id),
      unit: fc.constant(unit),
      pack: fc.integer({ min: 1, max: 900 }),
      price_minor: amount,
      stock: fc.constantFrom(0, 2.5, 120),
    },
    { requiredKeys: ['id', 'unit', 'pack', 'price_minor'] },
  );
const anyPrices = fc.record(
  {
    currency: fc.constantFrom('GBP', 'JPY', 'KWD', 'HUF', 'CLF'),
    labour_minor_per_h: amount,
    materials: fc.tuple(
      pack('fine', 'ml'),
      pack('medium', 'ml'),
      pack('foam-soft-150', 'pieces'),
      pack('wax', 'ml'),
    ),
    markup_pct: percent,
    fixed: fc.array(
      fc.record({ name: fc.constantFrom('a', 'b'), price_minor: amount, tax_pct: percent }),
      { maxLength: 2 },
    ),
    minimum_minor: fc.integer({ min: 0, max: 200_000 }),
    discount_pct: percent,
    tax: fc.record({
      rate_pct: percent,
      level: fc.constantFrom('line', 'rate', 'total'),
      rounding: modes,
      included: fc.boolean(),
    }),
    rounding: modes,
  },
  { requiredKeys: ['currency', 'labour_minor_per_h', 'tax', 'rounding'] },
);
const DIGITS: Readonly<Record<string, number>> = { GBP: 2, JPY: 0, KWD: 3, HUF: 2, CLF: 4 };

/** SHOPS=300 tries more of them. */
const SHOPS = Number(process.env['SHOPS'] ?? 25);
const readings = readingsOf({ bonnet: 112, roof: 114, boot: 111 });

test('every line, sum, tax and pack of a record follows from the parts beside it and the shop file', () => {
  fc.assert(
    fc.property(anyPrices, (prices) => {
      const result = quoteOf({ readings, job: { taken_um: 0 }, shop: { prices } });
      const record = quoteRecord(result, { version: '0', diagnostics: [], date: null });
      expect(record['currency_digits']).toBe(DIGITS[prices.currency]);
      for (const option of record['options'] as readonly Option[]) check(option, prices);
    }),
    { numRuns: SHOPS },
  );
}, 600_000);

type Prices = typeof anyPrices extends fc.Arbitrary<infer P> ? P : never;

function check(option: Option, { tax, rounding, ...prices }: Prices): void {
  const { lines, time } = option;
  const sumOf = (of: (line: Line) => number): number =>
    lines.reduce((sum, line) => sum + of(line), 0);
  const listed = (line: Line): bigint =>
    BigInt(line.amount_minor + (tax.included ? line.tax_minor : 0));
  for (const line of lines) {
    if (line.kind !== 'labour' && line.kind !== 'material') continue;
    const markup = plus(over(1n), times(exact(line.markup_pct), over(1n, 100n)));
    const price = over(BigInt(line.price_minor), BigInt(line.per));
    expect(listed(line)).toBe(rounded(times(exact(line.quantity), price, markup), rounding));
  }
  const before = lines
    .filter(({ kind }) => kind !== 'discount' && kind !== 'minimum')
    .reduce((sum, line) => sum + listed(line), 0n);
  const of = (kind: string): bigint =>
    lines.filter((line) => line.kind === kind).reduce((sum, line) => sum + listed(line), 0n);
  const off = rounded(
    times(over(before), exact(prices.discount_pct ?? 0), over(1n, 100n)),
    rounding,
  );
  expect(-of('discount')).toBe(off);
  const wanting = BigInt(prices.minimum_minor ?? 0) - (before - off);
  expect(of('minimum')).toBe(wanting > 0n ? wanting : 0n);
  const taxOf = (line: Line): Fraction => {
    const rate = times(exact(line.tax_pct), over(1n, 100n));
    const part = tax.included ? over(rate.n, rate.d + rate.n) : rate;
    return times(over(listed(line)), part);
  };
  const total = (some: readonly Line[]): bigint =>
    rounded(some.map(taxOf).reduce(plus, over(0n)), tax.rounding);
  if (tax.level === 'total') expect(BigInt(option.tax_minor)).toBe(total(lines));
  for (const rate of new Set(lines.map((line) => line.tax_pct))) {
    const same = lines.filter((line) => line.tax_pct === rate);
    const taxes = same.reduce((sum, line) => sum + line.tax_minor, 0);
    if (tax.level === 'rate') expect(BigInt(taxes)).toBe(total(same));
    for (const line of tax.level === 'line' ? same : []) {
      if (line.kind !== 'discount') expect(BigInt(line.tax_minor)).toBe(total([line]));
    }
    expect(taxes).toBeGreaterThanOrEqual(0);
  }
  expect(option.subtotal_minor).toBe(sumOf((line) => line.amount_minor));
  expect(option.tax_minor).toBe(sumOf((line) => line.tax_minor));
  expect(option.total_minor).toBe(option.subtotal_minor + option.tax_minor);
  expect(sumOf((line) => (line.kind === 'labour' ? line.quantity : 0))).toBe(option.charged_min);
  expect(Math.abs(60 * time.p50_h - option.charged_min)).toBeLessThanOrEqual(0.501);
  expect([time.p50_h, time.p80_h, time.p95_h]).toEqual(
    [time.p50_h, time.p80_h, time.p95_h].sort((a, b) => a - b),
  );
  expect(option.days).toBeLessThanOrEqual(option.days_p80);
  for (const { quantity, pack: holds, stock, to_buy: toBuy } of option.materials) {
    if (holds === null || stock === null) continue;
    const isEnough = (packs: number): boolean => stock + packs * holds >= quantity - 1e-5;
    expect([isEnough(toBuy ?? 0), toBuy === 0 || !isEnough((toBuy ?? 0) - 1)]).toEqual([
      true,
      true,
    ]);
  }
}
