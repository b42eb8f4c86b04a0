import { describe, expect, test } from 'vitest';
import { customerBlocks } from '../../../src/report/quote/quote-customer-blocks.ts';
import { quoteOf, readingsOf } from '../../tasks/quotes.ts';

const page = { unit: 'um', verbose: false, date: null } as const;
const sound = readingsOf({ roof: 114, boot: 111, 'wing front left': 113 });

const ownerText = (rows: string, panels: readonly string[] = []): string => {
  const readings = `${sound}${rows}`;
  const result = quoteOf({
    readings,
    panels,
    job: { taken_um: 0 },
    shop: { prices: { currency: 'EUR', labour_minor_per_h: 4500 } },
  });
  return JSON.stringify(customerBlocks(result, page)).replaceAll('\u00a0', ' ');
};

const wrong = (where: string): string =>
  `Readings on the ${where} do not fit the rest: they are taken again before any panel is polished.`;

describe('the owner is told before any choice of readings that look wrong', () => {
  test('where a slip of the key makes filler of a sound panel', () => {
    const text = ownerText('bonnet,1,122.4\nbonnet,2,118.9\nbonnet,3,1250\n');
    expect(text).toContain('bonnet: by the readings there is filler');
    expect(text).toContain(wrong('bonnet'));
    expect(text.indexOf(wrong('bonnet'))).toBeLessThan(text.indexOf('what you get'));
  });

  test('where a point shows 0 and nothing else', () => {
    const text = ownerText('bonnet,1,112.4\nbonnet,2,118.9\nbonnet,3,0\n');
    expect(text).toContain(wrong('bonnet'));
  });

  test('and of none where all fit', () => {
    expect(ownerText('bonnet,1,112.4\nbonnet,2,118.9\n')).not.toContain('do not fit');
  });

  test('nor of a panel that is not quoted', () => {
    const slip = 'bonnet,1,122.4\nbonnet,2,118.9\nbonnet,3,1250\n';
    expect(ownerText(slip, ['roof'])).not.toContain('do not fit');
  });
});
