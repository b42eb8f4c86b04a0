/**
 * A plain table is read without being asked. Whatever it holds, it must say the same as when it is: to leave out no
 * line of it makes the reader ask.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { panelRecogniser, placeRecogniser } from '../../../src/film/template/panel-names.ts';
import { builtInTemplates } from '../../../src/formats/data/templates.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { type IntakeOptions, readGaugeFile } from '../../../src/intake/read-gauge-file.ts';
import { createSource } from '../../../src/intake/rows/source.ts';
import { plainTable } from '../../../src/intake/tables/plain-table.ts';
import { inFull } from '../../in-full.ts';
import { utf8 } from '../helpers.ts';

const options: IntakeOptions = {
  plausible: filmModel.measurement,
  isPanel: panelRecogniser(builtInTemplates),
  mayBePanel: placeRecogniser(builtInTemplates),
};

const read = (text: string, leftOut?: ReadonlySet<number>) =>
  readGaugeFile({ name: 'r.csv', bytes: utf8(text), ...(leftOut && { leftOut }) }, options);
const asked = (text: string) => read(text, new Set());
const isPlain = (text: string, more: Partial<IntakeOptions> = {}): boolean =>
  plainTable(createSource('r.csv', text), { ...options, ...more }) !== undefined;

/** So many, or as many as were asked for of a run by hand. */
const { PLAIN_RUNS } = process.env;
const runs = (usual: number): number => Number(PLAIN_RUNS ?? usual);

const head = 'panel,point,reading_um\n';
const ids = [...new Set(builtInTemplates.flatMap(({ panels }) => panels.map(({ id }) => id)))];
const names = builtInTemplates.flatMap(({ panels }) => panels.map(({ name }) => name));
/** Words that mean something to the reader besides panels. */
const words = [
  ...['mean', 'max', 'min', 'foil', 'zero', 'total', 'left', 'side', 'test', 'old roof', 'spot'],
  ...['left side', 'before', 'roof after', 'check', 'door', 'lf', 'average roof', 'right', 'edge'],
  ...['roof edge', 'bonnet shut', 'clear', 'roof primer', 'steel', 'inner wing', 'repeat', 'a b'],
];
const panels = fc.uniqueArray(
  fc.oneof(
    { weight: 40, arbitrary: fc.constantFrom(...ids) },
    { weight: 4, arbitrary: fc.constantFrom(...names) },
    { weight: 1, arbitrary: fc.constantFrom(...words) },
  ),
  { minLength: 1, maxLength: 9 },
);

/** Tenths of a µm: of a painted car, of anything that a gauge shows, and what stands for no value. */
const tenths = fc.oneof(
  { weight: 30, arbitrary: fc.integer({ min: 850, max: 1500 }) },
  { weight: 6, arbitrary: fc.integer({ min: 0, max: 9999 }) },
  { weight: 1, arbitrary: fc.constantFrom(0, 5, 10, 99, 100, 1000, 7770, 8888, 9990, 9999) },
);
const mean = (own: readonly number[]): number =>
  Math.round(own.reduce((sum, one) => sum + one, 0) / Math.max(1, own.length));
const spread = (own: readonly number[]): number =>
  Math.round(Math.sqrt(mean(own.map((one) => (one - mean(own)) ** 2))));
/** What a program may have worked out of the readings of a panel and written behind them. */
const behind: readonly ((own: readonly number[]) => readonly number[])[] = [
  () => [],
  (own) => [mean(own)],
  (own) => [mean(own), spread(own)],
  (own) => [Math.min(...own), Math.max(...own)],
  (own) => [Math.min(...own), Math.max(...own), mean(own), spread(own)],
  (own) => own,
];
const surveys = fc
  .record({
    names: panels,
    of: fc.oneof(
      { weight: 5, arbitrary: fc.constant(tenths) },
      { weight: 1, arbitrary: fc.constant(fc.integer({ min: 100, max: 900 })) },
      { weight: 1, arbitrary: fc.constant(fc.integer({ min: 1000, max: 1004 })) },
      { weight: 1, arbitrary: fc.constant(fc.integer({ min: 100, max: 130 }).map((n) => n * 10)) },
    ),
    points: fc.integer({ min: 1, max: 6 }),
    more: fc.oneof(
      { weight: 3, arbitrary: fc.constant(behind[0]) },
      { weight: 1, arbitrary: fc.constantFrom(...behind) },
    ),
  })
  .chain(({ names: own, of, points, more }) =>
    fc
      .array(fc.array(of, { minLength: points, maxLength: points }), {
        minLength: own.length,
        maxLength: own.length,
      })
      .map((all) =>
        all.flatMap((values, k) =>
          [...values, ...(more?.(values) ?? [])].map(
            (value, i) => `${own[k]},${i + 1},${(value / 10).toFixed(1)}`,
          ),
        ),
      ),
  );

test('a plain table says the same as one that is asked', () => {
  let plain = 0;
  fc.assert(
    fc.property(surveys, (rows) => {
      const text = `${head}${rows.join('\n')}\n`;
      if (isPlain(text)) plain += 1;
      expect(read(text)).toEqual(asked(text));
    }),
    { numRuns: runs(250) },
  );
  if (inFull) expect(plain).toBeGreaterThan(60);
}, 600_000);

test('a table with anything spoiled in it says the same as one that is asked', () => {
  fc.assert(
    fc.property(
      surveys,
      fc.nat(),
      fc.constantFrom('', ' ', ',', '"', '#', '\n', '-', '1', '.', 'OL', 'a', '\t', ';', '\r', 'µ'),
      fc.constantFrom(0, 1, 6, 20),
      (rows, at, put, cut) => {
        const text = `${head}${rows.join('\n')}\n`;
        const from = at % text.length;
        const spoiled = text.slice(0, from) + put + text.slice(from + cut);
        expect(read(spoiled)).toEqual(asked(spoiled));
      },
    ),
    { numRuns: runs(250) },
  );
}, 600_000);

test('rows of a plain table in another order, twice or left out say the same as when asked', () => {
  fc.assert(
    fc.property(surveys, fc.nat(), fc.nat(), fc.boolean(), (rows, one, other, twice) => {
      const [a, b] = [one % rows.length, other % rows.length];
      const kept = rows.filter((_, k) => k !== a);
      const moved = twice
        ? [...rows, rows[a] ?? '']
        : kept.toSpliced(b, 0, ...rows.slice(a, a + 1));
      const text = `${head}${(one % 3 === 0 ? kept : moved).join('\n')}\n`;
      expect(read(text)).toEqual(asked(text));
    }),
    { numRuns: runs(200) },
  );
}, 600_000);

const sample = readFileSync(
  join(import.meta.dirname, '../../../samples/sound-saloon/readings.csv'),
  'utf8',
);

test('the sound saloon is a plain table', () => {
  expect(isPlain(sample)).toBe(true);
  expect(read(sample)).toEqual(asked(sample));
});

test('what the user says of a plain table is heard', () => {
  const said: readonly Partial<IntakeOptions>[] = [
    ...[{ unit: 'mil' }, { delimiter: ';' }, { decimal: ',' }, { layout: 'wide' }],
    ...[{ headerLine: 2 }, { columns: new Map([['reading', 'point']]) }],
    ...([{ panelNames: new Map([['roof', 'bonnet']]) }] as const),
  ] as const;
  for (const more of said) expect(isPlain(sample, more)).toBe(false);
});

test('a table of one panel, a gap in its points and a panel met again are looked into', () => {
  const panel = (name: string, ...points: readonly number[]): string =>
    points.map((point) => `${name},${point},10${point}.5\n`).join('');
  expect(isPlain(head + panel('roof', 1, 2) + panel('bonnet', 1, 2))).toBe(true);
  expect(isPlain(head + panel('roof', 1, 2, 3))).toBe(false);
  expect(isPlain(head + panel('roof', 1, 3) + panel('bonnet', 1, 2))).toBe(false);
  expect(isPlain(head + panel('roof', 1) + panel('bonnet', 1) + panel('roof', 2))).toBe(false);
  expect(isPlain(head + panel('roof', 1, 2) + panel('lamp', 1, 2))).toBe(false);
  expect(isPlain((head + panel('roof', 1, 2) + panel('bonnet', 1, 2)).trimEnd())).toBe(false);
});
