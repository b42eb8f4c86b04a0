import fc from 'fast-check';
import { expect, test } from 'vitest';
import { renderJson, renderNdjson } from '../../src/render/json.ts';

test('JSON is one indented value and a line end; NDJSON a line for each value', () => {
  expect(renderJson({ a: [1] })).toBe('{\n  "a": [\n    1\n  ]\n}\n');
  expect(renderNdjson([{ a: 1 }, { b: 'x\ny' }])).toBe('{"a":1}\n{"b":"x\\ny"}\n');
  expect(renderNdjson([])).toBe('');
});

test('what a terminal may obey is escaped, and the value is the same', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (label) => {
      const text = renderJson({ label });
      expect(JSON.parse(text)).toEqual({ label });
      expect(text.replaceAll('\n', '')).not.toMatch(
        /[\p{Cc}\u061c\u200b-\u200f\u2028-\u202e\ufeff]/u,
      );
    }),
  );
  expect(renderNdjson([{ a: '\u009b\u202e' }])).toBe('{"a":"\\u009b\\u202e"}\n');
});
