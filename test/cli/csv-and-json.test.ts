/** A cell of csv says what its place of the record says: both are written and compared, cell by cell. */
import { expect, test } from 'vitest';
import { tableColumns } from '../../src/formats/data/table-columns.ts';
import { askLeastcut } from './ask-leastcut.ts';

type Json = { readonly [key: string]: unknown };

const saloon = 'samples/sound-saloon';
const ofSaloon = ['--job', `${saloon}/job.json`, '--defects', `${saloon}/defects.csv`];
const coupe = 'samples/older-coupe';

/** A table, what writes it, and the lists of the record whose items are its rows, the outer one first. */
const tables: readonly (readonly [string, readonly string[], readonly string[]])[] = [
  ['read', ['read', `${coupe}/readings.csv`], ['readings[]']],
  ['survey', ['survey', `${coupe}/readings.csv`, '--job', `${coupe}/job.json`], ['panels[]']],
  ['survey', ['survey', 'test/cases/plan-why-zones/readings.csv'], ['panels[]']],
  ['plan', ['plan', 'test/cases/plan-why-zones/readings.csv'], ['panels[]']],
  ['survey', ['survey', `${saloon}/readings.csv`, ...ofSaloon.slice(0, 2)], ['panels[]']],
  ['plan', ['plan', `${saloon}/readings.csv`, ...ofSaloon], ['panels[]']],
  [
    'quote',
    ['quote', `${saloon}/readings.csv`, ...ofSaloon, '--shop', 'samples/shop.json'],
    ['options[]', 'lines[]'],
  ],
  [
    'compare',
    ['compare', `${saloon}/readings.csv`, `${saloon}/after.csv`, '--marked'],
    ['panels[]'],
  ],
  [
    'grade',
    ['grade', 'samples/class/reference.csv', 'samples/class/anneke.csv', 'samples/class/dov.csv'],
    ['trainees[]', 'scores[]'],
  ],
  ['gauge', ['gauge', 'samples/gauge-checks.csv'], ['shims[]']],
  ['methods list', ['methods', 'list'], ['combinations[]']],
  ['methods show', ['methods', 'show', 'da/foam-medium/medium'], ['numbers[]']],
  ['methods materials', ['methods', 'materials'], ['materials[]', 'uses[]']],
  ['template list', ['template', 'list'], ['templates[]']],
  ['template show', ['template', 'show', 'saloon'], ['templates[]', 'panels[]']],
];

/** Cells that hold a digest of their place. */
const DIGESTS = ['steps', 'time_min'];

const listAt = (item: Json, name: string): readonly Json[] =>
  item[name.replace('[]', '')] as readonly Json[];

/** Each row as the items it lies in, the record first; zones stand in place of their panel. */
function rowsOf(record: Json, lists: readonly string[]): readonly (readonly Json[])[] {
  return lists.reduce<readonly (readonly Json[])[]>(
    (rows, name) =>
      rows.flatMap((row) => listAt(row.at(-1) ?? {}, name).map((item) => [...row, item])),
    [[record]],
  );
}

const inZones = (row: readonly Json[]): readonly (readonly Json[])[] => {
  const zones = (row.at(-1)?.['zones'] ?? []) as readonly Json[];
  return zones.length === 0 ? [row] : zones.map((zone) => [...row.slice(0, -1), zone]);
};

function cellAt(row: readonly Json[], lists: readonly string[], place: string): string {
  if (place === VOID) return voidAs(row);
  const steps = place.replace('panels[].zones[].zone', 'panels[].zone').split('.');
  const within = lists.findIndex((name, i) => steps[i] !== name);
  const depth = within < 0 ? lists.length : within;
  const value = steps
    .slice(depth)
    .reduce<unknown>((at, step) => inside(at, step.replace('[]', '')), row[depth]);
  return cellText(value);
}

/** Of the panel of the row alone. */
const VOID = 'trainees[].void_panels[].void_as';
const voidAs = (row: readonly Json[]): string => {
  const panel = row.at(-1)?.['panel'];
  const own = listAt(row.at(-2) ?? {}, 'void_panels[]').find((one) => one['panel'] === panel);
  return cellText(own?.['void_as']);
};

const inside = (at: unknown, key: string): unknown =>
  Array.isArray(at) ? at.map((one) => inside(one, key)) : ((at as Json | null)?.[key] ?? null);

function cellText(value: unknown): string {
  if (value === null || value === undefined) return '';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (!Array.isArray(value)) return String(value);
  const words = value.map((one) => (typeof one === 'object' ? String((one as Json)['code']) : one));
  const isProse = words.some((word) => String(word).includes(' '));
  return isProse ? words.join('; ') : [...new Set(words)].join(' ');
}

/** Readings leave a cell empty where nothing is to be said. */
const plain = (table: string, name: string, text: string): string => {
  if (table !== 'read') return text;
  return text === 'no' || (name === 'place' && text === 'face') ? '' : text;
};

test.each(tables)('%s: each cell is what the record has in its place: %s', async (...about) => {
  const [table, words, lists] = about;
  const csv = await askLeastcut([...words, '--format', 'csv']);
  const json = await askLeastcut([...words, '--format', 'json']);
  const [head = [], ...rows] = cellsOf(csv.out);
  const record = JSON.parse(json.out) as Json;
  const items = rowsOf(record, lists).flatMap(table === 'quote' ? (row) => [row] : inZones);
  // A panel without a score has a row that says so, an aim without a price as well.
  const filled = rows.filter((row) => row[head.indexOf(KEYS[table] ?? head[0] ?? '')] !== '');
  expect(filled.length).toBeGreaterThan(1);
  expect(filled).toHaveLength(items.length);
  const columns = head.filter((name) => !DIGESTS.includes(name));
  for (const [i, row] of filled.entries()) {
    const wanted = columns.map((name) =>
      plain(table, name, cellAt(items[i] ?? [], lists, tableColumns[table]?.[name] ?? '')),
    );
    expect(columns.map((name) => row[head.indexOf(name)])).toEqual(wanted);
  }
});

const KEYS: Readonly<Record<string, string>> = {
  read: 'reading_um',
  survey: 'panel',
  plan: 'panel',
  compare: 'panel',
  quote: 'line_kind',
  grade: 'z',
  gauge: 'shim_um',
};

/** Rows of RFC 4180, quotes undone. */
const cellsOf = (text: string): readonly (readonly string[])[] =>
  text
    .trimEnd()
    .split('\n')
    .map((line) =>
      [...`${line},`.matchAll(/(?:"((?:[^"]|"")*)"|([^,]*)),/g)].map(([, quoted, bare]) =>
        quoted === undefined ? (bare ?? '') : quoted.replaceAll('""', '"'),
      ),
    );
