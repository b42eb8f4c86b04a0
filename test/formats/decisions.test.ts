import { describe, expect, test } from 'vitest';
import { readDecisions } from '../../src/formats/decisions.ts';
import { told } from './told.ts';

const file = (rest: string): string => `{ "schema": "leastcut/decisions/1",\n${rest} }`;

test('all that may be settled of an export is read', () => {
  const { value, diagnostics } = readDecisions(
    'decisions.json',
    file(`"encoding": "utf-16le", "delimiter": "\\t", "decimal": ",", "layout": "long", "unit": "um",
      "header_line": 4, "columns": { "panel": "Bauteil", "reading": "Wert",
      "time": ["Datum", "Uhrzeit"] }, "panel_names": { "Haube": "bonnet", "constructor": "roof" }`),
  );
  expect(diagnostics).toEqual([]);
  expect(value?.value).toStrictEqual({
    encoding: 'utf-16le',
    delimiter: '\t',
    decimal: ',',
    layout: 'long',
    unit: 'um',
    headerLine: 4,
    columns: new Map([
      ['panel', ['Bauteil']],
      ['reading', ['Wert']],
      ['time', ['Datum', 'Uhrzeit']],
    ]),
    panelNames: new Map([
      ['Haube', 'bonnet'],
      ['constructor', 'roof'],
    ]),
  });
});

test('what is left out is not settled', () => {
  expect(readDecisions('f', '{ "schema": "leastcut/decisions/1" }').value?.value).toStrictEqual({
    columns: new Map(),
    panelNames: new Map(),
  });
});

describe('what people get wrong in a decisions file', () => {
  test.each<[string, string, readonly string[]]>([
    [
      'the name of a delimiter',
      '"delimiter": "Tab"',
      ['2:14 "delimiter" is "Tab"; it takes ",", ";", "\\t" or "|" | write "\\t"'],
    ],
    [
      'the name of a decimal mark',
      '"decimal": "comma"',
      ['2:12 "decimal" is "comma"; it takes "." or "," | write ","'],
    ],
    [
      'the sign of a unit',
      '"unit": "µm"',
      ['2:9 "unit" is "µm"; it takes "um", "mil", "mm", "inch", "cm" or "nm" | write "um"'],
    ],
    [
      'a role that there is not',
      '"columns": { "pannel": "Bauteil" }',
      ['2:14 the key "pannel" means nothing here | did you mean "panel"?'],
    ],
    [
      'one column for two roles',
      '"columns": { "panel": "A", "point": "A" }',
      [
        '2:37 "columns.point" is "A", which is the column of "panel" too | a column means one thing: keep one of the two',
      ],
    ],
    [
      'a line before the first',
      '"header_line": 0',
      ['2:16 "header_line" is 0; it takes a whole number from 1 to 100000'],
    ],
    [
      'a panel name for nothing',
      '"panel_names": { "Haube": "" }',
      ['2:27 "panel_names.Haube" is ""; it takes text that is not blank'],
    ],
  ])('%s', (_, text, sentences) => {
    expect(told(readDecisions, file(text))).toEqual(sentences);
  });
});
