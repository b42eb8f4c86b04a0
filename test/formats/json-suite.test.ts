/** Corner cases of RFC 8259 that parsers are known to differ on. */
import { describe, expect, test } from 'vitest';
import { parseJson } from '../../src/formats/json-text.ts';

const valid: readonly (readonly [string, unknown])[] = [
  ['[]', []],
  ['{}', {}],
  [' [1] ', [1]],
  ['[1\n]', [1]],
  ['\t[null,\r\n true]', [null, true]],
  ['"lone"', 'lone'],
  ['42', 42],
  ['-0', -0],
  ['null', null],
  ['[-0]', [-0]],
  ['[0e+1]', [0]],
  ['[1E22]', [1e22]],
  ['[1e-2]', [0.01]],
  ['[123.456e78]', [123.456e78]],
  ['[0.1e1]', [1]],
  ['[20e1]', [200]],
  ['[-1]', [-1]],
  ['[1e400]', [Number.POSITIVE_INFINITY]],
  ['[123123123123123123123]', [1.2312312312312313e20]],
  ['[""]', ['']],
  ['["\\u0000"]', ['\0']],
  ['["\\u0060\\u012a\\u12AB"]', ['`\u012a\u12ab']],
  ['["\\uD801\\udc37"]', ['\u{10437}']],
  ['["\\uD800"]', ['\ud800']],
  ['["\\"\\\\\\/\\b\\f\\n\\r\\t"]', ['"\\/\b\f\n\r\t']],
  ['["\\\\u0000"]', ['\\u0000']],
  ['["a/*b*/c//d#e"]', ['a/*b*/c//d#e']],
  ['["\u007f\u2028\u2029\uffff"]', ['\u007f\u2028\u2029\uffff']],
  ['["\u00a0\uFEFF"]', ['\u00a0\uFEFF']],
  ['["🚗"]', ['🚗']],
  ['{"":0}', { '': 0 }],
  ['{"a":[],"b":{}}', { a: [], b: {} }],
  ['{"toString":1,"hasOwnProperty":2}', { toString: 1, hasOwnProperty: 2 }],
  [`${'['.repeat(500)}${']'.repeat(500)}`, JSON.parse('['.repeat(500) + ']'.repeat(500))],
  ['\uFEFF{"a":1}', { a: 1 }],
];

const invalid: readonly (readonly [string, string])[] = [
  ['[1 true]', '1:4'],
  ['["a" "b"]', '1:6'],
  ['["": 1]', '1:4'],
  ['[""],', '1:5'],
  ['[""]]', '1:5'],
  ['["x"', '1:5'],
  ['[3[4]]', '1:3'],
  ['[1,\n1\n,1', '3:3'],
  ['[,]', '1:2'],
  ['[   , ""]', '1:5'],
  ['[-]', '1:2'],
  ['[--2]', '1:2'],
  ['[-01]', '1:2'],
  ['[012]', '1:2'],
  ['[1.]', '1:2'],
  ['[.5]', '1:2'],
  ['[1e]', '1:2'],
  ['[1e+]', '1:2'],
  ['[1eE2]', '1:2'],
  ['[1.5.5]', '1:2'],
  ['[1_000]', '1:2'],
  ['[1 000]', '1:4'],
  ['[0x1F]', '1:2'],
  ['[\uff11]', '1:2'],
  ['[Infinity]', '1:2'],
  ['[-Infinity]', '1:2'],
  ['[NaN]', '1:2'],
  ['[nul]', '1:2'],
  ['[TRUE]', '1:2'],
  ['[undefined]', '1:2'],
  ['[True]', '1:2'],
  ['["\\x00"]', '1:3'],
  ['["\\\\\\"]', '1:2'],
  ['["\\uD834\\u00A"]', '1:9'],
  ['["\\a"]', '1:3'],
  ['["\\"]', '1:2'],
  ['["new\nline"]', '1:2'],
  ['["a\0a"]', '1:4'],
  ['["\t"]', '1:3'],
  ["['single']", '1:2'],
  ['["', '1:2'],
  ['"', '1:1'],
  ['[', '1:2'],
  [']', '1:1'],
  ['{', '1:2'],
  ['{]', '1:2'],
  ['[}', '1:2'],
  ['{"a"', '1:5'],
  ['{"a":', '1:6'],
  ['{"a":"a', '1:6'],
  ['{"a":"a" 123}', '1:10'],
  ['{"a":"b",,"c":"d"}', '1:10'],
  ['{"a":"b"}#', '1:10'],
  ['{"a":"b"}/**/', '1:10'],
  ['{"a":"b"}//', '1:10'],
  ['{"a":/*c*/"b"}', '1:6'],
  ['{"a":"b"}{', '1:10'],
  ['{"x", null}', '1:5'],
  ['{"x"::"b"}', '1:6'],
  ['{"a" b}', '1:6'],
  ['{:"b"}', '1:2'],
  ['{1:1}', '1:2'],
  ['{null:null}', '1:2'],
  ['{[]:1}', '1:2'],
  ['{"id":0,}', '1:8'],
  ['{"id":0,,}', '1:9'],
  ['{{}}', '1:2'],
  ['<null>', '1:1'],
  ['[<null>]', '1:2'],
  ['\u2060[]', '1:1'],
  ['[\f]', '1:2'],
  ['[\u000b1]', '1:2'],
  ['\uFEFF\uFEFF[]', '1:1'],
  ['1]', '1:2'],
  ['[1]x', '1:4'],
  ['*', '1:1'],
  ['{"😀": tru}', '1:8'],
];

describe('valid JSON is accepted with its value', () => {
  test.each(valid)('%j', (text, value) => {
    const { value: document, diagnostics } = parseJson('f', text);
    expect(diagnostics).toEqual([]);
    expect(document?.value).toEqual(value);
  });
});

describe('invalid JSON is refused where it goes wrong', () => {
  test.each(invalid)('%j at %s', (text, place) => {
    const { value, diagnostics } = parseJson('f', text);
    expect(value).toBeUndefined();
    const [first] = diagnostics;
    expect(`${first?.at?.line}:${first?.at?.column}`).toBe(place);
    expect(first?.code).toBe('json-syntax');
    expect(first?.hint).toBeTypeOf('string');
  });
});
