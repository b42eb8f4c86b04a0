import { describe, expect, test } from 'vitest';
import type { Job } from '../../../src/formats/job/job.ts';
import { readJob as readPlaced } from '../../../src/formats/job/read-job.ts';

const readJob = (file: string, text: string) => {
  const { value, diagnostics } = readPlaced(file, text);
  return { value: value?.value, diagnostics };
};

const full = `{
  "schema": "leastcut/job/1",
  "vehicle": { "id": "AB-12", "make": "Arden", "model": "Vale", "year": 2019, "colour": "blue", "owner": "K. Orme", "length_m": 4.5, "width_m": 1.8, "height_m": 1.4 },
  "template": "saloon",
  "aim": "correct",
  "risk_pct": 2.5,
  "policy": "strict",
  "finish": "clear-over-base",
  "colour_depth": "dark",
  "hardness": "medium",
  "galvanised": false,
  "painted_days_ago": 0,
  "taken_um": 3,
  "floor_um": 85.5,
  "clear_um": 44,
  "under_um": { "value": 72, "sd": 4 },
  "covered": false,
  "film_record": "visits.json",
  "panels": {
    "bonnet": { "finish": "matte", "taken_um": 0, "substrate": "aluminium", "covered": false, "clear_coat_failure": true, "galvanised": true, "painted_days_ago": 40, "clear_um": { "value": 41.5, "sd": 2 }, "under_um": 70 },
    "roof": { "taken_um": "unknown" },
    "constructor": {}
  },
  "note": ["first line", "second"]
}`;

const told = (text: string): readonly string[] =>
  readJob('job.json', text).diagnostics.map(
    ({ code, at, message }) => `${at?.line}:${at?.column} ${code}: ${message}`,
  );

test('a full job file is read, key by key', () => {
  const { value, diagnostics } = readJob('job.json', full);
  expect(diagnostics).toEqual([]);
  expect(value).toEqual({
    vehicle: {
      id: 'AB-12',
      make: 'Arden',
      model: 'Vale',
      year: 2019,
      colour: 'blue',
      owner: 'K. Orme',
      length: 4.5,
      width: 1.8,
      height: 1.4,
    },
    template: 'saloon',
    aim: 'correct',
    riskPct: 2.5,
    policy: 'strict',
    finish: 'clear-over-base',
    colourDepth: 'dark',
    hardness: 'medium',
    galvanised: false,
    paintedDaysAgo: 0,
    taken: 3,
    floor: 85.5,
    clear: { mean: 44 },
    under: { mean: 72, sd: 4 },
    covered: false,
    filmRecord: 'visits.json',
    panels: new Map<string, object>([
      [
        'bonnet',
        {
          finish: 'matte',
          taken: 0,
          substrate: 'aluminium',
          covered: false,
          clearCoatFailure: true,
          galvanised: true,
          paintedDaysAgo: 40,
          clear: { mean: 41.5, sd: 2 },
          under: { mean: 70 },
        },
      ],
      ['roof', { taken: 'unknown' }],
      ['constructor', {}],
    ]),
  });
});

test('earlier work is read with what it may be off by, and may be off though nothing is thought gone', () => {
  const read = (taken: string) =>
    readJob('f', `{"schema": "leastcut/job/1", "taken_um": ${taken}}`).value;
  expect(read('{ "value": 3, "sd": 1 }')).toMatchObject({ taken: 3, takenSd: 1 });
  expect(read('{ "value": 0, "sd": 2 }')).toMatchObject({ taken: 0, takenSd: 2 });
  expect(read('3')).not.toHaveProperty('takenSd');
});

test('a job file that says only its kind is a job of which nothing is known', () => {
  const { value } = readJob('job.json', '{"schema": "leastcut/job/1"}');
  expect(value).toStrictEqual({ panels: new Map() });
});

describe('the ends of each range are taken and what lies beyond is refused', () => {
  test.each<[string, number, number, keyof Job]>([
    ['risk_pct', 0.1, 50, 'riskPct'],
    ['aim', 1, 99, 'aim'],
    ['taken_um', 0, 100, 'taken'],
    ['floor_um', 10, 300, 'floor'],
  ])('%s from %d to %d', (key, least, most, name) => {
    const read = (value: number) =>
      readJob('f', `{"schema": "leastcut/job/1", "${key}": ${value}}`);
    for (const edge of [least, most]) expect(read(edge).value?.[name]).toBe(edge);
    for (const beyond of [least - 0.01, most + 0.01]) {
      const { value, diagnostics } = read(beyond);
      expect(value).toBeUndefined();
      expect(diagnostics).toHaveLength(1);
      expect(diagnostics[0]).toMatchObject({
        code: 'settings-invalid',
        at: { line: 1, column: 34 + key.length, length: String(beyond).length },
      });
      expect(diagnostics[0]?.message).toContain(`"${key}" is ${beyond}; it takes `);
      expect(diagnostics[0]?.message).toContain(`a number from ${least} to ${most}`);
    }
  });
});

test('every key refuses a value of another kind at its own line', () => {
  const lines = full.split('\n').flatMap((line) => {
    const [, key = '', value = ''] = /^ {2}"(\w+)": (.*?),?$/.exec(line) ?? [];
    return key === '' || key === 'schema' || value === '{' ? [] : [key];
  });
  expect(lines.length).toBeGreaterThan(15);
  const wrong = lines.map((key) => `  "${key}": [[]]`).join(',\n');
  const said = told(`{"schema": "leastcut/job/1",\n${wrong}\n}`);
  expect(said.map((line) => line.slice(0, line.indexOf(';')))).toEqual(
    lines.map((key, i) => `${i + 2}:${key.length + 7} settings-invalid: "${key}" is a list`),
  );
});

test('blanks around what a vehicle is called are no part of it, and alone are no name', () => {
  const vehicle = '"vehicle": {"id": " AB-12 ", "make": "Arden\\t", "owner": "K. Orme "}';
  const { value } = readJob('job.json', `{"schema": "leastcut/job/1", ${vehicle}}`);
  expect(value?.vehicle).toEqual({ id: 'AB-12', make: 'Arden', owner: 'K. Orme' });
  expect(told('{"schema": "leastcut/job/1", "vehicle": {"id": " "}}')).toEqual([
    '1:48 settings-invalid: "vehicle.id" is " "; it takes text that is not blank',
  ]);
});

test('every key of a panel and of the vehicle refuses a value of another kind', () => {
  const keysOf = (name: string): readonly string[] =>
    [...(full.match(new RegExp(`"${name}": \\{(.*)\\}`))?.[1] ?? '').matchAll(/"(\w+)": [^,]/g)]
      .map(([, key = '']) => key)
      .filter((key) => key !== 'value' && key !== 'sd');
  for (const [name, path] of [
    ['bonnet', 'panels.bonnet'],
    ['vehicle', 'vehicle'],
  ] as const) {
    const keys = keysOf(name);
    expect(keys.length).toBeGreaterThan(8);
    const object = `{${keys.map((key) => `"${key}": [[]]`).join(', ')}}`;
    const inside = name === 'vehicle' ? object : `{"bonnet": ${object}}`;
    const said = told(`{"schema": "leastcut/job/1", "${path.split('.')[0]}": ${inside}}`);
    expect(said.map((line) => line.split(': ')[1]?.split(';')[0])).toEqual(
      keys.map((key) => `"${path}.${key}" is a list`),
    );
  }
});

test('a broken file is refused for its syntax alone', () => {
  expect(told('{"schema": "leastcut/job/1", "x": 1,}')).toEqual([
    '1:36 json-syntax: nothing follows this comma',
  ]);
});

test('blank names are refused, as is a panel without one', () => {
  expect(told('{"schema": "leastcut/job/1", "template": " ", "panels": {"": {}}}')).toEqual([
    '1:42 settings-invalid: "template" is " "; it takes text that is not blank',
    '1:58 settings-invalid: "" cannot be a key here; it takes text that is not blank',
  ]);
});

test('a thickness in mil is refused with the key to write', () => {
  const [first] = readJob('f', '{"schema": "leastcut/job/1", "floor_mil": 3}').diagnostics;
  expect(first).toMatchObject({
    code: 'settings-unknown-key',
    at: { line: 1, column: 30, length: 11 },
    hint: 'write floor_um: 76.2',
  });
});

describe('what people write by mistake leads to what to write', () => {
  test.each<[string, string, string]>([
    [
      '"finish": "2k"',
      '"finish" is "2k"',
      'paint with a clear coat over the colour is "clear-over-base"',
    ],
    [
      '"finish": "Base Coat"',
      '"finish" is "Base Coat"',
      'paint with a clear coat over the colour is "clear-over-base"',
    ],
    [
      '"finish": "single stage"',
      '"finish" is "single stage"',
      'one coat of colour without a clear is "single-stage-solid", or "single-stage-metallic" with flake',
    ],
    [
      '"finish": "solid"',
      '"finish" is "solid"',
      'a solid colour says nothing of the clear: "clear-over-base" with one, "single-stage-solid" without',
    ],
    [
      '"finish": "satin"',
      '"finish" is "satin"',
      'paint without gloss is "matte": it is never polished',
    ],
    [
      '"finish": "clear-over-bse"',
      '"finish" is "clear-over-bse"',
      'did you mean "clear-over-base"?',
    ],
    ['"taken_mil": 0.1', '"taken_mil" means nothing here', 'write taken_um: 2.54'],
    ['"taken_um": "0.1 mil"', '"taken_um" is "0.1 mil"', 'write it in µm: 2.5'],
    ['"taken_um": "2,5 µm"', '"taken_um" is "2,5 µm"', 'write the number alone: 2.5'],
    [
      '"taken_um": "never"',
      '"taken_um" is "never"',
      'write 0 where nothing was ever taken, "unknown" where nobody knows',
    ],
    ['"taken_um": {"value": 3}', '"taken_um.sd" is missing; it takes a number from 0 to 20', ''],
    [
      '"taken_um": {"value": 3, "sd": -1}',
      '"taken_um.sd" is -1; it takes a number from 0 to 20',
      '',
    ],
    ['"taken_um": "3"', '"taken_um" is "3"', 'write it without quotes: 3'],
    ['"vehicle": {"year": "2019"}', '"vehicle.year" is "2019"', 'write it without quotes: 2019'],
    [
      '"clear_um": 420',
      '"clear_um" is 420',
      '420 µm is more than one layer of paint: the whole film, or 42 with the point slipped?',
    ],
    ['"clear_um": {"value": 42}', '"clear_um.sd" is missing; it takes a number from 0.1 to 50', ''],
    [
      '"clear_um": {"value": 42, "sd": 0}',
      '"clear_um.sd" is 0; it takes a number from 0.1 to 50',
      '',
    ],
    [
      '"painted_days_ago": "2026-03-01"',
      '"painted_days_ago" is "2026-03-01"',
      'a date is not read here: write how many days before the readings it was painted, such as 30',
    ],
    ['"covered": "yes"', '"covered" is "yes"', 'write true, without quotes'],
    ['"galvanised": 0', '"galvanised" is 0', 'write false, without quotes'],
    ['"galvanized": true', '"galvanized" means nothing here', 'did you mean "galvanised"?'],
    ['"make": "Arden"', '"make" means nothing here', '"make" stands inside "vehicle"'],
    [
      '"substrate": "steel"',
      '"substrate" means nothing here',
      '"substrate" stands inside "panels"',
    ],
    [
      '"vehicle": {"finish": "matte"}',
      '"finish" means nothing here',
      '"finish" stands at the top of the file, not inside "vehicle"',
    ],
  ])('%s', (entry, message, hint) => {
    const { diagnostics } = readJob('job.json', `{"schema": "leastcut/job/1", ${entry}}`);
    expect(diagnostics).toHaveLength(1);
    expect(diagnostics[0]?.message).toContain(message);
    expect(diagnostics[0]?.hint ?? '').toBe(hint);
  });
});

test('a layer is told at the object that is wrong, with the whole form where it is neither', () => {
  expect(
    told('{"schema": "leastcut/job/1",\n"clear_um": "thick", "under_um": {"value": "x", "sd": 2}}'),
  ).toEqual([
    '2:13 settings-invalid: "clear_um" is "thick"; it takes a number from 0 to 200, or { "value": 45, "sd": 3 }',
    '2:44 settings-invalid: "under_um.value" is "x"; it takes a number from 0 to 400',
  ]);
});
