/** The pages of a quote against its record: the same figures, and only those that were asked for. */
import { describe, expect, test } from 'vitest';
import type { Block } from '../../src/report/model.ts';
import { amountText } from '../../src/report/quote/money-text.ts';
import { quoteBlocks } from '../../src/report/quote/quote-blocks.ts';
import { customerBlocks } from '../../src/report/quote/quote-customer-blocks.ts';
import { quoteRecord } from '../../src/report/quote/quote-record.ts';
import { quoteTable } from '../../src/report/quote/quote-table.ts';
import { quoteOf, readingsOf } from '../tasks/quotes.ts';

const readings = readingsOf({ bonnet: 95, roof: 114, boot: 111, 'wing front left': 113 });
const shop = {
  name: 'Invented Paintwork',
  prices: {
    currency: 'EUR',
    kind: 'quotation',
    labour_minor_per_h: { polish: 5400, other: 4200 },
    materials: [{ id: 'medium', pack: 1000, unit: 'ml', price_minor: 3750, stock: 0 }],
    markup_pct: 15,
    fixed: [{ name: 'collection', price_minor: 2500 }],
    discount_pct: 5,
    tax: { name: 'VAT', rate_pct: 19, level: 'rate', rounding: 'half-up', included: false },
    cash_rounding_minor: 5,
    deposit_pct: 30,
    validity_days: 14,
    terms: ['Cash or card.'],
  },
};
const job = { taken_um: 0, vehicle: { id: 'IN-1', make: 'Invented', model: 'One', year: 1999 } };
const result = quoteOf({ readings, job, shop });
const { panels } = result.survey.template;
const page = { unit: 'um', verbose: false, date: null } as const;
const record = quoteRecord(result, { version: '0', diagnostics: [], date: '2026-11-25' }) as {
  readonly options: readonly Readonly<Record<string, unknown>>[];
  readonly [key: string]: unknown;
};

const textOf = (blocks: readonly Block[]): string =>
  JSON.stringify(blocks).replaceAll('\u00a0', ' ');
const shopPage = textOf(quoteBlocks(result, panels, page));
const customer = textOf(customerBlocks(result, page));

type Line = { readonly amount_minor: number; readonly tax_minor: number };

describe('the record', () => {
  test('has lines that add up to the subtotal, and with the tax to the total', () => {
    expect(record.options).toHaveLength(3);
    for (const option of record.options) {
      const lines = option['lines'] as readonly Line[];
      const sum = (of: (line: Line) => number): number =>
        lines.reduce((all, one) => all + of(one), 0);
      expect(sum((line) => line.amount_minor)).toBe(option['subtotal_minor']);
      expect(sum((line) => line.tax_minor)).toBe(option['tax_minor']);
      expect(option['total_minor']).toBe(
        Number(option['subtotal_minor']) + Number(option['tax_minor']),
      );
    }
  });

  test('says when it holds until, for the day that was asked for', () => {
    expect([record['date'], record['valid_until']]).toEqual(['2026-11-25', '2026-12-09']);
    const dateless = quoteRecord(result, { version: '0', diagnostics: [], date: null });
    expect([dateless['date'], dateless['valid_until']]).toEqual([null, null]);
  });

  test('has null for money where there is no price, never 0', () => {
    const bare = quoteRecord(quoteOf({ readings, job }), {
      version: '0',
      diagnostics: [],
      date: null,
    });
    expect(bare).toMatchObject({ currency: null, tax: null });
    for (const option of bare['options'] as readonly Readonly<Record<string, unknown>>[]) {
      expect(option).toMatchObject({ total_minor: null, subtotal_minor: null, lines: [] });
    }
  });
});

describe.each([
  ['for the shop', shopPage],
  ['for the customer', customer],
])('the page %s', (_, text) => {
  test('has the totals of the record', () => {
    for (const option of record.options) {
      for (const key of [
        'subtotal_minor',
        'tax_minor',
        'total_minor',
        'payable_minor',
        'deposit_minor',
      ]) {
        expect(text).toContain(`"${amountText(BigInt(Number(option[key])), { digits: 2 })}"`);
      }
    }
  });

  test('is one kind of document, and names no other', () => {
    expect(text.toLowerCase()).toContain('quotation');
    expect(text.toLowerCase()).not.toContain('estimate');
  });

  test('prints a day only when asked', () => {
    expect(text).not.toMatch(/\d{4}-\d\d-\d\d/);
    expect(text).toMatch(/[Hh]olds for 14 days/);
  });

  test('has each aim once beside the others, and no other mark on any of them', () => {
    for (const [i, name] of ['enhance', 'correct', 'full'].entries()) {
      expect(text).toMatch(new RegExp(`"(text|title)":"${'ABC'.charAt(i)} ${name}"`));
      expect(text).not.toMatch(new RegExp(`"[^"]* ${name}[^":]*[*(!][^"]*","(tone|align)"`));
    }
  });

  test('holds no value that is none', () => {
    expect(text).not.toMatch(/NaN|Infinity|undefined|\[object/);
  });
});

describe('a panel of two kinds of film', () => {
  const split = `${readingsOf({ bonnet: 112, roof: 114, 'wing front left': 113, 'door front left': 112 })}boot,1,112
boot,2,114
boot,3,111
boot,4,240
boot,5,252
boot,6,247
`;
  const mixed = quoteOf({ readings: split, job, shop });

  test('is told to the owner by where its paint is thicker, with no word of a zone', () => {
    const owner = textOf(customerBlocks(mixed, page));
    expect(owner).toContain('nothing on boot lid (where its paint is thicker)');
    expect(owner).toContain('boot lid (where its paint is thicker): left as found');
    expect(owner).not.toContain('zone');
    expect(textOf(quoteBlocks(mixed, panels, page))).toContain('boot lid (thicker zone)');
  });
});

describe('what is to be bought', () => {
  const material = (id: string, stock?: number) => ({
    id,
    pack: 1000,
    unit: 'ml',
    price_minor: 3750,
    ...(stock === undefined ? {} : { stock }),
  });
  const boughtFor = (...materials: readonly ReturnType<typeof material>[]) => {
    const prices = { ...shop.prices, materials };
    const one = quoteOf({ readings, job, shop: { prices } });
    const pageWith = (verbose: boolean): string =>
      textOf(quoteBlocks(one, panels, { ...page, verbose }));
    return { brief: pageWith(false), full: pageWith(true) };
  };

  test('names what stock does not cover, and says how many materials it knows nothing of', () => {
    const { brief, full } = boughtFor(material('medium', 0), material('fine', 9000));
    expect(brief).toMatch(
      /packs for A\/B\/C: medium polish of 1000 ml 1; no stock listed of \d\d \(-v\)/,
    );
    expect(full).toMatch(/so look yourself: wheel cleaner, [^"]*\bwax\b[^"]*"/);
    expect(full).not.toMatch(/look yourself: [^"]*fine polish/);
  });

  test('counts a material on the list without a stock among those it knows nothing of', () => {
    const { full } = boughtFor(material('medium', 9000), material('fine'));
    expect(full).toMatch(/nothing of what is counted; [^"]*look yourself: [^"]*fine polish/);
  });

  test('is no line at all where the shop counts nothing', () => {
    expect(boughtFor(material('medium')).brief).not.toContain('To buy');
  });
});

describe('a quote with little to say', () => {
  const plain = quoteOf({
    readings,
    job: { taken_um: 0 },
    shop: { prices: { currency: 'EUR', labour_minor_per_h: 4500 } },
  });
  const pagesOf = (one: typeof plain, unit: 'um' | 'mil' = 'um') => ({
    forShop: textOf(quoteBlocks(one, panels, { ...page, unit, verbose: true })),
    forCustomer: textOf(customerBlocks(one, { ...page, unit })),
  });

  test('is an estimate, and says what that is', () => {
    const { forShop, forCustomer } = pagesOf(plain);
    expect(forShop).toContain('An estimate may change');
    expect(forCustomer).toContain('It may change when the work shows what nobody can see now');
    expect(forCustomer).not.toMatch(/Deposit|Terms|"This offer"|"From"/);
    expect(forShop).toContain('polishing');
  });

  test('has the same totals and no tax where none is charged', () => {
    const { forShop, forCustomer } = pagesOf(plain);
    for (const text of [forShop, forCustomer]) expect(text).not.toContain('subtotal');
    const total = amountText(plain.options[0]?.priced?.total ?? 0n, { digits: 2 });
    expect(forShop).toContain(total);
    expect(forCustomer).toContain(total);
  });

  test('has neither price nor money where the shop has none', () => {
    const bare = pagesOf(quoteOf({ readings, job: { taken_um: 0 } }));
    expect(bare.forShop).toContain('no price is made up');
    expect(bare.forCustomer).not.toMatch(/price \(|EUR/);
  });

  test('tells film in mil where that is asked for', () => {
    const { forShop, forCustomer } = pagesOf(plain, 'mil');
    expect(forShop).toContain('Film and money in mil and EUR');
    expect(forCustomer).toContain('paint taken there (mil)');
  });

  describe('of a car on which nothing can be polished', () => {
    const thin = quoteOf({
      readings: readingsOf({ bonnet: 50, roof: 51 }, 1),
      shop: {
        prices: {
          currency: 'EUR',
          labour_minor_per_h: 4500,
          materials: [{ id: 'wax', pack: 1, unit: 'ml', price_minor: 1 }],
          validity_days: 9,
          terms: ['Pay in cash.'],
        },
      },
    });
    const { forShop, forCustomer } = pagesOf(thin);

    test('draws no curve, makes no price and says why', () => {
      expect(forShop).toContain('nothing is polished under any aim');
      expect(forCustomer).toContain('Nothing on this car can be polished');
      for (const text of [forShop, forCustomer]) {
        expect(text).not.toContain('"kind":"curve"');
        expect(text).toContain('left as found');
      }
    });

    test('offers and compares nothing, and asks for nothing to be paid or signed', () => {
      for (const text of [forShop, forCustomer]) {
        expect(text).not.toMatch(/costs the same|choose from|Not offered|enhance|Given away|Holds/);
        expect(text).not.toMatch(/Signature|Pay in cash|Short of|best judgement/);
      }
    });
  });

  test('says of a car without marks that there is nothing to polish, and not that it cannot be', () => {
    const clean = quoteOf({
      readings: readingsOf({ bonnet: 112, roof: 113 }, 1),
      shop: { prices: { currency: 'EUR', labour_minor_per_h: 4500 } },
      defects: 'panel,defect,grade\nbonnet,swirl marks,0\nroof,swirl marks,0\n',
    });
    const { forShop, forCustomer } = pagesOf(clean);
    expect(forShop).toContain('nothing is polished under any aim');
    expect(forCustomer).toContain('no mark that wants polishing');
    expect(forCustomer).not.toContain('can be polished');
  });
});

test('the day stands on both pages when it is asked for', () => {
  const dated = { ...page, date: '2026-11-25' };
  expect(textOf(quoteBlocks(result, panels, dated))).toContain(
    'Of 2026-11-25; holds until 2026-12-09.',
  );
  expect(textOf(customerBlocks(result, dated))).toContain('2026-11-25; holds until 2026-12-09');
  expect(textOf(customerBlocks(result, dated))).not.toContain('Of 2026');
});

describe('the page for the customer', () => {
  test('says who it is from, and that a reading is no promise', () => {
    expect(customer).toContain('Invented Paintwork');
    expect(customer).toContain('A reading is no promise.');
  });

  test('has no word of the trade without its meaning', () => {
    expect(customer).not.toMatch(/P50|P80|topcoat|clear coat|dual action|Assumed/);
  });
});

test('a table has a row for each line of each aim, which add up as in the record', () => {
  const { columns, rows } = quoteTable([result]);
  const at = (name: string): number => columns.indexOf(name);
  for (const option of record.options) {
    const own = rows.filter((row) => row[at('aim')] === option['aim']);
    expect(own).toHaveLength((option['lines'] as readonly unknown[]).length);
    const sum = own.reduce((all, row) => all + Number(row[at('amount_minor')]), 0);
    expect(sum).toBe(option['subtotal_minor']);
    expect(own[0]?.[at('total_minor')]).toBe(option['total_minor']);
  }
  const bare = quoteTable([quoteOf({ readings, job })]);
  expect(bare.rows).toHaveLength(3);
  expect(bare.rows[0]?.[at('amount_minor')]).toBeNull();
});

test('an aim that clears less than a milder one says why, and no other does', () => {
  const [first, second] = result.options;
  if (first === undefined || second === undefined) throw new Error('no options');
  const turned = {
    ...result,
    options: [
      { ...first, expected: 0.9 },
      { ...second, expected: 0.8 },
    ],
  };
  const told = 'correct clears less than enhance here';
  for (const blocks of [quoteBlocks(turned, panels, page), customerBlocks(turned, page)]) {
    expect(textOf(blocks)).toContain(told);
  }
  expect(shopPage).not.toContain('clears less than');
});

test('where an aim falls short, each panel is named once, at the aim where it first does', () => {
  const [, told = ''] =
    /"label":"Short of the aim","text":(?:\{"text":)?"([^"]*)"/.exec(shopPage) ?? [];
  expect(told).toMatch(/^enhance and correct: /);
  expect(told.match(/bonnet/g)).toHaveLength(1);
});

describe('the page for the customer', () => {
  /** What comes before what, by its place in the text. */
  const inOrder = (text: string, parts: readonly string[]): readonly string[] =>
    [...parts].sort((a, b) => text.indexOf(a) - text.indexOf(b));

  test('has the choices with their prices before the sums, the reasons and the curve, and the signature below all that it binds to', () => {
    const parts = [
      '"what you get"',
      '"price (EUR)"',
      '"what it is for (EUR)"',
      '"What is not promised, and why"',
      '"curve"',
      '"What to know"',
      '"To order"',
    ];
    for (const part of parts) expect(customer).toContain(part);
    expect(inOrder(customer, parts)).toEqual(parts);
  });

  test('says who offers it and how to reach them, to whom, and has a place to sign', () => {
    const owned = quoteOf({
      readings,
      job: { ...job, vehicle: { ...job.vehicle, owner: 'Odalys Brackenthorp' } },
      shop: {
        ...shop,
        prices: { ...shop.prices, contact: ['4 Kiln Lane', 'telephone 0555 0142'] },
      },
    });
    const text = textOf(customerBlocks(owned, page));
    expect(text).toContain('"Invented Paintwork, 4 Kiln Lane, telephone 0555 0142"');
    expect(text).toContain('"label":"For","text":"Odalys Brackenthorp"');
    expect(text).toContain('["Choice (A, B, C)","Name","Date of order","Signature"]');
    expect(text).toContain('"fields":["Date"]');
    expect(textOf(customerBlocks(owned, { ...page, date: '2026-11-25' }))).not.toContain(
      '["Date"]',
    );
  });

  test('names first the panels that no choice polishes', () => {
    const thin = quoteOf({
      readings: readingsOf({ bonnet: 62, roof: 114, boot: 111, 'wing front left': 113 }),
      job,
      shop,
    });
    const text = textOf(customerBlocks(thin, page));
    const untouched = /"Not polished by any of them","text":"([^"]+)"/.exec(text)?.[1] ?? '';
    expect(untouched).toContain('bonnet');
    expect(untouched).not.toContain('roof,');
    const worked = thin.options.flatMap(({ plan }) =>
      plan.panels.filter(({ removal }) => removal.mean > 0).map(({ survey }) => survey.panel.name),
    );
    for (const name of worked) expect(untouched.split(/[,;] /)).not.toContain(name);
  });

  test('offers no choice that gets and costs the same as another', () => {
    const [enhance, correct, full] = result.options;
    if (enhance === undefined || correct === undefined || full === undefined) {
      throw new Error('no options');
    }
    const little = { ...result, options: [enhance, correct, { ...correct, aim: full.aim }] };
    const text = textOf(customerBlocks(little, page));
    expect(text).toContain('on this car full gets and costs the same as correct');
    expect(text).not.toContain('"C full"');
    expect(text).toContain('Choice (A, B)');
    expect(text).not.toMatch(/full: the same/);
    expect(textOf(quoteBlocks(little, panels, page))).toContain('"C full"');
  });
});

test('packs and stages are told without the tax that the prices of the list hold', () => {
  const tax = { ...shop.prices.tax, included: true };
  const materials = [{ id: 'medium', pack: 1000, unit: 'ml', price_minor: 3757, stock: 0 }];
  const recordOf = (prices: object) =>
    quoteRecord(quoteOf({ readings, job, shop: { prices: { ...shop.prices, ...prices } } }), {
      ...{ version: '0', diagnostics: [], date: null },
    });
  type Option = {
    readonly materials: readonly { readonly id: string; readonly price_minor: number | null }[];
    readonly stage_costs: readonly { readonly materials_minor: number }[];
  };
  const told = (record: ReturnType<typeof recordOf>) =>
    (record['options'] as readonly Option[]).map((option) => [
      option.materials.find(({ id }) => id === 'medium')?.price_minor,
      option.stage_costs,
    ]);
  // 37.57 / 1.19 = 31.571…: the same shop with that price and tax on top is told the same.
  const net = recordOf({ materials: [{ ...materials[0], price_minor: 3157 }] });
  expect(told(recordOf({ tax, materials }))).toEqual(told(net));
  expect(told(net)[0]?.[0]).toBe(3157);
});
