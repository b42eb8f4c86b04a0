import { describe, expect, test } from 'vitest';
import { hasUnknownRisk } from '../../../src/correction/plan/plan.ts';
import { quoteBlocks } from '../../../src/report/quote/quote-blocks.ts';
import { customerBlocks } from '../../../src/report/quote/quote-customer-blocks.ts';
import { quoteOf, readingsOf } from '../../tasks/quotes.ts';

const page = { unit: 'um', verbose: false, date: null } as const;
const readings = readingsOf({
  bonnet: 112,
  roof: 114,
  boot: 111,
  'wing front right': 113,
  'wing front left': 190,
});
const trial = (panel: string): string =>
  [1, 2, 3, 4].map((mark) => `A,${panel},da,foam-soft,medium,1,${mark},190,189.4,no`).join('\n');
const spots = `spot,panel,machine,pad,product,sets,mark,before_um,after_um,colour_on_pad
${trial('wing front left')}
`;
const shop = { prices: { currency: 'EUR', labour_minor_per_h: 4500 } };
const quoted = (spotted: boolean) => {
  const said = { readings, shop, job: { taken_um: 0, finish: 'clear-over-base' } };
  const result = quoteOf(spotted ? { ...said, spots } : said);
  const wing = result.plan.panels.find(({ survey }) => survey.panel.id === 'wing-front-left');
  return {
    isUnknown: wing !== undefined && hasUnknownRisk(wing),
    unknown: result.exclusions.find(({ code }) => code === 'risk-unknown')?.panels,
    owner: JSON.stringify(customerBlocks(result, page)).replaceAll('\u00a0', ' '),
    shop: JSON.stringify(quoteBlocks(result, result.survey.template.panels, page)),
  };
};

describe('repaint that a trial of its own frees', () => {
  const freed = quoted(true);

  test('is polished at a risk that is not known, which the quote does not promise', () => {
    expect(freed.isUnknown).toBe(true);
    expect(freed.unknown).toEqual(['front left wing']);
    expect(freed.shop).toContain('risk not known: front left wing');
  });

  test('is left out of what the owner is told of the chance', () => {
    expect(freed.owner).toContain(
      'on cars like those assumed, is at most 5.0 %. Of the front left wing it is not known. It is never nothing.',
    );
    expect(freed.owner).toContain('the chance that it gets too thin is not known');
  });

  test('and is told of nowhere where it is left as found', () => {
    const left = quoted(false);
    expect([left.isUnknown, left.unknown]).toEqual([false, undefined]);
    expect(left.owner).toContain('is at most 5.0 %. It is never nothing.');
    expect(left.shop).not.toContain('risk not known');
  });
});
