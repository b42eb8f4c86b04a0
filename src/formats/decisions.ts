/**
 * The decisions file, `leastcut/decisions/1`: how the exports of a gauge are read, settled once.
 * What it leaves out is decided from each export. `columns` says by what name an export calls each
 * column that it has; `panel_names` says which panel is meant by a word of the export.
 */
import * as z from 'zod';
import { advised } from './advised.ts';
import { readingColumns } from './csv-columns.ts';
import { given, identifier, note, text } from './setting-values.ts';
import { settingsReader } from './settings-reader.ts';

/** A sign that was written as its name. */
const byName =
  (names: Readonly<Record<string, string>>) =>
  (value: unknown): string | undefined => {
    const sign = typeof value === 'string' ? names[value.trim().toLowerCase()] : undefined;
    return sign === undefined ? undefined : `write ${JSON.stringify(sign)}`;
  };

const delimiter = advised(
  z.enum([',', ';', '\t']),
  byName({ comma: ',', semicolon: ';', tab: '\t', tabulator: '\t' }),
);
const decimal = advised(
  z.enum(['.', ',']),
  byName({ point: '.', dot: '.', period: '.', comma: ',' }),
);
const unit = advised(
  z.enum(['um', 'mil']),
  byName({ µm: 'um', μm: 'um', micron: 'um', microns: 'um', mils: 'mil', thou: 'mil' }),
);

/** A column has one meaning. */
const columns = z
  .strictObject(
    Object.fromEntries(readingColumns.map(({ role }) => [role, text.optional()] as const)),
  )
  .superRefine((names, context) => {
    const entries = Object.entries(names);
    for (const [i, [role, name]] of entries.entries()) {
      const first = entries.findIndex(([, other]) => other === name);
      if (first === i || name === undefined) continue;
      const message = `is ${JSON.stringify(name)}, which is the column of "${entries[first]?.[0]}" too`;
      const params = { hint: 'a column means one thing: keep one of the two' };
      context.addIssue({ code: 'custom', path: [role], message, params });
    }
  });

export const decisionsSchema = z.strictObject({
  $schema: z.string().optional(),
  schema: z.literal('leastcut/decisions/1'),
  encoding: z.enum(['utf-8', 'utf-8-bom', 'utf-16le', 'utf-16be']).optional(),
  delimiter: delimiter.optional(),
  decimal: decimal.optional(),
  layout: z.enum(['long', 'wide']).optional(),
  unit: unit.optional(),
  header_line: z.int().min(1).max(1000).optional(),
  columns: columns.optional(),
  panel_names: z.record(text, identifier).optional(),
  note: note.optional(),
});

export type ReadingDecisions = {
  readonly encoding?: string;
  readonly delimiter?: ',' | ';' | '\t';
  readonly decimal?: '.' | ',';
  readonly layout?: 'long' | 'wide';
  readonly unit?: 'um' | 'mil';
  readonly headerLine?: number;
  /** Name of the column in the export, by role. */
  readonly columns: ReadonlyMap<string, string>;
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
      Object.entries(named).flatMap(([role, name]) => (name === undefined ? [] : [[role, name]])),
    ),
    panelNames: new Map(Object.entries(panel_names)),
  }),
);
