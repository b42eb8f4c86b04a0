import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { parseJson } from '../../../src/formats/json/json-text.ts';
import { validate } from '../../../src/formats/json/validate.ts';

const schema = z.strictObject({
  schema: z.literal('leastcut/trial/1'),
  area_m2: z.number().min(0.1).max(10),
  count: z.int().min(0).optional(),
  share: z.number().max(1).optional(),
  ratio: z.number().min(2).optional(),
  colour: z.enum(['light', 'dark']).optional(),
  aim: z.union([z.enum(['part', 'full']), z.number().min(1).max(99)]).optional(),
  wet: z.boolean().optional(),
  name: z.string().optional(),
  list: z.array(z.int()).optional(),
  parts: z
    .record(
      z.string().min(2).describe('a name of two letters'),
      z.strictObject({ wipe_min_per_section: z.number().optional() }),
    )
    .optional(),
});

const check = (text: string) => {
  const { value: document, diagnostics } = parseJson('trial.json', text);
  if (document === undefined) throw new Error(JSON.stringify(diagnostics));
  return validate(schema, document);
};

const told = (text: string): readonly string[] =>
  check(text).diagnostics.map(
    ({ code, at, message, hint }) =>
      `${at?.line}:${at?.column}+${at?.length} ${code}: ${message}${hint === undefined ? '' : ` | ${hint}`}`,
  );

/** A sound file with one more line, the third. */
const withLine = (line: string): string =>
  `{ "schema": "leastcut/trial/1",\n  "area_m2": 1,\n  ${line}\n}`;

test('a sound document gives its value and no diagnostics', () => {
  expect(check(withLine('"aim": 80, "parts": { "bonnet": {} }'))).toEqual({
    value: { schema: 'leastcut/trial/1', area_m2: 1, aim: 80, parts: { bonnet: {} } },
    diagnostics: [],
  });
});

describe('a wrong value is quoted as written, with what the key takes', () => {
  test.each([
    ['"count": 1.5', '3:12+3', '"count" is 1.5; it takes a whole number of at least 0'],
    ['"count": -1', '3:12+2', '"count" is -1; it takes a whole number of at least 0'],
    ['"share": 1e2', '3:12+3', '"share" is 1e2; it takes a number of at most 1'],
    ['"ratio": 1.90', '3:12+4', '"ratio" is 1.90; it takes a number of at least 2'],
    ['"ratio": 1e999', '3:12+5', '"ratio" is 1e999; it takes a number of at least 2'],
    [
      '"colour": "drak"',
      '3:13+6',
      '"colour" is "drak"; it takes "light" or "dark" | did you mean "dark"?',
    ],
    [
      '"colour": "Dark"',
      '3:13+6',
      '"colour" is "Dark"; it takes "light" or "dark" | did you mean "dark"?',
    ],
    ['"colour": true', '3:13+4', '"colour" is true; it takes "light" or "dark"'],
    ['"aim": 100', '3:10+3', '"aim" is 100; it takes "part", "full" or a number from 1 to 99'],
    [
      '"aim": "fulll"',
      '3:10+7',
      '"aim" is "fulll"; it takes "part", "full" or a number from 1 to 99 | did you mean "full"?',
    ],
    [
      '"aim": "80"',
      '3:10+4',
      '"aim" is "80"; it takes "part", "full" or a number from 1 to 99 | write it without quotes: 80',
    ],
    [
      '"wet": "true"',
      '3:10+6',
      '"wet" is "true"; it takes true or false | write it without quotes: true',
    ],
    ['"wet": "yes"', '3:10+5', '"wet" is "yes"; it takes true or false'],
    [
      '"wet": null',
      '3:10+4',
      '"wet" is null; it takes true or false | leave the key out when nothing is known',
    ],
    ['"name": 5', '3:11+1', '"name" is 5; it takes text'],
    ['"name": {"a":\n1}', '3:11+5', '"name" is an object; it takes text'],
    ['"list": [1, 2, 3.5]', '3:18+3', '"list[2]" is 3.5; it takes a whole number'],
    ['"list": 3', '3:11+1', '"list" is 3; it takes a list, each entry a whole number'],
    ['"parts": []', '3:12+2', '"parts" is an empty list; it takes an object: { … }'],
    ['"parts": {"bonnet": [1]}', '3:23+3', '"parts.bonnet" is a list; it takes an object: { … }'],
    [
      '"parts": {"7x": {"wipe_min_per_section": "2"}}',
      '3:44+3',
      '"parts.7x.wipe_min_per_section" is "2"; it takes a number | write it without quotes: 2',
    ],
    [
      '"parts": {"17": {"wipe_min_per_section": false}}',
      '3:44+5',
      '"parts.17.wipe_min_per_section" is false; it takes a number',
    ],
    ['"parts": {"x": {}}', '3:13+3', '"x" cannot be a key here; it takes a name of two letters'],
  ])('%s at %s: %s', (line, place, sentence) => {
    expect(told(withLine(line))).toEqual([`${place} settings-invalid: ${sentence}`]);
  });

  test('a long text is cut where it is quoted', () => {
    const [first] = check(withLine(`"count": "${'x'.repeat(80)}"`)).diagnostics;
    expect(first?.message).toBe(
      `"count" is "${'x'.repeat(58)}…; it takes a whole number of at least 0`,
    );
  });

  test('a missing key is placed at the object it is missing from', () => {
    expect(told('{ "schema": "leastcut/trial/1" }')).toEqual([
      '1:1+32 settings-invalid: "area_m2" is missing; it takes a number from 0.1 to 10',
    ]);
  });

  test('a document that is no object is refused as one', () => {
    expect(told('[1]')).toEqual([
      '1:1+3 settings-invalid: the file is a list; it takes an object: { … }',
    ]);
    expect(told('null')).toEqual([
      '1:1+4 settings-invalid: the file is null; it takes an object: { … }',
    ]);
  });
});

describe('an unknown key is placed at the key', () => {
  const known = 'schema, area_m2, count, share, ratio, colour, aim, wet, name, list, parts';
  test.each([
    ['"coutn": 1', '3:3+7', 'coutn', 'did you mean "count"?'],
    ['"color": "dark"', '3:3+7', 'color', 'did you mean "colour"?'],
    ['"area_ft2": 1', '3:3+10', 'area_ft2', 'write area_m2: 0.0929'],
    ['"area": 1', '3:3+6', 'area', 'write area_m2'],
    ['"areaM2": 1', '3:3+8', 'areaM2', 'write area_m2'],
    ['"share_pct": 1', '3:3+11', 'share_pct', 'write share'],
    [
      '"parts": {"bonnet": {"wipe_s_per_section": 1}}',
      '3:24+20',
      'wipe_s_per_section',
      'write wipe_min_per_section: 0.01667',
    ],
    ['"wheels": 4', '3:3+8', 'wheels', `keys known here: ${known}`],
    ['"pct": 4', '3:3+5', 'pct', `keys known here: ${known}`],
    ['"constructor": {}', '3:3+13', 'constructor', `keys known here: ${known}`],
    ['"__proto__": {}', '3:3+11', '__proto__', `keys known here: ${known}`],
    ['"\\u0063oun": 1', '3:3+11', 'coun', 'did you mean "count"?'],
  ])('%s at %s', (line, place, key, hint) => {
    expect(told(withLine(line))).toEqual([
      `${place} settings-unknown-key: the key "${key}" means nothing here | ${hint}`,
    ]);
  });

  test('a misspelt key that is needed is told once, not as missing too', () => {
    expect(told('{"schema": "leastcut/trial/1", "aera_m2": 1}')).toEqual([
      '1:32+9 settings-unknown-key: the key "aera_m2" means nothing here | did you mean "area_m2"?',
    ]);
    expect(told('{"schema": "leastcut/trial/1", "area_ft2": 1}')).toEqual([
      '1:32+10 settings-unknown-key: the key "area_ft2" means nothing here | write area_m2: 0.0929',
    ]);
    expect(told('{"schema": "leastcut/trial/1", "area": 1}')).toEqual([
      '1:32+6 settings-unknown-key: the key "area" means nothing here | write area_m2',
    ]);
    expect(told('{"shcema": "leastcut/trial/1", "area_m2": 1}')).toEqual([
      '1:2+8 settings-unknown-key: the key "shcema" means nothing here | did you mean "schema"?',
    ]);
  });

  test('__proto__ is refused where any name is free, and constructor is a name', () => {
    expect(told(withLine('"parts": {"__proto__": {}, "constructor": {}}'))).toEqual([
      '3:13+11 settings-unknown-key: the key "__proto__" means nothing here',
    ]);
  });
});

test('a very long key is cut where a sentence quotes it', () => {
  const [first] = check(withLine(`"${'x'.repeat(100_000)}": 1`)).diagnostics;
  expect(first?.message).toBe(`the key "${'x'.repeat(58)}… means nothing here`);
});

describe('the kind of file', () => {
  test('is asked for when it is missing, beside the other problems', () => {
    expect(told('{\n"area_m2": 0 }')).toEqual([
      '1:1+1 settings-schema: the file does not say what kind it is | "schema": "leastcut/trial/1"',
      '2:12+1 settings-invalid: "area_m2" is 0; it takes a number from 0.1 to 10',
    ]);
  });

  test('is asked for when it is wrong, beside the other problems', () => {
    expect(told('{"area_m2": 0, "schema": 1}')).toEqual([
      '1:13+1 settings-invalid: "area_m2" is 0; it takes a number from 0.1 to 10',
      '1:26+1 settings-schema: "schema" is 1; it takes "leastcut/trial/1" | "schema": "leastcut/trial/1"',
    ]);
  });

  test('is asked for when it is nearly right, beside the other problems', () => {
    expect(told('{"schema": "leastcut/trial/2", "area_m2": 0}')).toEqual([
      '1:12+18 settings-schema: "schema" is "leastcut/trial/2"; it takes "leastcut/trial/1" | "schema": "leastcut/trial/1"',
      '1:43+1 settings-invalid: "area_m2" is 0; it takes a number from 0.1 to 10',
    ]);
  });

  test('is the only problem of a file that is of another kind', () => {
    expect(told('{"schema": "leastcut/shop/1", "area_m2": 0, "x": 1}')).toEqual([
      '1:12+17 settings-schema: this is a shop file, where a settings file is wanted | name it with --shop',
    ]);
  });
});

test('all problems are told in the order they stand in the file', () => {
  const text =
    '{"x": 1,\n"parts": {"ab": {"y": 1}},\n"wet": 1, "area_m2": "1",\n"schema": "leastcut/trial/1", "z": 0}';
  expect(told(text).map((line) => line.split(':').slice(0, 2).join(':').split('+')[0])).toEqual([
    '1:2',
    '2:18',
    '3:8',
    '3:22',
    '4:31',
  ]);
});

describe('the same unknown key in many places', () => {
  const within = (keys: readonly string[]): string =>
    `"parts": {\n${keys.map((key, i) => `"p${i + 10}": { ${key}: 1 }`).join(',\n')}\n}`;
  const keysOf = (count: number, key: string): readonly string[] =>
    new Array<string>(count).fill(key);

  test('is told once, where it first stands, and in how many further places and lines', () => {
    const said = told(withLine(within(keysOf(40, '"aliases"'))));
    expect(said).toHaveLength(1);
    expect(said[0]).toMatch(
      /^4:10\+9 settings-unknown-key: the key "aliases" means nothing here, nor in 39 further places \(lines 5, 6, 7 … 43\) \| ./,
    );
  });

  test('is told in each where there are few, and so is each of several keys', () => {
    expect(told(withLine(within(keysOf(3, '"aliases"'))))).toHaveLength(3);
    const said = told(withLine(within([...keysOf(5, '"aliases"'), '"wet"', ...keysOf(4, '"by"')])));
    expect(said.map((one) => one.replace(/ \(lines.*| \|.*/, ''))).toEqual([
      '4:10+9 settings-unknown-key: the key "aliases" means nothing here, nor in 4 further places',
      '9:10+5 settings-unknown-key: the key "wet" means nothing here',
      '10:10+4 settings-unknown-key: the key "by" means nothing here, nor in 3 further places',
    ]);
  });

  test('beside other faults in its line takes none of them away', () => {
    const said = told(withLine(`"count": -1, ${within(keysOf(4, '"aliases"'))}`));
    expect(said).toHaveLength(2);
    expect(said[0]).toContain('count');
  });
});
