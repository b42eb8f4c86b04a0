import { describe, expect, test } from 'vitest';
import { error } from '../../src/base/diagnostics.ts';
import { renderCsvRow } from '../../src/render/csv.ts';
import { renderDiagnostic } from '../../src/render/diagnostic-text.ts';
import { renderJson, renderNdjson } from '../../src/render/json.ts';
import { UNSAFE } from '../render/naughty.ts';
import { naughtyStrings } from './naughty-strings.ts';

const OBEYED = /[\p{Cc}\u061c\u200b-\u200f\u2028-\u202e\u2060-\u2069\ufeff]/u;

const said = (text: string) =>
  error('reading-not-a-number', `"${text}" is not a number`, {
    at: { file: text, line: 2, column: 1, length: text.length, lineText: text },
    hint: `write ${text}`,
  });

test('the list holds every kind of string once, and enough of them', () => {
  expect(naughtyStrings.length).toBeGreaterThan(330);
  expect(new Set(naughtyStrings).size).toBe(naughtyStrings.length);
});

describe.each([
  ['text', false],
  ['ASCII text', true],
] as const)('a diagnostic in %s', (_, ascii) => {
  test('quotes any string in four lines that move no cursor, or in two where there is nothing to see', () => {
    for (const text of naughtyStrings) {
      const told = renderDiagnostic(said(text), ascii);
      expect(UNSAFE.exec(told.replaceAll('\n', ''))?.[0]).toBeUndefined();
      expect(told.split('\n')).toHaveLength(said(text).at?.lineText?.trim() === '' ? 3 : 5);
      if (ascii) expect(told).toMatch(/^\p{ASCII}*$/u);
    }
  });
});

test('a record gives any string back as it was, in signs that no terminal obeys', () => {
  for (const text of naughtyStrings) {
    const record = { schema: 'leastcut/read/1', vehicle: text, [`k${text}`]: [text] };
    const lines = renderNdjson([record]);
    expect(lines.split('\n')).toHaveLength(2);
    for (const json of [lines, renderJson(record)]) {
      expect(OBEYED.exec(json.replaceAll('\n', ''))?.[0]).toBeUndefined();
      expect(JSON.parse(json)).toEqual(record);
    }
  }
});

test('a row of CSV keeps any string in its cell, and a spreadsheet runs none', () => {
  for (const text of naughtyStrings) {
    const row = renderCsvRow(['first', text, 'last']);
    const cell = row.slice('first,'.length, -',last\n'.length);
    const shown = cell.startsWith('"') ? cell.slice(1, -1).replaceAll('""', '"') : cell;
    expect(row).toBe(`first,${cell},last\n`);
    if (!cell.startsWith('"')) expect(cell).not.toMatch(/[",\n\r]/);
    expect(shown).not.toMatch(/^[=+\-@\t\r]/);
  }
});
