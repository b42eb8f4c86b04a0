/**
 * The published JSON Schemas (draft 2020-12), made from the very schemas that check a file or that the
 * tests hold a record to. Each key carries its meaning. A file is strict, so that an editor marks what
 * means nothing. A record is open in its published form: later versions may add keys to it.
 *
 * The records of `template` and `gauge` are published as `template-record` and `gauge-record`: the names
 * themselves are those of the files.
 * The record of `plan` is the plan file, so there is one schema for both.
 */
import * as z from 'zod';
import { readingColumns } from './csv-columns.ts';
import { listAllDefaults } from './data/all-defaults.ts';
import { keyMeanings } from './data/key-meanings.ts';
import { recordKeyMeanings } from './data/record-key-meanings.ts';
import { type FileKindName, fileKinds } from './file-kinds.ts';
import { machineRecords, type RecordName } from './records/machine-records.ts';

export type SchemaKind =
  | FileKindName
  | Exclude<RecordName, 'template' | 'gauge'>
  | 'template-record'
  | 'gauge-record';

export type JsonSchema = { readonly [key: string]: unknown };

/** The keys around a key, outermost first. */
type Path = readonly string[];

type Published = {
  readonly kind: SchemaKind;
  readonly title: string;
  readonly schema: z.ZodType;
  readonly open: boolean;
  readonly meaningOf: (key: string, path: Path) => string | undefined;
};

const numbers = new Map(listAllDefaults().map(({ id, meaning, unit }) => [id, { meaning, unit }]));
const keysOfFiles = new Map(keyMeanings.map(({ key, meaning }) => [key, meaning]));

/** The keys of `columns` are the roles of an export's columns. */
function meaningInFile(key: string, path: Path): string | undefined {
  const column = path.includes('columns') ? readingColumns.find(({ role }) => role === key) : null;
  if (column) return column.meaning;
  const number = numbers.get(key);
  if (number === undefined) return keysOfFiles.get(key);
  return number.unit === '1' ? number.meaning : `${number.meaning} (${number.unit})`;
}

const meaningInRecord = (key: string): string | undefined =>
  Object.hasOwn(recordKeyMeanings, key) ? recordKeyMeanings[key] : keysOfFiles.get(key);

const files: readonly Published[] = fileKinds
  .filter(({ kind }) => kind !== 'plan')
  .map(({ kind, purpose, schema }) => ({
    kind,
    title: `leastcut ${kind} file: ${purpose}`,
    schema,
    open: false,
    meaningOf: meaningInFile,
  }));

const records: readonly Published[] = (Object.keys(machineRecords) as RecordName[]).map(
  (command) => ({
    kind: command === 'template' || command === 'gauge' ? `${command}-record` : command,
    title: `leastcut ${command}: the record that --format json writes`,
    schema: machineRecords[command],
    open: true,
    meaningOf: meaningInRecord,
  }),
);

const published = [...files, ...records];

export function jsonSchemaOf(kind: SchemaKind): JsonSchema {
  const one = published.find((each) => each.kind === kind);
  if (one === undefined) throw new Error(`no schema is published for ${kind}`);
  return jsonSchema(one);
}

export const listSchemas = (): readonly {
  readonly kind: SchemaKind;
  readonly schema: JsonSchema;
}[] => published.map((one) => ({ kind: one.kind, schema: jsonSchema(one) }));

function jsonSchema({ kind, title, schema, open, meaningOf }: Published): JsonSchema {
  const made = z.toJSONSchema(schema, { io: 'input', unrepresentable: 'any' });
  const { $schema, ...rest } = made;
  return { $schema, $id: `leastcut/${kind}/1`, title, ...(described(rest, []) as JsonSchema) };

  /** A copy in which each key has its meaning: parts that stand in two places are told apart. */
  function described(part: unknown, path: Path): unknown {
    if (Array.isArray(part)) return part.map((one) => described(one, path));
    if (typeof part !== 'object' || part === null) return part;
    const entries = Object.entries(part).filter(
      ([word]) => !open || word !== 'additionalProperties',
    );
    return Object.fromEntries(
      entries.map(([word, inner]) => [
        word,
        word === 'properties' ? properties(inner as JsonSchema, path) : described(inner, path),
      ]),
    );
  }

  function properties(keys: JsonSchema, path: Path): JsonSchema {
    const entries = Object.entries(keys).map(([key, value]) => {
      const meaning = meaningOf(key, path);
      const inner = described(value, [...path, key]) as JsonSchema;
      return [key, meaning === undefined ? inner : { ...inner, description: meaning }];
    });
    return Object.fromEntries(entries) as JsonSchema;
  }
}
