import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { renderCsv } from '../../src/render/csv.ts';

const cells = (...row: (string | number | null)[]): string =>
  renderCsv({ columns: ['a'], rows: [row] })
    .split('\n')
    .slice(1)
    .join('\n');

describe('rows as CSV', () => {
  test('are the columns and a line each', () => {
    expect(
      renderCsv({
        columns: ['panel', 'area_m2'],
        rows: [
          ['roof', 1.7],
          ['lid', null],
        ],
      }),
    ).toBe('panel,area_m2\nroof,1.7\nlid,\n');
  });

  test('quote what would break them (RFC 4180)', () => {
    expect(cells('a,b', 'say "x"', 'two\nlines')).toBe('"a,b","say ""x""","two\nlines"\n');
  });

  test.each(['=1+1', '+1', '-1', '@SUM(A1)', '\tx', '\rx'])(
    'keep a text from running as a formula: %j',
    (text) => {
      const [[cell] = []] = parse(cells(text), { relax_column_count: true }) as string[][];
      expect(cell).toBe(`'${text}`);
    },
  );

  test('take an apostrophe that stands there already for a text, so that one can be taken off', () => {
    const [[cell] = []] = parse(cells("''=1"), { relax_column_count: true }) as string[][];
    expect(cell).toBe("'''=1");
    expect(cells("it's", "'so'")).toBe("it's,\"'so'\"\n");
  });

  test('begin no line with a # that would make it a comment', () => {
    expect(cells('#1 roof', 'no. #1')).toBe('"#1 roof",no. #1\n');
  });

  test('tell an escape that was typed from one that was made', () => {
    expect(cells('\\u{1b}', '\u001b')).toBe('\\u{5c}u{1b},\\u{1b}\n');
  });

  test('leave numbers alone, negative ones too', () => {
    expect(cells(-1.5, 1e-7)).toBe('-1.5,1e-7\n');
  });

  test('show an escape sequence as text', () => {
    expect(cells('a\u001b[31mb')).toBe('a\\u{1b}[31mb\n');
  });

  test('are read back as they were by another reader', () => {
    const plain = fc.string({ unit: fc.constantFrom(...'ab ,"\n;\'') });
    fc.assert(
      fc.property(fc.array(fc.tuple(plain, plain), { minLength: 1 }), (rows) => {
        const text = renderCsv({ columns: ['x', 'y'], rows });
        expect(parse(text, { from: 2 })).toEqual(rows);
      }),
    );
  });
});
