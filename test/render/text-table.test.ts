import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { displayWidth, printable } from '../../src/render/printable.ts';
import { tableLines } from '../../src/render/text-table.ts';
import { type Block, type Cell, type Column, cell } from '../../src/report/model.ts';

type Table = Extract<Block, { kind: 'table' }>;
const style = (width: number) => ({ width, paint: (text: string) => text });
const drawn = (table: Table, width: number): readonly string[] =>
  tableLines(table, style(width)).map((line) => line.trimEnd());

const left = (title: string): Column => ({ title, align: 'left' });
const right = (title: string): Column => ({ title, align: 'right' });
const table = (columns: readonly Column[], ...rows: readonly (readonly string[])[]): Table => ({
  kind: 'table',
  columns,
  rows: rows.map((row) => row.map((text) => cell(text))),
});

describe('a table wider than the page', () => {
  test('has its prose wrapped in its cell, the rest of the row beside it', () => {
    const prose = 'median times and through the spread of paints';
    expect(drawn(table([left('what'), right('n'), left('how')], ['a', '5', prose]), 40)).toEqual([
      'what n how',
      'a    5 median times and through the',
      '       spread of paints',
    ]);
  });

  test('has its columns in groups under one another, each with the first', () => {
    const columns = [left('panel'), ...['aaaa', 'bbbb', 'cccc', 'dddd'].map(right)];
    expect(
      drawn(table(columns, ['roof', '1', '2', '3', '4'], ['door', '5', '6', '7', '8']), 16),
    ).toEqual([
      'panel aaaa bbbb',
      'roof     1    2',
      'door     5    6',
      '',
      'panel cccc dddd',
      'roof     3    4',
      'door     7    8',
    ]);
  });

  test('keeps its strip, in the last group, as wide as the page leaves', () => {
    const strip: Cell = { kind: 'strip', values: [50], marked: null };
    const one: Table = {
      kind: 'table',
      columns: [
        left('panel'),
        right('a number'),
        right('another number'),
        { title: '', align: 'left', axis: { from: 0, to: 100, line: null } },
      ],
      rows: [[cell('roof'), cell('1'), cell('2'), strip]],
    };
    expect(drawn(one, 30)).toEqual([
      'panel a number another number',
      'roof         1              2',
      '',
      'panel 0                    100',
      'roof              ·',
    ]);
  });

  test('of two columns is left too wide rather than cut', () => {
    const long = 'x'.repeat(40);
    expect(drawn(table([left('a'), right('b')], [long, '1']), 30)[1]).toBe(`${long} 1`);
  });
});

const word = fc.constantFrom(
  'roof',
  '車体',
  'coupe\u0301',
  '⌚',
  '\u0301x',
  'ｶﾞ',
  'a\u001bb',
  '👩‍🔧',
  '𠮷',
  '🇬🇧',
);

test('stands in columns at every width, whatever the script, and loses no cell', () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(word, word, word, word), { minLength: 1, maxLength: 4 }),
      fc.integer({ min: 10, max: 200 }),
      (rows, width) => {
        const columns = [left('panel'), right('n'), left('verdict'), right('hours')];
        const lines = tableLines(table(columns, ...rows), style(width));
        // An empty line stands between two groups of columns.
        expect((lines.length + 1) % (rows.length + 2)).toBe(0);
        for (let at = 0; at < lines.length; at += rows.length + 2) {
          const group = lines.slice(at, at + rows.length + 1);
          expect(new Set(group.map(displayWidth)).size).toBe(1);
        }
        const shown = (text: string): number => lines.join(' ').split(printable(text)).length - 1;
        expect(rows.flat().filter((text) => shown(text) === 0)).toEqual([]);
      },
    ),
  );
});
