import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clearsLess, clearsNoMore, takesLess } from '../../../src/report/quote/against-before.ts';
import { quoteBlocks } from '../../../src/report/quote/quote-blocks.ts';
import { quoteRecord } from '../../../src/report/quote/quote-record.ts';
import { quoteTable } from '../../../src/report/quote/quote-table.ts';
import type { QuoteResult } from '../../../src/tasks/quote/quote-vehicle.ts';
import type { QuoteOption } from '../../../src/work/quote-option.ts';
import { quoteOf, readingsOf } from '../../tasks/quotes.ts';

type Row = {
  readonly aim: string;
  readonly expected_pct: number;
  readonly spent_um: number;
  readonly total_minor: number | null;
  readonly charged_min: number | null;
  readonly notes: readonly { readonly code: string; readonly text: string }[];
};
const rowsOf = (result: QuoteResult): readonly Row[] =>
  quoteRecord(result, { version: '0', diagnostics: [], date: null })['options'] as never;

const pageOf = (result: QuoteResult): string =>
  JSON.stringify(
    quoteBlocks(result, result.survey.template.panels, { unit: 'um', verbose: false, date: null }),
  ).replaceAll('\u00a0', ' ');

const prices = { currency: 'EUR', labour_minor_per_h: 4500 };

/** CARS=400 tries more of them. */
const CARS = Number(process.env['CARS'] ?? 60);
/** Corrections and removals nearer than these count as equal to the planner. */
const BIN = { expected: 1, spent: 0.1 };

const film = fc.integer({ min: 86, max: 136 });
const anyCar = fc.record({
  means: fc.record({ bonnet: film, roof: film, boot: film, 'wing front left': film }),
  job: fc.constantFrom<object>({}, { taken_um: 0 }, { taken_um: 3 }, { hardness: 'hard' }),
  kit: fc.constantFrom<object>(
    {},
    { machines: ['da'] },
    { machines: ['rotary', 'da'], pads: ['foam-soft', 'foam-medium', 'wool'] },
  ),
  aim: fc.constantFrom<object>({}, { aim: 70 }, { aim: 90 }),
  money: fc.constantFrom<object>({ prices }, {}),
});

test('an aim that clears, takes or costs less than the one before it says why, to machines too', () => {
  let fallen = 0;
  fc.assert(
    fc.property(anyCar, ({ means, job, kit, aim, money }) => {
      const result = quoteOf({
        readings: readingsOf(means),
        job,
        shop: { ...kit, ...aim, ...money },
      });
      const rows = rowsOf(result);
      for (const [i, row] of rows.entries()) {
        const before = rows[i - 1];
        if (before === undefined) continue;
        const isLess =
          row.expected_pct < before.expected_pct ||
          Number(row.spent_um.toFixed(2)) < Number(before.spent_um.toFixed(2)) ||
          (row.total_minor ?? row.charged_min ?? 0) <
            (before.total_minor ?? before.charged_min ?? 0);
        if (isLess) expect([row, row.notes]).not.toEqual([row, []]);
        fallen += isLess ? 1 : 0;
        // Only a finish without haze may take what another aim clears marks with.
        if (row.aim === 'full') continue;
        expect(row.expected_pct).toBeGreaterThan(before.expected_pct - BIN.expected);
        expect(row.spent_um).toBeGreaterThan(before.spent_um - BIN.spent);
      }
    }),
    { numRuns: CARS },
  );
  expect(fallen).toBeGreaterThan(0);
}, 600_000);

const fail = (): never => {
  throw new Error('no such car');
};

describe('what the page says of an aim', () => {
  const cars = Array.from({ length: 30 }, (_, car) =>
    quoteOf({
      readings: readingsOf({
        bonnet: 90 + ((7 * car) % 41),
        roof: 122 - ((5 * car) % 17),
        boot: 96 + car,
      }),
      shop: { prices },
    }),
  );
  const codesOf = (one: QuoteResult): readonly string[] =>
    rowsOf(one).flatMap(({ notes }) => notes.map(({ code }) => code));
  const several = cars.find((one) => codesOf(one).includes('aim-clears-no-more')) ?? fail();
  const more = {
    bonnet: 112,
    roof: 118,
    boot: 117,
    'wing front left': 123,
    'door front left': 115,
  };
  const alone = quoteOf({
    readings: readingsOf(more),
    job: { taken_um: 0 },
    shop: { prices },
    typed: { aim: { value: 80, origin: 'flag', where: '' } },
  });

  test.each([
    ['several', several],
    ['one alone', alone],
  ])('stands in the record and in the table: %s', (_, result) => {
    const notes = rowsOf(result).flatMap((row) => row.notes);
    expect(notes.length).toBeGreaterThan(0);
    const { columns, rows } = quoteTable([result]);
    const cellsOf = (name: string) => rows.map((row) => row[columns.indexOf(name)]);
    for (const { code, text } of notes) {
      expect(pageOf(result)).toContain(text);
      expect(text).not.toContain('\u00a0');
      expect(cellsOf('notes').some((cell) => String(cell).split(' ').includes(code))).toBe(true);
      expect(cellsOf('notes_text').some((cell) => String(cell).includes(text))).toBe(true);
    }
  });

  test('is nothing where no aim is worked', () => {
    const thin = quoteOf({ readings: readingsOf({ bonnet: 50, roof: 52 }, 1), shop: { prices } });
    expect(rowsOf(thin).flatMap(({ notes }) => notes)).toEqual([]);
  });
});

describe('of an aim held against the one before it', () => {
  const result = quoteOf({
    readings: readingsOf({ bonnet: 112, roof: 114, boot: 111 }),
    job: { taken_um: 0 },
    shop: { prices },
  });
  const [enhance, correct] = result.options;
  if (enhance === undefined || correct === undefined) throw new Error('no options');
  const currency = result.settings.money.prices.value?.list.currency ?? null;
  const nameOf = ({ panel }: { readonly panel: { readonly name: string } }) => panel.name;
  const noMore = (before: QuoteOption, option: QuoteOption, money = currency) =>
    clearsNoMore([before, option], money, nameOf).map(({ text }) => text.replaceAll('\u00a0', ' '));
  const as = (share: number, one: QuoteOption, over: object = {}): QuoteOption => ({
    ...one,
    expected: share,
    ...over,
  });

  test('a dearer one that the table shows no more for says what it costs more, and for what', () => {
    const [text = ''] = noMore(as(0.801, enhance), as(0.804, correct));
    expect(text).toMatch(
      /^correct clears no more than enhance here and costs \d+\.\d\d EUR more: /,
    );
    expect(text).toMatch(
      /: it ends without the haze that enhance leaves and it clears more on bonnet, boot lid and roof$/,
    );
    expect(noMore(as(0.79, enhance), as(0.804, correct))).toEqual([]);
  });

  test('one that gets and costs the same, or costs less, is told by that alone', () => {
    expect(noMore(enhance, { ...enhance, aim: correct.aim })).toEqual([]);
    expect(noMore(as(0.8, correct), as(0.8, enhance))).toEqual([]);
  });

  test('is told by its hours where there is no price', () => {
    const [text = ''] = noMore(
      as(0.8, enhance, { priced: null }),
      as(0.8, correct, { priced: null }),
      null,
    );
    expect(text).toMatch(/^correct clears no more than enhance here and takes \d+\.\d h more: /);
    expect(noMore(as(0.8, correct, { priced: null }), as(0.8, enhance, { priced: null }))).toEqual(
      [],
    );
    const alike = as(0.8, { ...enhance, aim: correct.aim }, { priced: null, left: 1 });
    expect(noMore(as(0.8, enhance, { priced: null }), alike)).toEqual([
      'correct clears no more than enhance here, in as much time: nowhere a per cent more',
    ]);
    const asDear = as(0.8, { ...enhance, aim: correct.aim }, { left: 1 });
    expect(noMore(as(0.8, enhance), asDear)).toEqual([
      'correct clears no more than enhance here, for the same price: nowhere a per cent more',
    ]);
  });

  test('more marks for less film is told, where the table shows less of it', () => {
    const less = (before: number, after: number): readonly string[] =>
      takesLess(
        [as(0.7, enhance, { spent: before }), as(0.8, correct, { spent: after })],
        nameOf,
      ).map(({ text }) => text);
    expect(less(1.32, 1.31)).toEqual([
      'correct takes less film than enhance here: removals that hardly differ count as one, and of those the quicker steps are taken',
    ]);
    expect(less(1.314, 1.306)).toEqual([]);
    const [first, ...others] = correct.plan.panels;
    if (first === undefined) throw new Error('no panel');
    const left = { ...first, steps: [], zones: [], local: [], verdict: 'leave' as const };
    const plan = { ...correct.plan, panels: [left, ...others] };
    const said = takesLess(
      [as(0.7, enhance, { spent: 2 }), as(0.8, correct, { spent: 1, plan })],
      nameOf,
    );
    expect(said.map(({ text }) => text)).toEqual([
      'correct takes less film than enhance here: it leaves bonnet',
    ]);
  });

  test('one that is not worked at all clears less, however little the other did', () => {
    const none = as(0, correct, { charged: null, polished: null });
    expect(clearsLess([as(0.004, enhance), none], nameOf)).toHaveLength(1);
  });
});
