import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type JsonDocument,
  type JsonPath,
  parseJson,
} from '../../../src/formats/json/json-text.ts';

const read = (text: string): JsonDocument => {
  const { value, diagnostics } = parseJson('job.json', text);
  if (value === undefined) throw new Error(JSON.stringify(diagnostics));
  return value;
};

/** `line:column+length code | hint`, the shape a reader sees first. */
const told = (text: string): readonly string[] =>
  parseJson('job.json', text).diagnostics.map(
    ({ code, at, hint }) => `${at?.line}:${at?.column}+${at?.length} ${code} | ${hint}`,
  );

const syntax = (place: string, hint: string): string[] => [`${place} json-syntax | ${hint}`];

describe('a fault of syntax is placed and given a remedy', () => {
  test.each([
    ['{\n  "a": 1, // why\n  "b": 2\n}', '2:11+6', 'JSON has no comments: remove it'],
    ['{ /* why\n so */ "a": 1 }', '1:3+6', 'JSON has no comments: remove it'],
    ['{\n# why\n"a": 1}', '2:1+5', 'JSON has no comments: remove it'],
    ['{\n  "a": 1,\n}', '2:9+1', 'JSON has no trailing comma: remove it before }'],
    ['[1,\r\n2 , ]', '2:3+1', 'JSON has no trailing comma: remove it before ]'],
    ["{'a': 1}", '1:2+3', 'use double quotes: "a"'],
    ['{"a": \'x y\'}', '1:7+5', 'use double quotes: "x y"'],
    ['{"a": “x”}', '1:7+3', 'use double quotes: "x"'],
    ['{a: 1}', '1:2+1', 'write "a"'],
    ['{"a" 1}', '1:6+1', 'put a colon there'],
    ['{"a" = 1}', '1:6+1', 'put a colon there'],
    ['{"a": 1 "b": 2}', '1:9+3', 'put a comma before it'],
    ['{"a": 1; "b": 2}', '1:8+1', 'put a comma in its place'],
    ['{"a": 0,5}', '1:7+3', 'write 0.5'],
    ['{"a": .5}', '1:7+2', 'write 0.5'],
    ['{"a": 5.}', '1:7+2', 'write 5'],
    ['{"a": +5}', '1:7+2', 'write 5'],
    ['{"a": -007.5}', '1:7+6', 'write -7.5'],
    ['{"a": 5um}', '1:7+3', 'write plain decimal digits, without a unit: 12.5'],
    ['{"a": True}', '1:7+4', 'write true'],
    ['{"a": None}', '1:7+4', 'leave the key out when nothing is known'],
    ['{"a": NaN}', '1:7+3', 'write a number, or leave the key out'],
    ['{"a": matte}', '1:7+5', 'text stands in double quotes: "matte"'],
    ['{"a": "C:\\work"}', '1:10+2', 'write \\\\ for a backslash'],
    ['{"a": "\\u12g4"}', '1:8+2', '\\u takes four hexadecimal digits'],
    ['{"a": "x\ty"}', '1:9+1', 'write \\t'],
    ['{"a": "x\n"}', '1:7+2', 'close it with "'],
    ['{"a": [{"b": 1', '1:15+1', 'close it with }]}'],
    ['{"a": 1}}', '1:9+1', 'a file holds one value: remove the rest'],
    ['{"a": [1}', '1:9+1', 'write ] here, or look for one missing before'],
    ['[1,,2]', '1:4+1', 'remove one of the two commas'],
    ['{"a":1,,"b":2}', '1:8+1', 'remove one of the two commas'],
    ['[,1]', '1:2+1', 'remove the comma'],
    ['{"a":}', '1:6+1', 'put a value there'],
    ['[1:2]', '1:3+1', 'remove it'],
    ['{"a":\u00a01}', '1:6+1', 'put a plain space there'],
    ['{1:2}', '1:2+1', 'a key is a text in double quotes'],
    ['{"a": 1, 5}', '1:10+1', 'a key is a text in double quotes'],
    ['[1]/', '1:4+1', 'remove it'],
    ['', '1:1+1', 'a settings file is an object: { … }'],
    [' \n ', '1:1+1', 'a settings file is an object: { … }'],
  ])('%j at %s: %s', (text, place, hint) => {
    expect(told(text)).toEqual(syntax(place, hint));
  });

  test('the line is quoted without its end, and a byte order mark is not counted', () => {
    const { diagnostics } = parseJson('job.json', '\uFEFF{a: 1}\r\n');
    expect(diagnostics[0]?.at).toEqual({
      file: 'job.json',
      line: 1,
      column: 2,
      length: 1,
      lineText: '{a: 1}',
    });
  });

  test('comments and trailing commas are all told, and then the fault that ends the reading', () => {
    expect(told('{ // one\n "a": [1,], // two\n "b": tru }')).toEqual([
      '1:3+6 json-syntax | JSON has no comments: remove it',
      '2:9+1 json-syntax | JSON has no trailing comma: remove it before ]',
      '2:13+6 json-syntax | JSON has no comments: remove it',
      '3:7+3 json-syntax | text stands in double quotes: "tru"',
    ]);
  });

  test.each([
    ['lists', '['],
    ['objects', '{"a":'],
  ])('100,000 %s in one another are refused without a crash', (_, opening) => {
    const [first] = parseJson('f', opening.repeat(100_000)).diagnostics;
    expect(first?.message).toContain('more than 512 deep');
    expect(first?.at).toMatchObject({ line: 1, column: 512 * opening.length + 1, length: 1 });
    const closed = '['.repeat(100_000) + ']'.repeat(100_000);
    expect(told(closed)[0]).toContain('1:513+1 json-syntax');
  });

  test('512 lists in one another are read', () => {
    expect(read('['.repeat(512) + ']'.repeat(512)).placeOf([0, 0]).column).toBe(3);
  });

  test('a text of ten million characters is read', () => {
    expect(read(JSON.stringify({ note: 'x\\'.repeat(5_000_000) })).placeOf(['note']).column).toBe(
      9,
    );
  });
});

test('a very long word, key or text is cut where a sentence quotes it', () => {
  const long = 'x'.repeat(1_000_000);
  for (const text of [
    long,
    `["${long}" "${long}"]`,
    `{"${long}":1,"${long}":2}`,
    `{"${long}" 1}`,
    `{${long}:1}`,
    `['${long}']`,
    `[1${long}]`,
  ]) {
    const [first] = parseJson('f', text).diagnostics;
    expect(first?.message.length).toBeLessThan(200);
    expect(first?.hint?.length).toBeLessThan(200);
  }
});

describe('a key written twice', () => {
  test('is refused at its second place, however it is escaped and wherever it stands', () => {
    expect(
      told('{"a": 1,\n "b": [{"c": 1, "\\u0063": {"d": 1, "d": 2}}],\n "a": 3, "a": 4}'),
    ).toEqual([
      '2:17+8 json-duplicate-key | keep one of the two',
      '2:36+3 json-duplicate-key | keep one of the two',
      '3:2+3 json-duplicate-key | keep one of the two',
      '3:10+3 json-duplicate-key | keep one of the two',
    ]);
  });

  test('is refused for __proto__ as for any other, and the same key in two objects is not', () => {
    expect(told('{"__proto__": 1, "__proto__": 2}')).toEqual([
      '1:18+11 json-duplicate-key | keep one of the two',
    ]);
    expect(told('[{"a": 1}, {"a": 1}]')).toEqual([]);
  });
});

describe('places', () => {
  const document = read('{\n  "panels": {\n    "bonnet": [10, "x"]\n  }, "2": {\n } }');

  test.each<[JsonPath, 'key' | 'value', string]>([
    [['panels'], 'key', '2:3+8'],
    [['panels'], 'value', '2:13+1'],
    [['panels', 'bonnet'], 'key', '3:5+8'],
    [['panels', 'bonnet'], 'value', '3:15+9'],
    [['panels', 'bonnet', 0], 'value', '3:16+2'],
    [['panels', 'bonnet', 1], 'key', '3:20+3'],
    [['2'], 'key', '4:6+3'],
    [[], 'key', '1:1+1'],
    [['panels', 'roof'], 'key', '2:13+1'],
    [['panels', 'bonnet', 7], 'value', '3:15+9'],
    [['nothing', 'at', 'all'], 'value', '1:1+1'],
  ])('of %j, its %s, is %s', (path, what, place) => {
    const { line, column, length } = document.placeOf(path, what);
    expect(`${line}:${column}+${length}`).toBe(place);
  });

  test('count lines by LF, CR LF and CR alike', () => {
    const lines = read('[1,\n2,\r\n3,\r4]');
    expect([0, 1, 2, 3].map((i) => lines.placeOf([i]).line)).toEqual([1, 2, 3, 4]);
    expect([0, 1, 2, 3].map((i) => lines.placeOf([i]).lineText)).toEqual(['[1,', '2,', '3,', '4]']);
  });
});

test('__proto__ and constructor are keys like any other and pollute nothing', () => {
  const { value } = read(
    '{"__proto__": {"polluted": 1}, "constructor": {"prototype": {"polluted": 1}}}',
  );
  expect(Object.keys(value as object)).toEqual(['__proto__', 'constructor']);
  expect(Object.hasOwn(Object.prototype, 'polluted')).toBe(false);
  expect((value as { polluted?: unknown }).polluted).toBeUndefined();
});

const pathsOf = (value: unknown, path: JsonPath = []): readonly JsonPath[] => [
  path,
  ...(typeof value !== 'object' || value === null
    ? []
    : Object.entries(value).flatMap(([key, child]) =>
        pathsOf(child, [...path, Array.isArray(value) ? Number(key) : key]),
      )),
];

const at = (value: unknown, path: JsonPath): unknown =>
  path.reduce<unknown>((here, step) => Object.getOwnPropertyDescriptor(here, step)?.value, value);

/** What stands at a place: from its first character, the text of a whole JSON value. */
const startsWithValue = (text: string, value: unknown, indent: number): boolean =>
  text
    .split('\n')
    .map((line) => line.trimStart())
    .join('')
    .startsWith(
      JSON.stringify(value, null, indent)
        .split('\n')
        .map((line) => line.trimStart())
        .join(''),
    );

test('the place of every key and value of any JSON holds that key and value', () => {
  fc.assert(
    fc.property(fc.json({ maxDepth: 4 }), fc.constantFrom(0, 1, 3), (json, indent) => {
      const value: unknown = JSON.parse(json);
      const text = JSON.stringify(value, null, indent);
      const lines = text.split('\n');
      const document = read(text);
      expect(document.value).toEqual(value);
      for (const path of pathsOf(value)) {
        const { line = 0, column = 0, lineText } = document.placeOf(path);
        expect(lineText).toBe(lines[line - 1]);
        const rest = [lineText?.slice(column - 1), ...lines.slice(line)].join('\n');
        expect(startsWithValue(rest, at(value, path), indent)).toBe(true);
        const key = path.at(-1);
        if (typeof key !== 'string') continue;
        const {
          lineText: keyLine = '',
          column: from = 0,
          length = 0,
        } = document.placeOf(path, 'key');
        expect(JSON.parse(keyLine.slice(from - 1, from - 1 + length))).toBe(key);
      }
    }),
    { numRuns: 500 },
  );
});

const accepted = (text: string): boolean => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};

test('a text of JSON-like pieces is refused by syntax exactly when JSON.parse refuses it', () => {
  const pieces = [
    '{',
    '}',
    '[',
    ']',
    ':',
    ',',
    '"a"',
    '"',
    '1',
    '-',
    '0',
    '.',
    'e',
    'true',
    'null',
    ' ',
    '\n',
    '\\',
    "'",
    '/',
    '#',
    '*',
    ';',
    '\u00a0',
    '\t',
    '\u2028',
    'u00e9',
    '\uFEFF',
    '\0',
  ];
  let valid = 0;
  const text = fc.oneof(
    fc.array(fc.constantFrom(...pieces), { maxLength: 9 }).map((list) => list.join('')),
    fc
      .tuple(fc.json({ maxDepth: 3 }), fc.nat(), fc.nat({ max: 3 }), fc.constantFrom('', ...pieces))
      .map(([json, where, cut, piece]) => {
        const i = where % (json.length + 1);
        return json.slice(0, i) + piece + json.slice(i + cut);
      }),
  );
  fc.assert(
    fc.property(text, (broken) => {
      fc.pre(!broken.startsWith('\uFEFF'));
      const { diagnostics } = parseJson('f', broken);
      const faults = diagnostics.filter(({ code }) => code === 'json-syntax');
      expect(faults.length === 0).toBe(accepted(broken));
      valid += faults.length === 0 ? 1 : 0;
      for (const { at: place, hint, message } of faults) {
        expect(message).not.toBe('this is not JSON');
        expect(hint).not.toBe('');
        expect(broken.split(/\r\n|\n|\r/)[(place?.line ?? 0) - 1]).toBe(place?.lineText);
        expect(place?.column).toBeLessThanOrEqual((place?.lineText?.length ?? 0) + 1);
      }
    }),
    { numRuns: 5000 },
  );
  expect(valid).toBeGreaterThan(250);
});
