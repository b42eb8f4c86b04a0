/**
 * The decisions file, `leastcut/decisions/1`: how the exports of a gauge are read, settled once.
 * What it leaves out is decided from each export. `columns` says by what name an export calls each
 * column that it has; `panel_names` says which panel is meant by a word of the export.
 */
import * as z from 'zod';
import { readingColumns } from './csv-columns.ts';
import { advised } from './json/advised.ts';
import { given } from './json/given.ts';
import { identifier, note, text } from './json/setting-values.ts';
import { settingsReader } from './json/settings-reader.ts';

/** A sign that was written as its name. */
const byName =
  (names: Readonly<Record<string, string>>) =>
  (value: unknown): string | undefined => {
    const sign = typeof value === 'string' ? names[value.trim().toLowerCase()] : undefined;
    return sign === undefined ? undefined : `write ${JSON.stringify(sign)}`;
  };

const delimiter = advised(
  z.enum([',', ';', '\t', '|']),
  byName({ comma: ',', semicolon: ';', tab: '\t', tabulator: '\t', bar: '|', pipe: '|' }),
);
const decimal = advised(
  z.enum(['.', ',']),
  byName({ point: '.', dot: '.', period: '.', comma: ',' }),
);
const unit = advised(
  z.enum(['um', 'mil', 'mm', 'inch', 'cm', 'nm']),
  byName({ µm: 'um', μm: 'um', micron: 'um', microns: 'um', mils: 'mil', thou: 'mil' }),
);

/** What an export may say of a row besides the columns of our own tables. */
const marks = ['deleted', 'valid', 'status'] as const;
const roles = [...readingColumns.map(({ role }) => role), ...marks];

const names = z.union([text, z.array(text).min(1)]).describe('a name, or a list of names');
const listOf = (value: string | readonly string[] | undefined): readonly string[] =>
  value === undefined ? [] : typeof value === 'string' ? [value] : value;

/** A column has one meaning; several columns may have the same, as date and time have. */
const columns = z
  .strictObject(Object.fromEntries(roles.map((role) => [role, names.optional()] as const)))
  .superRefine((all, context) => {
    const entries = Object.entries(all).flatMap(([role, value]) =>
      listOf(value).map((name) => ({ role, name })),
    );
    for (const [i, { role, name }] of entries.entries()) {
      const first = entries.findIndex((other) => other.name === name);
      if (first === i) continue;
      const message = `is ${JSON.stringify(name)}, which is the column of "${entries[first]?.role}" too`;
      const params = { hint: 'a column means one thing: keep one of the two' };
      context.addIssue({ code: 'custom', path: [role], message, params });
    }
  });

export const decisionsSchema = z.strictObject({
  $schema: z.string().optional(),
  schema: z.literal('leastcut/decisions/1'),
  encoding: text.optional(),
  delimiter: delimiter.optional(),
  decimal: decimal.optional(),
  layout: z.enum(['long', 'wide', 'repeats', 'blocks', 'list']).optional(),
  unit: unit.optional(),
  header_line: z.int().min(1).max(100_000).optional(),
  columns: columns.optional(),
  panel_names: z.record(z.string(), identifier).optional(),
  note: note.optional(),
});

export type ReadingDecisions = {
  readonly encoding?: string;
  readonly delimiter?: ',' | ';' | '\t' | '|';
  readonly decimal?: '.' | ',';
  readonly layout?: 'long' | 'wide' | 'repeats' | 'blocks' | 'list';
  readonly unit?: 'um' | 'mil' | 'mm' | 'inch' | 'cm' | 'nm';
  readonly headerLine?: number;
  /** Names of the columns in the export, by role. */
  readonly columns: ReadonlyMap<string, readonly string[]>;
  /** Panel by the word of the export; a map, since that may be any word. */
  readonly panelNames: ReadonlyMap<string, string>;
};

export const readDecisions = settingsReader(
  decisionsSchema,
  ({ columns: named = {}, panel_names = {}, header_line, ...typed }): ReadingDecisions => ({
    ...given({
      encoding: typed.encoding,
      delimiter: typed.delimiter,
      decimal: typed.decimal,
      layout: typed.layout,
      unit: typed.unit,
      headerLine: header_line,
    }),
    columns: new Map(
      Object.entries(named).flatMap(([role, name]) =>
        name === undefined ? [] : [[role, listOf(name)]],
      ),
    ),
    panelNames: new Map(Object.entries(panel_names)),
  }),
);
