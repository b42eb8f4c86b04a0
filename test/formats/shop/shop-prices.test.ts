import { describe, expect, test } from 'vitest';
import { readShop } from '../../../src/formats/shop/shop.ts';
import type { Prices } from '../../../src/formats/shop/shop-prices.ts';
import { shareOfPercent } from '../../../src/work/money.ts';

const BEFORE = '{"schema": "leastcut/shop/1", "prices": '.length;

const read = (prices: string) =>
  readShop('shop.json', `{"schema": "leastcut/shop/1", "prices": ${prices}}`);

function pricesOf(prices: string): Prices {
  const { value, diagnostics } = read(prices);
  expect(diagnostics).toEqual([]);
  const found = value?.value.prices;
  if (found === undefined) throw new Error('refused');
  return found;
}

const told = (prices: string): readonly string[] =>
  read(prices).diagnostics.map(({ message, hint }) => `${message} | ${hint ?? ''}`);

test('a price list is read in whole minor units and exact shares', () => {
  const { list, ...rest } = pricesOf(`{
    "currency": "KWD", "kind": "quotation", "labour_minor_per_h": { "polish": 12500, "other": 9000 },
    "materials": [{ "id": "medium", "pack": 500, "unit": "ml", "price_minor": 8250, "stock": 120.5 }],
    "markup_pct": 12.5, "fixed": [{ "name": "collection", "price_minor": 3000, "tax_pct": 5 }],
    "minimum_minor": 20000, "discount_pct": 7.25, "rounding": "half-even",
    "tax": { "name": "VAT", "rate_pct": 8.875, "level": "line", "rounding": "up", "included": true },
    "cash_rounding_minor": 5, "deposit_pct": 30, "validity_days": 14, "terms": "Cash only." }`);
  expect(list).toStrictEqual({
    currency: { code: 'KWD', digits: 3 },
    labour: { bySkill: new Map([['polish', 12_500n]]), other: 9_000n },
    materials: [{ id: 'medium', pack: 500n, unit: 'ml', price: 8_250n, stock: 120.5 }],
    markup: 125_000n,
    fixed: [{ name: 'collection', price: 3_000n, taxShare: 50_000n }],
    minimum: 20_000n,
    discount: { kind: 'share', share: 72_500n },
    tax: { name: 'VAT', share: 88_750n, level: 'line', rounding: 'up', included: true },
    rounding: 'half-even',
    cashStep: 5n,
    deposit: 300_000n,
  });
  expect(rest).toStrictEqual({
    kind: 'quotation',
    taxPreset: null,
    contact: [],
    taxSaid: true,
    validityDays: 14,
    terms: ['Cash only.'],
  });
});

test('what a price list leaves out is not charged, and a tax is never taken for granted', () => {
  const { list, kind, taxSaid } = pricesOf('{ "currency": "EUR", "labour_minor_per_h": 4500 }');
  expect(list.labour).toStrictEqual({ bySkill: new Map(), other: 4_500n });
  expect([list.markup, list.minimum, list.deposit, list.tax.share]).toEqual([0n, 0n, 0n, 0n]);
  expect([list.discount, list.cashStep, kind, taxSaid]).toEqual([null, null, null, false]);
});

describe('a preset of tax', () => {
  test('gives what is not stated beside it', () => {
    const { list, taxPreset } = pricesOf('{ "currency": "GBP", "tax": { "preset": "uk-vat" } }');
    expect(taxPreset).toBe('uk-vat');
    expect(list.tax).toStrictEqual({
      name: 'VAT',
      share: 200_000n,
      level: 'total',
      rounding: 'down',
      included: false,
    });
    const own = '{ "currency": "GBP", "tax": { "preset": "uk-vat", "rate_pct": 5 } }';
    expect(pricesOf(own).list.tax.share).toBe(50_000n);
  });

  test('that has no rate of its own wants one', () => {
    expect(told('{ "currency": "EUR", "tax": { "preset": "eu-e-invoice" } }')).toEqual([
      '"prices.tax" does not say rate_pct | say it',
    ]);
  });

  test('is named where a rule of one’s own is not whole', () => {
    expect(told('{ "currency": "EUR", "tax": { "rate_pct": 19, "level": "rate" } }')).toEqual([
      '"prices.tax" does not say rounding, included | say them, or a preset: uk-vat, au-gst, eu-e-invoice, none',
    ]);
  });
});

describe('a mistake in prices is met with what to write instead', () => {
  test.each([
    ['"£"', 'write "GBP"'],
    ['"eur"', 'write "EUR"'],
    ['"Euro"', 'write "EUR"'],
    ['"GPB"', 'did you mean "GBP"?'],
    ['"dollars"', 'three letters, as on a bank statement: "EUR", "GBP", "USD"'],
  ])('the currency %s', (currency, hint) => {
    expect(told(`{ "currency": ${currency} }`)[0]).toContain(`| ${hint}`);
  });

  test.each([
    ['45.5', 'such as pence or cents: 4550 for 45.50'],
    ['"45.50"', 'such as pence or cents: 4550 for 45.50'],
    ['"£45"', 'such as pence or cents: 4500 for 45.00'],
  ])('an hour at %s', (price, hint) => {
    expect(told(`{ "currency": "GBP", "labour_minor_per_h": ${price} }`)[0]).toContain(hint);
  });

  test.each([
    ['{ "id": "mediun", "pack": 1, "unit": "ml", "price_minor": 1 }', 'did you mean "medium"?'],
    [
      '{ "id": "foam-soft", "pack": 1, "unit": "pieces", "price_minor": 1 }',
      'a pad is named with its diameter in mm: "foam-soft-150"',
    ],
    [
      '{ "id": "wax", "pack": 1, "unit": "pieces", "price_minor": 1 }',
      'say what a pack holds in ml',
    ],
    ['{ "id": "wax", "pack": 1.5, "unit": "ml", "price_minor": 1 }', 'a whole number'],
  ])('the material %s', (entry, hint) => {
    expect(told(`{ "currency": "GBP", "materials": [${entry}] }`)[0]).toContain(hint);
  });

  test('no material that a job uses is a slip; what is near one is told, and read all the same', () => {
    const entries = ['wax', 'drying-agent', 'foam-sofft-80', 'foam-soft-150'].map(
      (id) =>
        `{ "id": "${id}", "pack": 1, "unit": "${id.startsWith('foam') ? 'pieces' : 'ml'}", "price_minor": 1 }`,
    );
    const text = `{ "currency": "GBP", "materials": [${entries.join(', ')}] }`;
    expect(told(text)).toEqual([
      '"prices.materials[2].id" names "foam-sofft-80", which no job uses: quotes are refused until it is mended | did you mean "foam-soft-80"?',
    ]);
    const { value, diagnostics } = read(text);
    expect(diagnostics.map(({ severity }) => severity)).toEqual(['warning']);
    expect(value?.value.prices?.list.materials).toHaveLength(4);
    expect(value?.value.unusedMaterials.map(({ id, meant }) => [id, meant === undefined])).toEqual([
      ['drying-agent', true],
      ['foam-sofft-80', false],
    ]);
  });

  test('a per cent under one is taken as it stands, and asked about with what was likely meant', () => {
    const small =
      '"markup_pct": 0.15, "discount_pct": 0.05, "deposit_pct": 0.3, "fixed": [{ "name": "pick-up", "price_minor": 1, "tax_pct": 0.07 }], "tax": { "name": "VAT", "rate_pct": 0.19, "level": "total", "rounding": "half-up", "included": false }';
    const text = `{ "currency": "GBP", ${small} }`;
    expect(told(text)).toEqual([
      '"prices.markup_pct" is 0.15 %, less than one per cent | did you mean 15?',
      '"prices.discount_pct" is 0.05 %, less than one per cent | did you mean 5?',
      '"prices.deposit_pct" is 0.3 %, less than one per cent | did you mean 30?',
      '"prices.tax.rate_pct" is 0.19 %, less than one per cent | did you mean 19?',
      '"prices.fixed[0].tax_pct" is 0.07 %, less than one per cent | did you mean 7?',
    ]);
    const { value, diagnostics } = read(text);
    expect(diagnostics.map(({ severity, code }) => `${severity} ${code}`)).toEqual(
      Array(5).fill('warning percent-small'),
    );
    expect(value?.value.prices?.list.tax.share).toBe(shareOfPercent(0.19));
    expect(diagnostics[0]?.at).toMatchObject({
      line: 1,
      column: BEFORE + text.indexOf('0.15') + 1,
    });
  });

  test('a per cent of nothing, of one and of more is not asked about', () => {
    expect(
      told('{ "currency": "GBP", "markup_pct": 0, "discount_pct": 1, "deposit_pct": 1.5 }'),
    ).toEqual([]);
  });

  test('a material twice', () => {
    const entry = '{ "id": "wax", "pack": 1, "unit": "ml", "price_minor": 1 }';
    expect(told(`{ "currency": "GBP", "materials": [${entry}, ${entry}] }`)).toEqual([
      '"prices.materials[1].id" names "wax" again | keep one of the two',
    ]);
  });

  test('two discounts', () => {
    const both = '{ "currency": "GBP", "discount_pct": 5, "discount_minor": 100 }';
    expect(told(both)).toEqual([
      '"prices.discount_minor" is a second discount beside discount_pct | keep one of the two',
    ]);
  });

  test('more decimals of a per cent than are exact', () => {
    expect(told('{ "currency": "GBP", "markup_pct": 12.34567 }')).toEqual([
      '"prices.markup_pct" has more than 4 digits after the point | round it to 4 digits',
    ]);
    expect(pricesOf('{ "currency": "GBP", "markup_pct": 12.3456 }').list.markup).toBe(123_456n);
  });

  test.each([
    ['"rounding": "bankers"', 'write "half-even"'],
    ['"tax": { "preset": "uk-vat", "level": "invoice" }', 'write "total"'],
    ['"vat": 20', 'write tax: "tax": { "preset": "uk-vat" }'],
    ['"hourly_rate": 45', 'write labour_minor_per_h, in the least unit of the currency'],
    ['"labour_minor_per_h": { "polishing": 5400 }', 'keys known here: wash, survey, polish'],
    ['"kind": "quote"', 'it takes "estimate" or "quotation"'],
  ])('%s', (key, hint) => {
    expect(told(`{ "currency": "GBP", ${key} }`)[0]).toContain(hint);
  });

  test('a price list without a currency', () => {
    expect(told('{ "labour_minor_per_h": 4500 }')[0]).toContain('"prices.currency" is missing');
  });
});
