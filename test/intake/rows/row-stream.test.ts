import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createRowStream } from '../../../src/intake/rows/row-stream.ts';
import { createSource, type QuoteMark } from '../../../src/intake/rows/source.ts';
import { cellSpan, type Delimiter, tokenize } from '../../../src/intake/rows/tokens.ts';
import { brief } from '../helpers.ts';

type Dialect = {
  delimiter: Delimiter;
  quote: QuoteMark;
  quoteAll: boolean;
  padding: string;
  trailing: boolean;
  between: string;
  finalLineEnd: boolean;
};
const dialect: fc.Arbitrary<Dialect> = fc.record({
  delimiter: fc.constantFrom<Delimiter>(',', ';', '\t', '|'),
  quote: fc.constantFrom<QuoteMark>('"', "'"),
  quoteAll: fc.boolean(),
  padding: fc.constantFrom('', ' '),
  trailing: fc.boolean(),
  between: fc.constantFrom('\n', '\n\n', '\n# "a, comment\n'),
  finalLineEnd: fc.boolean(),
});
const piece = fc.constantFrom(
  'a',
  '12',
  'µ',
  ' b',
  '"',
  "'",
  '""',
  ',',
  ';',
  '\t',
  '|',
  '\n',
  '12" disc',
  '#x',
  '漆',
);
const cell = fc.array(piece, { maxLength: 4 }).map((parts) => parts.join('').trim());
const table = fc.array(fc.array(cell, { minLength: 2, maxLength: 5 }), {
  minLength: 1,
  maxLength: 8,
});

function write(rows: readonly (readonly string[])[], how: Dialect): string {
  const { delimiter, quote, quoteAll, padding } = how;
  const written = (text: string): string => {
    // Behind blanks, a quoted cell keeps to its line; and one that starts with the delimiter and
    // goes on over lines is refused as a quote too many: neither is written here.
    const special = text.includes(delimiter) || text.includes('\n') || text.includes(quote);
    const around = text.includes('\n') ? '' : padding;
    const inner = quoteAll || special || text.startsWith('#') ? quoted(text, quote) : text;
    return `${around}${inner}${around}`;
  };
  const lines = rows.map(
    (row) => row.map(written).join(delimiter) + (how.trailing ? delimiter : ''),
  );
  return lines.join(how.between) + (how.finalLineEnd ? '\n' : '');
}
const quoted = (text: string, quote: string): string =>
  `${quote}${text.replaceAll(quote, quote + quote)}${quote}`;

/** The rows that hold something, as they come back. */
const expected = (rows: readonly (readonly string[])[], { trailing }: Dialect) =>
  rows
    .filter((row) => row.some((text) => text !== ''))
    .map((row) => (trailing ? [...row, ''] : row));

const readable = (rows: readonly (readonly string[])[], { delimiter }: Dialect): boolean =>
  rows.every((row) => row.every((text) => !(text.startsWith(delimiter) && text.includes('\n'))));

const trimmed = (rows: readonly { cells: readonly string[] }[] | undefined) =>
  rows?.map(({ cells }) => cells.map((text) => text.trim()));

test('a table comes back cell by cell, however it is delimited, quoted, padded and ended', () => {
  fc.assert(
    fc.property(table, dialect, (rows, how) => {
      fc.pre(readable(rows, how));
      const source = createSource('f', write(rows, how), { quote: how.quote });
      const back = tokenize(source, how.delimiter, { offset: 0, line: 1 });
      expect(back.diagnostics).toEqual([]);
      expect(trimmed(back.value)).toEqual(expected(rows, how));
    }),
    { numRuns: 400 },
  );
});

test('the cells are those of csv-parse', () => {
  fc.assert(
    fc.property(table, dialect, (rows, how) => {
      const plain = { ...how, padding: '', between: '\n' };
      fc.pre(readable(rows, plain));
      const text = write(rows, plain);
      const theirs: string[][] = parse(text, {
        delimiter: how.delimiter,
        quote: how.quote,
        escape: how.quote,
        record_delimiter: '\n',
        relax_column_count: true,
        relax_quotes: true,
        skip_empty_lines: true,
      });
      const source = createSource('f', text, { quote: how.quote });
      const ours = tokenize(source, how.delimiter, { offset: 0, line: 1 }).value;
      const filled = theirs.filter((row) => row.some((one) => one.trim() !== ''));
      expect(trimmed(ours)).toEqual(filled.map((row) => row.map((one) => one.trim())));
    }),
    { numRuns: 400 },
  );
});

test('cut anywhere, the rows are the same, with the same lines and the same places', () => {
  fc.assert(
    fc.property(table, dialect, fc.array(fc.nat(), { maxLength: 5 }), (rows, how, places) => {
      fc.pre(readable(rows, how));
      const text = write(rows, how);
      const whole = createSource('f', text, { quote: how.quote });
      const { value: all = [] } = tokenize(whole, how.delimiter, { offset: 0, line: 1 });
      const stream = createRowStream('f', how);
      const ends = [
        ...places.map((place) => place % (text.length + 1)).sort((a, b) => a - b),
        text.length,
      ];
      const told = ends.flatMap((end, k) => {
        const part = stream.take(text.slice(ends[k - 1] ?? 0, end), k === ends.length - 1);
        const { source, rows: own } = part.value ?? { source: whole, rows: [] };
        return own.map((row) => about(source, row, how.delimiter));
      });
      expect(told).toEqual(all.map((row) => about(whole, row, how.delimiter)));
    }),
    { numRuns: 300 },
  );
});

type Row = NonNullable<ReturnType<typeof tokenize>['value']>[number];
/** Cells, line, and the place of every cell. */
function about(source: ReturnType<typeof createSource>, row: Row, delimiter: Delimiter) {
  const places = row.cells.map((_, k) => {
    const { offset, length } = cellSpan(source, row, k, delimiter);
    return source.placeAt(offset, length);
  });
  return { cells: row.cells, line: row.line, places };
}

test('a fault in a later piece is told with its line in the file', () => {
  const stream = createRowStream('f', { delimiter: ',', quote: '"' });
  expect(stream.take('a,b\nc,d\ne', false).value?.rows).toHaveLength(2);
  const { diagnostics } = stream.take(',f\n"g"h,i\n', true);
  expect(diagnostics.map(brief)).toEqual(['4:3+1 error cell-invalid']);
});

test('a quote that never closes does not hold back the rest of a long file', () => {
  const stream = createRowStream('f', { delimiter: ',', quote: '"' });
  const faults: string[] = [];
  let told = 0;
  for (let k = 0; k < 40 && faults.length === 0; k += 1) {
    const text = `${k === 0 ? 'a,"b\n' : ''}${'c,d\n'.repeat(1_000)}`;
    faults.push(...stream.take(text, false).diagnostics.map(brief));
    told = k;
  }
  expect(faults).toEqual(['1:3+1 error quote-unclosed']);
  expect(told).toBeLessThan(30);
});
