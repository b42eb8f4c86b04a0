import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readGaugeFile } from '../../src/intake/read-gauge-file.ts';
import { options, panelNames, utf8 } from './helpers.ts';

type Written = {
  encoding: 'utf-8' | 'utf-8-bom' | 'utf-16le' | 'utf-16be';
  delimiter: ',' | ';' | '\t';
  lineEnd: '\n' | '\r\n' | '\r';
  layout: 'long' | 'wide';
  mark: '.' | ',';
  finalLineEnd: boolean;
};
const written: fc.Arbitrary<Written> = fc.record({
  encoding: fc.constantFrom('utf-8', 'utf-8-bom', 'utf-16le', 'utf-16be'),
  delimiter: fc.constantFrom(',', ';', '\t'),
  lineEnd: fc.constantFrom('\n', '\r\n', '\r'),
  layout: fc.constantFrom('long', 'wide'),
  mark: fc.constantFrom('.', ','),
  finalLineEnd: fc.boolean(),
});
/** Rows of one reading per panel, in tenths of a µm: 10.1 to 900.9, never without a decimal. */
const table = fc.array(
  fc.tuple(...panelNames.map(() => fc.integer({ min: 101, max: 9009 }).filter((n) => n % 10 > 0))),
  { minLength: 1, maxLength: 8 },
);

function bytesOf(text: string, encoding: Written['encoding']): Uint8Array {
  if (encoding === 'utf-8') return utf8(text);
  if (encoding === 'utf-8-bom') return utf8(`\ufeff${text}`);
  const bytes = Buffer.from(`\ufeff${text}`, 'utf16le');
  return Uint8Array.from(encoding === 'utf-16be' ? bytes.swap16() : bytes);
}

function write(rows: number[][], how: Written): Uint8Array {
  const cell = (text: string) => (text.includes(how.delimiter) ? `"${text}"` : text);
  const number = (tenths: number) => cell((tenths / 10).toFixed(1).replace('.', how.mark));
  const lines =
    how.layout === 'wide'
      ? [panelNames.map((name) => `${name} (µm)`), ...rows.map((row) => row.map(number))]
      : [
          ['panel', 'reading_um'],
          ...rows.flatMap((row) => row.map((n, k) => [panelNames[k] ?? '', number(n)])),
        ];
  const text = lines.map((line) => line.join(how.delimiter)).join(how.lineEnd);
  return bytesOf(how.finalLineEnd ? text + how.lineEnd : text, how.encoding);
}

const readBack = (bytes: Uint8Array) => readGaugeFile({ name: 'f', bytes }, options).value;

test('a table reads back the same however it is written', () => {
  fc.assert(
    fc.property(table, written, (rows, how) => {
      const value = readBack(write(rows, how));
      expect(value?.readings.map((r) => [r.panel, r.point, r.repeat, Number(r.thickness)])).toEqual(
        rows.flatMap((row, r) => row.map((n, k) => [panelNames[k], String(r + 1), 1, n / 10])),
      );
      const { encoding, delimiter, mark: decimal, layout } = how;
      expect(value?.decisions).toMatchObject({ encoding, delimiter, decimal, layout, unit: 'um' });
    }),
    { numRuns: 500 },
  );
});

test('a table with decimal commas equals its twin with points', () => {
  fc.assert(
    fc.property(table, written, (rows, how) => {
      const [comma, point] = ([',', '.'] as const).map((mark) =>
        readBack(write(rows, { ...how, delimiter: ';', mark })),
      );
      expect(comma?.readings).toEqual(point?.readings);
      expect(comma?.readings.length).toBe(rows.length * panelNames.length);
    }),
  );
});

test('changed bytes never throw, never give a value that is no film, never stay without a word', () => {
  const change = fc.record({
    at: fc.nat(),
    bytes: fc.oneof(
      fc.uint8Array({ maxLength: 3 }),
      fc.constantFrom(...['"', '\n', ',', ';', '1e9', '#', '\0', '0x', ' '].map(utf8)),
    ),
    drop: fc.nat({ max: 3 }),
  });
  let readings = 0;
  fc.assert(
    fc.property(
      table,
      written,
      fc.array(change, { minLength: 1, maxLength: 4 }),
      (rows, how, changes) => {
        let bytes = [...write(rows, how)];
        for (const { at, bytes: put, drop } of changes)
          bytes.splice(at % bytes.length || 0, drop, ...put);
        if (bytes.length === 0) bytes = [32];
        const outcome = readGaugeFile({ name: 'f', bytes: Uint8Array.from(bytes) }, options);
        if (outcome.value === undefined) expect(outcome.diagnostics.length).toBeGreaterThan(0);
        for (const { thickness, origin } of outcome.value?.readings ?? []) {
          readings += 1;
          expect(thickness > 0 && thickness <= 5000).toBe(true);
          expect(origin.line >= 1 && origin.column >= 1).toBe(true);
        }
      },
    ),
    { numRuns: 1000 },
  );
  expect(readings).toBeGreaterThan(0);
});
