import { describe, expect, test } from 'vitest';
import type { Block } from '../../../src/report/model.ts';
import { quoteBlocks } from '../../../src/report/quote/quote-blocks.ts';
import { customerBlocks } from '../../../src/report/quote/quote-customer-blocks.ts';
import { quoteRecord } from '../../../src/report/quote/quote-record.ts';
import { quoteOf, readingsOf } from '../../tasks/quotes.ts';

const readings = readingsOf({ bonnet: 112, roof: 114, boot: 111, 'wing front left': 113 });
const page = { unit: 'um', verbose: false, date: '2026-11-25' } as const;
const prices = { currency: 'EUR', kind: 'quotation', validity_days: 14, terms: 'Pay in cash.' };

const quoted = (labour: object, given = readings) =>
  quoteOf({ readings: given, job: { taken_um: 0 }, shop: { prices: { ...prices, ...labour } } });

const textOf = (blocks: readonly Block[]): string =>
  JSON.stringify(blocks).replaceAll('\u00a0', ' ');
const ownerText = (one: ReturnType<typeof quoted>): string => textOf(customerBlocks(one, page));

describe('a quotation of which no price can be made', () => {
  const result = quoted({ labour_minor_per_h: { polish: 5000 } });

  test('offers the owner nothing, and says that the price is to come', () => {
    const text = ownerText(result);
    expect(text).toContain('"label":"No price yet"');
    expect(text).not.toMatch(/fixed offer|holds until|than the price is made for|Pay in cash/);
    expect(text).toContain('2026-11-25');
  });

  test('tells the shop of no offer either, but of what is wanting', () => {
    const text = textOf(quoteBlocks(result, result.survey.template.panels, page));
    expect(text).toContain('the shop file does not say prices.labour_minor_per_h.');
    expect(text).not.toMatch(/fixed offer|priced at hours|holds until/);
    expect(text).toContain('Of 2026-11-25.');
  });

  test('holds until no day in the record', () => {
    const record = quoteRecord(result, { version: '0', diagnostics: [], date: page.date });
    expect(record['valid_until']).toBeNull();
  });
});

test('with a price it is a fixed offer that holds until its day', () => {
  const result = quoted({ labour_minor_per_h: 5000 });
  expect(ownerText(result)).toMatch(/holds until 2026-12-09.*fixed offer/s);
  const record = quoteRecord(result, { version: '0', diagnostics: [], date: page.date });
  expect(record['valid_until']).toBe('2026-12-09');
});
