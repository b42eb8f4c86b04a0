import { expect, test } from 'vitest';
import { readShop } from '../../src/formats/shop.ts';

const known = {
  machines: ['dual-action-15', 'rotary-180'],
  pads: ['foam-soft', 'wool-short'],
  products: ['fine', 'medium'],
};

const told = (text: string): readonly string[] =>
  readShop('shop.json', text, known).diagnostics.map(
    ({ code, at, message, hint }) =>
      `${at?.line}:${at?.column}+${at?.length} ${code}: ${message}${hint === undefined ? '' : ` | ${hint}`}`,
  );

test('a full shop file is read, key by key', () => {
  const text = `{ "schema": "leastcut/shop/1", "name": "Bay 4",
    "machines": ["rotary-180"], "pads": ["foam-soft", "wool-short"], "products": ["fine"],
    "risk_pct": 5, "policy": "standard", "aim": 85,
    "minutes": { "wipe_min_per_section": 0, "pad_cleaning_min_per_section": 0.5, "setup_min_per_combination": 4 } }`;
  expect(readShop('shop.json', text, known)).toStrictEqual({
    value: {
      name: 'Bay 4',
      machines: ['rotary-180'],
      pads: ['foam-soft', 'wool-short'],
      products: ['fine'],
      riskPct: 5,
      policy: 'standard',
      aim: 85,
      times: { wipePerSection: 0, padCleaningPerSection: 0.5, setupPerCombination: 4 },
    },
    diagnostics: [],
  });
});

test('a shop file that says only its kind leaves everything open', () => {
  expect(readShop('f', '{"schema": "leastcut/shop/1"}', known).value).toStrictEqual({});
});

test('an id that is not known is refused with the nearest', () => {
  expect(
    told(
      '{"schema": "leastcut/shop/1",\n"machines": ["rotary-180", "rotary180"],\n"pads": ["velvet"],\n"products": [5]}',
    ),
  ).toEqual([
    '2:28+11 settings-invalid: "machines[1]" is "rotary180"; it takes the id of a known machine | did you mean "rotary-180"?',
    '3:10+8 settings-invalid: "pads[0]" is "velvet"; it takes the id of a known pad',
    '4:14+1 settings-invalid: "products[0]" is 5; it takes the id of a known product',
  ]);
});

test('an id written twice, or a list of none, is refused', () => {
  expect(
    told('{"schema": "leastcut/shop/1",\n"machines": [],\n"pads": ["foam-soft", "foam-soft"]}'),
  ).toEqual([
    '2:13+2 settings-invalid: "machines" is an empty list; it takes a list of ids, at least one, each of a known machine',
    '3:23+11 settings-invalid: "pads[1]" names "foam-soft" again',
  ]);
});

test('times refuse other units and what no shop could mean', () => {
  expect(
    told(
      '{"schema": "leastcut/shop/1", "minutes": {\n"wipe_s_per_section": 40,\n"setup_min_per_combination": 241}}',
    ),
  ).toEqual([
    '2:1+20 settings-unknown-key: the key "wipe_s_per_section" means nothing here | write wipe_min_per_section',
    '3:30+3 settings-invalid: "minutes.setup_min_per_combination" is 241; it takes a number from 0 to 240',
  ]);
});

test('a key of a job file, a job file and a broken file are refused', () => {
  expect(told('{"schema": "leastcut/shop/1", "finish": "matte"}')[0]).toContain(
    '1:31+8 settings-unknown-key',
  );
  expect(told('{"schema": "leastcut/job/1", "finish": "matte"}')).toEqual([
    '1:12+16 settings-schema: "schema" is "leastcut/job/1"; it takes "leastcut/shop/1" | "schema": "leastcut/shop/1"',
  ]);
  expect(told('{')).toEqual([
    '1:2+1 json-syntax: the file ends before { is closed | close it with }',
  ]);
});
