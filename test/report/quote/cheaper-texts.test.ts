import { describe, expect, test } from 'vitest';
import type { Block } from '../../../src/report/model.ts';
import { quoteBlocks } from '../../../src/report/quote/quote-blocks.ts';
import { customerBlocks } from '../../../src/report/quote/quote-customer-blocks.ts';
import { cheaperAims } from '../../../src/work/cheaper-aims.ts';
import { quoteOf, readingsOf } from '../../tasks/quotes.ts';

const page = { unit: 'um', verbose: false, date: null } as const;
const textOf = (blocks: readonly Block[]): string =>
  JSON.stringify(blocks).replaceAll('\u00a0', ' ');

const job = { taken_um: 5 };
const shop = { prices: { currency: 'EUR', labour_minor_per_h: 4500 } };
const panels = ['bonnet', 'roof', 'boot', 'wing front left', 'door front left'];

/** The thinnest of a row of cars of which so little may go that a finish without haze takes stronger steps. */
const readings = Array.from({ length: 36 }, (_, car) =>
  readingsOf(Object.fromEntries(panels.map((id, i) => [id, 90 + car + ((7 * car + 5 * i) % 13)]))),
).find((one) =>
  cheaperAims(quoteOf({ readings: one, job, shop }).options).some(
    ({ aim, stronger }) => aim.name === 'full' && stronger.length > 0,
  ),
);
if (readings === undefined) throw new Error('no such car');
const priced = quoteOf({ readings, job, shop });
const unpriced = quoteOf({ readings, job });
const pagesOf = (result: typeof priced): readonly string[] => [
  textOf(quoteBlocks(result, result.survey.template.panels, page)),
  textOf(customerBlocks(result, page)),
];

describe('a further aim that costs less', () => {
  test('says so, and why, to the shop and to the owner', () => {
    expect(cheaperAims(priced.options)).toHaveLength(1);
    const [shop = '', owner = ''] = pagesOf(priced);
    expect(shop).toMatch(/full costs \d+\.\d\d EUR less than correct, for \d+\.\d h less: /);
    expect(shop).toContain('stronger steps take less time on');
    expect(owner).toContain('C full costs less than B correct: its passes are stronger');
    expect(owner).not.toMatch(/combination|steps/);
  });

  test('is told by its hours where the shop has no prices', () => {
    const [shop = '', owner = ''] = pagesOf(unpriced);
    expect(shop).toMatch(/full takes \d+\.\d h less than correct: /);
    expect(owner).toContain('C full takes less time than B correct: ');
  });
});

describe('an aim that is quoted alone', () => {
  const sound = readingsOf(Object.fromEntries(panels.map((id, i) => [id, 112 + ((5 * i) % 13)])));
  const alone = (value: 'full' | 75 | 80, over: object = { shop }) =>
    quoteOf({
      readings: sound,
      job: { taken_um: 0 },
      ...over,
      typed: { aim: { value, origin: 'flag', where: '' } },
    });
  const most = alone(80);
  const [only] = most.options;
  const { cheaper } = most;
  if (only === undefined || cheaper === null) throw new Error('no cheaper aim');

  test('is held against the further ones, of which the first that is cheaper and clears as much is told', () => {
    expect(most.options).toHaveLength(1);
    expect(cheaper.aim.name).toBe('correct');
    expect((cheaper.priced?.total ?? 0n) < (only.priced?.total ?? 0n)).toBe(true);
    expect(cheaper.expected).toBeGreaterThanOrEqual(only.expected);
  });

  test('says to the shop and to the owner what that saves and takes', () => {
    const more = ((cheaper.spent ?? 0) - (only.spent ?? 0)).toFixed(2);
    const [forShop = '', forOwner = ''] = pagesOf(most);
    expect(forShop).toMatch(/correct costs \d+\.\d\d EUR less than 80 %, for \d+\.\d h less: /);
    expect(forShop).toContain(`; it takes ${more} µm more (--aim correct)`);
    expect(forOwner).toContain(
      'more correction (correct), not offered here, costs less than A 80 %: its passes are stronger',
    );
    expect(forOwner).toContain(`; it takes ${more} µm more paint`);
  });

  test('is told so by its hours where the shop has no prices', () => {
    const [forShop = ''] = pagesOf(alone(80, {}));
    expect(forShop).toMatch(/correct takes \d+\.\d h less than 80 %: /);
  });

  test('says nothing where no further one is cheaper, nor among several aims', () => {
    const others = [alone(75), alone('full'), priced];
    expect(others.map((one) => one.cheaper)).toEqual([null, null, null]);
    for (const text of others.flatMap(pagesOf)) expect(text).not.toContain('µm more');
  });
});
