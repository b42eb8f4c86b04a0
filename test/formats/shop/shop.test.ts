import { describe, expect, test } from 'vitest';
import { readShop, type Shop } from '../../../src/formats/shop/shop.ts';

const read = (text: string) => readShop('shop.json', text);
function shopOf(text: string): Shop {
  const { value, diagnostics } = read(text);
  expect(diagnostics).toEqual([]);
  if (value === undefined) throw new Error('refused');
  return value.value;
}
const told = (text: string): readonly string[] =>
  read(text).diagnostics.map(
    ({ code, at, message, hint }) =>
      `${at?.line}:${at?.column}+${at?.length} ${code}: ${message}${hint === undefined ? '' : ` | ${hint}`}`,
  );

test('a full shop file is read, key by key', () => {
  const text = `{ "$schema": "./schemas/shop.schema.json", "schema": "leastcut/shop/1", "name": "Bay 4",
    "note": "as of May", "machines": ["rotary"], "pads": ["foam-soft", "wool"],
    "products": ["fine"],
    "rates": { "rotary/wool/fine": { "rate_um_per_set": 1.2, "ln_sd": 0.3, "note": "scrap door" } },
    "risk_pct": 4, "policy": "strict", "aim": 85, "floor_um": 90, "finish": "lacquer",
    "galvanised": true, "template": "own.json", "templates": ["van.json"],
    "reading_unit": "mil", "nearside": "left", "show_unit": "mil", "color": "never",
    "minutes": { "wipe_min_per_section": 0, "pad_cleaning_min_per_section": 0.5 },
    "numbers": { "film.earlier.unknown_clear_um": 3 } }`;
  expect(shopOf(text)).toStrictEqual({
    name: 'Bay 4',
    unusedMaterials: [],
    machines: [{ id: 'rotary', stated: [] }],
    pads: [
      { id: 'foam-soft', stated: [] },
      { id: 'wool', stated: [] },
    ],
    products: [{ id: 'fine', stated: [] }],
    rates: new Map([['rotary/wool/fine', { rate: 1.2, logSd: 0.3, note: 'scrap door' }]]),
    policy: 'strict',
    aim: 85,
    floor: 90,
    finish: 'lacquer',
    galvanised: true,
    template: 'own.json',
    templates: ['van.json'],
    readingUnit: 'mil',
    nearside: 'left',
    showUnit: 'mil',
    color: 'never',
    numbers: new Map([
      [
        'film.earlier.unknown_clear_um',
        { value: 3, path: ['numbers', 'film.earlier.unknown_clear_um'] },
      ],
      ['film.limits.risk_pct', { value: 4, path: ['risk_pct'] }],
      ['work.per_section.wipe_min', { value: 0, path: ['minutes', 'wipe_min_per_section'] }],
      [
        'work.per_section.pad_cleaning_min',
        { value: 0.5, path: ['minutes', 'pad_cleaning_min_per_section'] },
      ],
    ]),
  });
});

test('a shop file that says only its kind leaves everything open', () => {
  expect(shopOf('{"schema": "leastcut/shop/1"}')).toStrictEqual({
    unusedMaterials: [],
    rates: new Map(),
    numbers: new Map(),
  });
});

describe('a machine, pad or product', () => {
  const first = (list: string, entry: string) => {
    const shop = shopOf(`{"schema": "leastcut/shop/1", "${list}": [${entry}]}`);
    return shop[list as 'machines' | 'pads' | 'products']?.[0];
  };

  test('may be described in full', () => {
    const text = `{"id": "g9", "name": "gear", "motion": "orbital", "throw_mm": 9,
      "orbits_per_min": 4500, "forced_rpm": 400, "pad_mm": 125, "force_n": 60,
      "min_per_section": 4, "vibration_m_per_s2": 5}`;
    expect(first('machines', text)).toMatchObject({
      id: 'g9',
      name: 'gear',
      motion: 'orbital',
      throwDiameter: 9,
      orbitsPerMinute: 4500,
      forcedRpm: 400,
      padDiameter: 125,
      force: 60,
      perSection: 4,
      vibration: 5,
    });
    const pad = '{"id": "waffle", "factor": 0.9, "haze": 1, "stages": ["refine"]}';
    expect(first('pads', pad)).toEqual({
      id: 'waffle',
      factor: 0.9,
      haze: 1,
      stages: ['refine'],
      stated: ['factor', 'haze', 'stages'],
    });
  });

  test('may be described by what it is like, or change a built-in one', () => {
    expect(first('products', '{"id": "own", "like": "medium"}')).toEqual({
      id: 'own',
      like: 'medium',
      stated: ['like'],
    });
    expect(first('machines', '{"id": "da", "pad_mm": 125}')).toMatchObject({ padDiameter: 125 });
  });

  test('of a rotary that is like an orbital one says its own turns', () => {
    expect(
      told(
        '{"schema": "leastcut/shop/1",\n"machines": [{"id": "x", "like": "da", "motion": "rotary"}]}',
      ),
    ).toEqual([
      '2:14+45 settings-invalid: "machines[0]" lacks rpm: a rotary needs it | say it, or "like": "rotary" to take what is left out from the built-in one',
    ]);
  });
});

test('each value is traced to where it stands', () => {
  const { value } = read('{"schema": "leastcut/shop/1",\n"numbers": {\n"work.set_up_min": 4}}');
  expect(value?.placeOf(['numbers', 'work.set_up_min'])).toMatchObject({
    file: 'shop.json',
    line: 3,
    column: 20,
  });
});

test('a key of a job file, a job file and a broken file are refused', () => {
  expect(told('{"schema": "leastcut/shop/1", "hardness": "soft"}')[0]).toContain(
    '1:31+10 settings-unknown-key',
  );
  expect(told('{"schema": "leastcut/job/1", "finish": "matte"}')).toEqual([
    '1:12+16 settings-schema: this is a job file, where a shop file is wanted | name it with --job, and a shop file with --shop',
  ]);
  expect(told('{')).toEqual([
    '1:2+1 json-syntax: the file ends before { is closed | close it with }',
  ]);
});
