import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { curveAims, quotedAims } from '../../../src/tasks/quote/quote-vehicle.ts';
import { resolveSettings } from '../../../src/tasks/settings/settings.ts';
import { aimOutcome, marginal, type QuoteOption } from '../../../src/work/quote-option.ts';
import { flag, layersOf } from '../layers.ts';
import { quoteOf, quoteOutcome, readingsOf } from '../quotes.ts';

const sound = { bonnet: 112, roof: 114, boot: 111, 'wing front left': 113, 'door front left': 112 };
const readings = readingsOf(sound);
const job = { taken_um: 0 };
const prices = { currency: 'GBP', labour_minor_per_h: 4500 };
const shop = { prices };
describe('the aims of a quote', () => {
  const aimsOf = (said: Parameters<typeof layersOf>[0]) =>
    quotedAims(resolveSettings(layersOf(said)));

  test('are the three that have a name, from the mildest to the strongest', () => {
    expect(aimsOf({})).toEqual(['enhance', 'correct', 'full']);
    expect(aimsOf({ job: { aim: 'full' } })).toEqual(['enhance', 'correct', 'full']);
  });

  test('take in a per cent that a file states, where it belongs', () => {
    expect(aimsOf({ job: { aim: 70 } })).toEqual(['enhance', 70, 'correct', 'full']);
    expect(aimsOf({ shop: { aim: 30 } })).toEqual([30, 'enhance', 'correct', 'full']);
  });

  test('are the one that is typed', () => {
    expect(aimsOf({ typed: { aim: flag(70) }, job: { aim: 'full' } })).toEqual([70]);
    expect(aimsOf({ typed: { aim: flag('enhance' as const) } })).toEqual(['enhance']);
  });

  test('stand on a curve in even steps that ends at the strongest', () => {
    expect(curveAims(resolveSettings(layersOf({})))).toEqual([30, 40, 50, 60, 70, 80, 90, 95]);
    const coarse = { numbers: { 'price.curve.from_pct': 50, 'price.curve.step_pct': 20 } };
    expect(curveAims(resolveSettings(layersOf({ shop: coarse })))).toEqual([50, 70, 90, 95]);
  });
});

describe('an option', () => {
  const result = quoteOf({ readings, job, shop });

  test('charges its hours at the rate, minute by minute', () => {
    for (const { priced, charged, work } of result.options) {
      const minutes = (priced?.lines ?? []).map(({ unitPrice }) => unitPrice?.quantity ?? 0n);
      expect(minutes.reduce((sum, part) => sum + part, 0n)).toBe(1000n * BigInt(charged ?? -1));
      // The middle of a lognormal is its median.
      expect(charged).toBe(Math.round(work.job.time.median));
      const exact = (4500 * (charged ?? 0)) / 60;
      const lines = priced?.lines.length ?? 0;
      expect(Math.abs(Number(priced?.subtotal) - exact)).toBeLessThanOrEqual(lines / 2);
    }
  });

  test('says the chance of taking longer: a half at the middle, a fifth for a quotation', () => {
    for (const { overrun } of result.options) expect(overrun).toBeCloseTo(0.5, 2);
    const firm = quoteOf({ readings, job, shop: { prices: { ...prices, kind: 'quotation' } } });
    for (const [i, { overrun, charged }] of firm.options.entries()) {
      expect(overrun).toBeCloseTo(0.2, 2);
      expect(charged).toBeGreaterThan(result.options[i]?.charged ?? 0);
    }
  });

  test('corrects, spends and leaves by area over the panels that are read', () => {
    const { plan, expected, spent, left, risk } = result.options[1] ?? fail();
    const read = plan.panels.filter(({ survey }) => survey.points.length > 0);
    const area = read.reduce((sum, { survey }) => sum + survey.panel.area, 0);
    const mean = (of: (panel: (typeof read)[number]) => number): number =>
      read.reduce((sum, panel) => sum + (panel.survey.panel.area / area) * of(panel), 0);
    expect(expected).toBeCloseTo(
      mean((panel) => panel.expected),
      10,
    );
    expect(spent).toBeCloseTo(
      mean((panel) => panel.removal.mean),
      10,
    );
    expect(risk).toBe(Math.max(...read.map((panel) => panel.risk ?? 0)));
    expect(left).toBeCloseTo(
      Math.min(
        ...read.map(({ survey, removal }) => (survey.topcoat?.clear.mean ?? 0) - removal.mean),
      ),
      10,
    );
  });

  test('is silent on what is left and on risk where nothing is known of the topcoat', () => {
    const { plan } = result.options[1] ?? fail();
    const unknown = plan.panels.map((panel) => ({
      ...panel,
      survey: { ...panel.survey, topcoat: null },
      risk: null,
    }));
    const { left, risk, spent } = aimOutcome({ ...plan, panels: unknown });
    expect([left, risk]).toEqual([null, null]);
    expect(spent).toBe(result.options[1]?.spent);
  });

  test('has hours, film and days, and no price, where the shop has none', () => {
    const bare = quoteOf({ readings, job });
    expect(bare.missingKeys).toEqual(['prices.currency', 'prices.labour_minor_per_h']);
    for (const { priced, charged, spent } of bare.options) {
      expect(priced).toBeNull();
      expect(charged).toBeGreaterThan(0);
      expect(spent).toBeGreaterThan(0);
    }
  });

  test('has no price while a skill that is needed has no rate', () => {
    const some = { currency: 'GBP', labour_minor_per_h: { polish: 5000, wash: 4000 } };
    const { missingKeys, options } = quoteOf({ readings, job, shop: { prices: some } });
    expect(missingKeys).toEqual([
      'prices.labour_minor_per_h.survey',
      'prices.labour_minor_per_h.protect',
    ]);
    expect(options.every(({ priced }) => priced === null)).toBe(true);
    const none = quoteOf({ readings, job, shop: { prices: { currency: 'GBP' } } });
    expect(none.missingKeys).toEqual(['prices.labour_minor_per_h']);
  });
});

const fail = (): never => {
  throw new Error('no such option');
};

describe('a car on which nothing can be worked', () => {
  test('has rows without hours and price, and 0 % of its marks go', () => {
    const thin = quoteOf({ readings: readingsOf({ bonnet: 50, roof: 52 }, 1), job, shop });
    for (const { expected, spent, left, risk, charged, overrun, priced } of thin.options) {
      expect([expected, spent]).toEqual([0, 0]);
      expect([left, risk, charged, overrun, priced]).toEqual([null, null, null, null, null]);
    }
    expect(thin.missingKeys).toEqual([]);
  });

  test('has no area to speak of where all of it lies under film', () => {
    const covered = quoteOf({ readings, job: { covered: true }, shop });
    for (const { expected, spent, charged } of covered.options) {
      expect([expected, spent, charged]).toEqual([0, null, null]);
    }
  });

  test('has none either where the clear fails or nothing was seen', () => {
    const defects = 'panel,defect,grade\nbonnet,swirl marks,0\nroof,clear coat failure,3\n';
    const two = readingsOf({ bonnet: 112, roof: 112 });
    const { options } = quoteOf({ readings: two, job, shop, defects });
    expect(options.map(({ charged }) => charged)).toEqual([null, null, null]);
  });
});

describe('where an aim is not to be had', () => {
  const cut = { ...sound, bonnet: 92 };
  const { options, exclusions } = quoteOf({ readings: readingsOf(cut), job, shop });

  test('the panel is named with what is reached', () => {
    const [enhance, , full] = options;
    const shortOn = (option: QuoteOption | undefined): readonly string[] =>
      (option?.short ?? []).map(({ survey }) => survey.panel.id);
    expect(shortOn(full)).toContain('bonnet');
    for (const { aimed, expected } of full?.short ?? [])
      expect(expected).toBeLessThan(aimed - 0.01);
    expect(shortOn(enhance).length).toBeLessThanOrEqual(shortOn(full).length);
  });

  test('what the survey found stands in words', () => {
    expect(exclusions.map(({ code }) => code)).toContain('worked-before');
  });
});

/** CARS=1000 tries more of them. */
const CARS = Number(process.env['CARS'] ?? 25);

test('a higher aim never corrects less and never costs less film, in bins that count as one', () => {
  const film = fc.integer({ min: 88, max: 140 });
  const car = fc.record({ bonnet: film, roof: film, boot: film, 'wing front left': film });
  const kit = fc.constantFrom<object>(
    {},
    { machines: ['da'] },
    { machines: ['rotary', 'da'], pads: ['foam-soft', 'foam-medium', 'wool'] },
  );
  const facts = fc.constantFrom<object>({}, { taken_um: 0 }, { hardness: 'hard' });
  fc.assert(
    fc.property(car, kit, facts, (means, things, about) => {
      const { curve } = quoteOf({ readings: readingsOf(means), job: about, shop: things });
      for (const [i, { expected, spent }] of curve.entries()) {
        const before = curve[i - 1];
        if (before === undefined) continue;
        expect(expected).toBeGreaterThanOrEqual(before.expected - BIN.share);
        expect(spent).toBeGreaterThanOrEqual((before.spent ?? 0) - BIN.film);
      }
    }),
    { numRuns: CARS },
  );
}, 600_000);

/** Corrections nearer than this count as equal, and removals in one bin as well. */
const BIN = { share: 0.01, film: 0.1 };

describe('an extra per cent', () => {
  const row = (expected: number, spent: number | null, total: bigint) =>
    ({ expected, spent, priced: { total } }) as unknown as QuoteOption;

  test('costs the difference of two rows over the difference of their corrections', () => {
    // 24 per cent more for 329.10 pounds and 1.37 µm: 13.7125 and 0.0571 each.
    const further = marginal(row(0.61, 1.3, 112_963n), row(0.85, 2.67, 145_873n));
    expect(further?.price).toBe(1_371n);
    expect(further?.film).toBeCloseTo(1.37 / 24, 10);
  });

  test('has no price where no more is to be had, or nothing is worked', () => {
    expect(marginal(row(0.52, 2, 100n), row(0.5204, 2, 100n))).toBeNull();
    expect(marginal(row(0, null, 100n), row(0.5, 2, 100n))).toBeNull();
    expect(marginal(row(0.1, 1, 100n), row(0.5, null, 100n))).toBeNull();
    const unpriced = { ...row(0.5, 2, 0n), priced: null };
    expect(marginal(row(0.1, 1, 100n), unpriced)?.price).toBeNull();
    expect(marginal({ ...unpriced, expected: 0.1 }, row(0.5, 2, 100n))?.price).toBeNull();
  });
});

describe('what a quote is and costs', () => {
  test('is of one file: prices of two are never mixed', () => {
    const project = { prices: { currency: 'EUR', labour_minor_per_h: 9000, markup_pct: 50 } };
    const { settings } = quoteOf({ readings, job, shop, project });
    expect(settings.money.prices.value?.list.currency.code).toBe('GBP');
    expect(settings.money.prices.value?.list.markup).toBe(0n);
    const nearest = quoteOf({ readings, job, shop: {}, project });
    expect(nearest.settings.money.prices).toMatchObject({ origin: 'project' });
  });

  test('is an estimate unless the shop or whoever asks says otherwise', () => {
    const kindOf = (said: object): string =>
      quoteOf({ readings, job, ...said }).settings.money.kind.value;
    expect(kindOf({ shop })).toBe('estimate');
    expect(kindOf({ shop: { prices: { ...prices, kind: 'quotation' } } })).toBe('quotation');
    expect(
      kindOf({
        shop: { prices: { ...prices, kind: 'quotation' } },
        typed: { kind: flag('estimate' as const) },
      }),
    ).toBe('estimate');
  });

  test('says what nobody stated', () => {
    const codes = (said: object): readonly string[] =>
      quoteOf({ readings, job, ...said })
        .assumptions.map(({ code }) => code)
        .filter((code) => code.startsWith('quote-'));
    expect(codes({ shop })).toEqual(['quote-kind', 'quote-hours', 'quote-tax', 'quote-materials']);
    const tax = { name: 'VAT', rate_pct: 20, level: 'rate', rounding: 'half-up', included: false };
    const stated = {
      prices: { ...prices, kind: 'estimate', tax },
      numbers: { 'price.hours.estimate_pct': 60 },
    };
    expect(codes({ shop: stated })).toEqual(['quote-materials']);
    expect(codes({})).toEqual(['quote-kind', 'quote-hours']);
  });

  test('names the preset of tax it goes by, as one to be checked', () => {
    const texts = (preset: string): readonly string[] => {
      const tax = { preset, rate_pct: 20 };
      return quoteOf({ readings, job, shop: { prices: { ...prices, tax } } })
        .assumptions.filter(({ code }) => code === 'quote-tax')
        .map(({ text }) => text);
    };
    expect(texts('uk-vat')[0]).toMatch(/^uk-vat from memory, to be checked: HMRC VAT Notice 700/);
    expect(texts('eu-e-invoice')[0]).toMatch(/EN 16931/);
    expect(texts('none')).toEqual([]);
  });

  test('counts and names what is used and has no price', () => {
    const wax = [{ id: 'wax', pack: 250, unit: 'ml', price_minor: 2600 }];
    const { assumptions } = quoteOf({
      readings,
      job,
      shop: { prices: { ...prices, materials: wax } },
    });
    const said = assumptions.find(({ code }) => code === 'quote-materials');
    const names = said?.names ?? [];
    expect(names.length).toBeGreaterThan(1);
    expect(names).not.toContain('wax');
    expect(said?.text).toBe(
      `${names.length} materials are not charged, as the price list lacks them`,
    );
  });

  test('that cannot be written down exactly is refused, at the prices', () => {
    const dear = { id: 'medium', pack: 1, unit: 'ml', price_minor: 1_000_000_000_000 };
    const { value, diagnostics } = quoteOutcome({
      readings: readingsOf({ bonnet: 112, roof: 112, boot: 112, 'door front left': 112 }),
      job,
      shop: {
        prices: { ...prices, materials: [dear, { ...dear, id: 'fine' }], markup_pct: 1000 },
        numbers: { 'work.materials.product_per_set_ml_per_m2': 800 },
      },
    });
    expect(value).toBeUndefined();
    expect(diagnostics.map(({ code, at }) => [code, at?.file])).toContainEqual([
      'price-too-large',
      'shop.json',
    ]);
  });

  test('of an hour for less than a unit of the currency, a warning asks whether pence were meant', () => {
    const small = (labour: unknown) =>
      quoteOutcome({
        readings,
        job,
        shop: { prices: { currency: 'GBP', labour_minor_per_h: labour } },
      }).diagnostics.map(({ code }) => code);
    expect(small(45)).toContain('price-small');
    expect(small(100)).not.toContain('price-small');
    expect(small({ polish: 5400, other: 42 })).toContain('price-small');
  });

  describe('for a pack that is too small to be one', () => {
    const told = (
      pack: object,
      {
        labour = 4500,
        aim = 'correct',
        numbers = {},
      }: { labour?: number; aim?: string | null; numbers?: object } = {},
    ) => {
      const entry = { id: 'fine', pack: 1, unit: 'ml', price_minor: 3333, ...pack };
      const { diagnostics, value } = quoteOutcome({
        readings,
        job,
        typed: aim === null ? {} : { aim: flag(aim as 'correct') },
        shop: {
          numbers,
          prices: {
            currency: 'GBP',
            labour_minor_per_h: labour,
            materials: [{ id: 'wax', pack: 250, unit: 'ml', price_minor: 2600 }, entry],
          },
        },
      });
      const used = (value ?? [])
        .flatMap(({ result }) => result.options)
        .flatMap(({ priced }) =>
          (priced?.lines ?? []).flatMap(({ id, unitPrice }) =>
            id === entry.id && unitPrice !== null ? [Number(unitPrice.quantity) / 1000] : [],
          ),
        );
      return { asked: diagnostics.filter(({ code }) => code === 'price-pack-small'), used };
    };

    test('a warning says how many of them the job would take, where the pack stands', () => {
      const { asked, used } = told({});
      expect(used).toEqual([expect.any(Number)]);
      expect(used[0]).toBeGreaterThan(20);
      expect(asked).toEqual([
        {
          code: 'price-pack-small',
          severity: 'warning',
          message: 'a pack of "fine" is 1 ml, and costs 3333 in the least unit of GBP',
          at: expect.objectContaining({ file: 'shop.json' }),
          hint: `the job takes ${used[0]} ml, which is ${used[0]} packs of 1 ml: is the pack 1 litre, "pack": 1000?`,
        },
      ]);
    });

    test('the warning is for the aim that takes most', () => {
      const { asked, used } = told({}, { aim: null });
      expect(new Set(used).size).toBeGreaterThan(1);
      expect(asked.map(({ hint }) => hint)).toEqual([
        expect.stringContaining(`takes ${Math.max(...used)} ml`),
      ]);
    });

    test('a job may take so many packs, and no more', () => {
      const { used } = told({});
      const [ml] = used.map(Number);
      const fifth = Math.ceil((ml ?? 0) / 5);
      expect(told({ pack: fifth }).asked).toEqual([]);
      expect(told({ pack: fifth }, { numbers: { 'price.packs.most': 4 } }).asked).toHaveLength(1);
      expect(fifth).toBeGreaterThan(10);
    });

    test('a liquid is asked about that comes in less than anybody sells, however little a job takes', () => {
      const numbers = { 'price.packs.most': 100 };
      expect(told({ pack: 9 }, { numbers }).asked).toHaveLength(1);
      expect(told({ pack: 10 }, { numbers }).asked).toEqual([]);
      const smaller = { ...numbers, 'price.packs.least_ml': 8 };
      expect(told({ pack: 9 }, { numbers: smaller }).asked).toEqual([]);
    });

    test('tape is asked about by its length', () => {
      const tape = { id: 'masking-tape', unit: 'm', price_minor: 420 };
      const { asked, used } = told({ ...tape, pack: 2 });
      expect(asked.map(({ hint }) => hint)).toEqual([
        `the job takes ${used[0]} m, which is ${Math.ceil((used[0] ?? 0) / 2)} packs of 2 m: does the pack hold more?`,
      ]);
      expect(told({ ...tape, pack: 50 }).asked).toEqual([]);
    });

    test('pads are sold one by one, and what nobody uses is not asked about', () => {
      const pad = { id: 'foam-soft-150', unit: 'pieces', price_minor: 900 };
      expect(told(pad, { numbers: { 'work.materials.pad_life': 1 } }).asked).toEqual([]);
      expect(told({ id: 'heavy' }).asked).toEqual([]);
    });

    test('a price by the millilitre is one: under what a minute of labour costs', () => {
      expect(told({ price_minor: 75 }).asked).toHaveLength(1);
      expect(told({ price_minor: 74 }).asked).toEqual([]);
      expect(told({ price_minor: 74 }, { labour: 4400 }).asked).toHaveLength(1);
      expect(
        told({ price_minor: 75 }, { numbers: { 'price.packs.by_unit_min': 2 } }).asked,
      ).toEqual([]);
    });

    test('where labour is given away every small pack is asked about that costs anything', () => {
      expect(told({ price_minor: 3 }, { labour: 0 }).asked).toHaveLength(1);
      expect(told({ price_minor: 0 }, { labour: 0 }).asked).toEqual([]);
    });
  });

  test('of a coin that is more than 1 % of a price, a warning says what becomes of it', () => {
    const told = (coin: number, numbers: object = {}) =>
      quoteOutcome({
        readings,
        job,
        shop: {
          numbers,
          prices: { currency: 'GBP', labour_minor_per_h: 4500, cash_rounding_minor: coin },
        },
      }).diagnostics.filter(({ code }) => code === 'price-coin-large');
    expect(told(1_000_000)[0]).toMatchObject({
      severity: 'warning',
      message: expect.stringMatching(/^cash_rounding_minor 1000000 is .* becomes 0 to pay/),
      at: { file: 'shop.json' },
    });
    expect(told(5)).toEqual([]);
    expect(told(5, { 'price.cash.coarse_pct': 0.1 })).toEqual([]);
    expect(told(100)).toEqual([]);
    expect(told(100, { 'price.cash.coarse_pct': 0.1 })).toHaveLength(1);
  });
});
