import { describe, expect, test } from 'vitest';
import { type Job, readJob } from '../../src/formats/job.ts';

const full = `{
  "schema": "leastcut/job/1",
  "vehicle": { "id": "AB-12", "make": "Arden", "model": "Vale", "year": 2019, "colour": "blue", "owner": "K. Orme" },
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
  "panels": {
    "bonnet": { "finish": "matte", "taken_um": 0, "substrate": "aluminium", "covered": false, "clear_coat_failure": true },
    "constructor": {}
  },
  "note": ""
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
    panels: new Map<string, object>([
      [
        'bonnet',
        {
          finish: 'matte',
          taken: 0,
          substrate: 'aluminium',
          covered: false,
          clearCoatFailure: true,
        },
      ],
      ['constructor', {}],
    ]),
    note: '',
  });
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
  const wrong = full
    .replaceAll(/: (?!\{)("[^"]*"|[\d.]+|true|false)/g, ': [[]]')
    .replace('"schema": [[]]', '"schema": "leastcut/job/1"');
  expect(told(wrong).map((line) => line.slice(0, line.indexOf(';')))).toEqual([
    ...[22, 36, 51, 65, 81, 96].map(
      (column, i) =>
        `3:${column} settings-invalid: "vehicle.${['id', 'make', 'model', 'year', 'colour', 'owner'][i]}" is a list`,
    ),
    ...[
      'template',
      'aim',
      'risk_pct',
      'policy',
      'finish',
      'colour_depth',
      'hardness',
      'galvanised',
      'painted_days_ago',
      'taken_um',
      'floor_um',
    ].map((key, i) => `${4 + i}:${key.length + 7} settings-invalid: "${key}" is a list`),
    ...[
      [27, 'finish'],
      [45, 'taken_um'],
      [64, 'substrate'],
      [81, 'covered'],
      [109, 'clear_coat_failure'],
    ].map(([column, key]) => `16:${column} settings-invalid: "panels.bonnet.${key}" is a list`),
    '19:11 settings-invalid: "note" is a list',
  ]);
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
    hint: 'write floor_um',
  });
});
