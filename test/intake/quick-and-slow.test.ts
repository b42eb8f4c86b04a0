/**
 * Rows that are written plainly go the quick way through the reader: a cell like the one above is the
 * same string, a text is judged once. The same rows in quotes, and with blanks that make each cell
 * another text, go the slow way. What is read of them must not differ.
 */
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { panelRecogniser } from '../../src/film/template/panel-names.ts';
import { builtInTemplates } from '../../src/formats/data/templates.ts';
import { filmModel } from '../../src/formats/models.ts';
import { readGaugeFile } from '../../src/intake/read-gauge-file.ts';
import { allKinds } from './corpus/all-kinds.ts';
import { written } from './corpus/run-corpus.ts';
import { utf8 } from './helpers.ts';

const isPanel = panelRecogniser(builtInTemplates);

/** All that is said of a text but the columns of its lines and the texts of the lines themselves. */
function told(text: string) {
  const { value, diagnostics } = readGaugeFile(
    { name: 'f', bytes: utf8(text) },
    { isPanel, plausible: filmModel.measurement },
  );
  const lineOf = ({
    origin: { line },
    ...reading
  }: Record<'origin', { readonly line: number }>) => ({
    ...reading,
    line,
  });
  return {
    readings: value?.readings.map(lineOf),
    excluded: value?.excluded.map(({ column: _, ...cell }) => cell),
    decisions: value?.decisions,
    diagnostics: diagnostics.map(({ code, severity, message, at }) => ({
      ...{ code, severity, message },
      line: at?.line,
    })),
  };
}

/** Each cell with as many blanks behind it as its row has it differ from the two above. */
const padded = (text: string, mark: string): string =>
  byCells(text, mark, (cell, line) => `${cell}${' '.repeat(line % 3)}`);
/** The names of the columns stay bare: by them the program knows a table of its own. */
const quoted = (text: string, mark: string): string =>
  byCells(text, mark, (cell, line) => (line === 0 ? cell : `"${cell}"`));

const byCells = (
  text: string,
  mark: string,
  write: (cell: string, line: number) => string,
): string =>
  text
    .split('\n')
    .map((line, k) =>
      line.includes(mark)
        ? line
            .split(mark)
            .map((cell) => write(cell, k))
            .join(mark)
        : line,
    )
    .join('\n');

/** A text that a mark splits and that has no quotes or blanks of its own to be mistaken for those put in. */
const plainMark = (text: string): string | undefined =>
  /["'#\r\0\u0085\u2028]/u.test(text) ? undefined : [';', ','].find((mark) => text.includes(mark));

const panels = ['bonnet', 'roof', 'tailgate', 'front left door'];
const cell = fc.oneof(
  { weight: 12, arbitrary: fc.integer({ min: 800, max: 1600 }).map((n) => (n / 10).toFixed(1)) },
  { weight: 1, arbitrary: fc.constantFrom('', 'OL', '0', '9999', 'abc', '12.5', '104,2', '>2000') },
);
const row = fc.tuple(
  fc.constantFrom('car-1', 'car-2'),
  fc.oneof(
    { weight: 30, arbitrary: fc.constantFrom(...panels) },
    { weight: 1, arbitrary: fc.constantFrom('', 'mean', 'foil', 'panel', 'roof?') },
  ),
  fc.oneof(
    { weight: 30, arbitrary: fc.constantFrom('1', '2', '3', '4', '5') },
    { weight: 1, arbitrary: fc.constantFrom('', '01', 'max', 'edge') },
  ),
  cell,
);
const table = fc
  .array(row, { minLength: 1, maxLength: 40 })
  .map(
    (rows) => `vehicle;panel;point;reading_um\n${rows.map((own) => own.join(';')).join('\n')}\n`,
  );

test('a table says the same in quotes and with blanks as it does plainly', () => {
  fc.assert(
    fc.property(table, (text) => {
      const plain = told(text);
      expect(told(quoted(text, ';'))).toEqual(plain);
      expect(told(padded(text, ';'))).toEqual(plain);
    }),
    { numRuns: 300 },
  );
});

const filesIn = (folder: string): readonly string[] =>
  readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    return statSync(path).isDirectory() ? filesIn(path) : [path];
  });

test('every sample of readings says the same in quotes as it does plainly', () => {
  const texts = filesIn(join(import.meta.dirname, '../../samples'))
    .filter((path) => path.endsWith('.csv'))
    .map((path) => readFileSync(path, 'utf8'))
    .filter((text) => plainMark(text) !== undefined && told(text).readings !== undefined);
  expect(texts.length).toBeGreaterThan(8);
  for (const text of texts) {
    const quotedText = quoted(text, plainMark(text) ?? ',');
    expect(told(quotedText)).toEqual(told(text));
  }
});

/** Rows that all have the cells of the first, and nothing that a quote would hide from the reader. */
const isRegular = (text: string, mark: string): boolean => {
  const lines = text.trimEnd().split('\n');
  const width = lines[0]?.split(mark).length ?? 0;
  return (
    width > 2 &&
    // A quote that closes says that the last cell is whole.
    text.endsWith('\n') &&
    lines.every((line) => /^[\p{L}\d]/u.test(line) && line.split(mark).length === width)
  );
};

test('every file of the corpus that is one regular table is read the same in quotes', () => {
  const different: string[] = [];
  let tried = 0;
  // A pair of a key and its value is no cell to put in quotes.
  const kinds = allKinds.filter(({ group }) => group !== 'sizes' && group !== 'keys and lines');
  for (const kind of kinds) {
    const text = new TextDecoder().decode(written(kind, 1).bytes);
    const mark = plainMark(text);
    if (mark === undefined || !isRegular(text, mark) || text.includes('=')) continue;
    const [plain, inQuotes] = [told(text), told(quoted(text, mark))];
    tried += 1;
    if (JSON.stringify(plain.readings) !== JSON.stringify(inQuotes.readings))
      different.push(kind.title);
  }
  expect(different).toEqual([]);
  expect(tried).toBeGreaterThan(100);
});
