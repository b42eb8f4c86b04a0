/**
 * The published JSON Schemas (draft 2020-12), made from the very schemas that check a file or that the
 * tests hold a record to. Each key carries its meaning. A file is strict, so that an editor marks what
 * means nothing. A record is open in its published form: later versions may add keys to it.
 *
 * What says `"schema": "leastcut/<kind>/1"` is published under that very `$id`. A gauge and a template
 * are files and records: their schema takes what has a `command` for a record, and all else for a file.
 * The record of `plan` is the plan file, so there is one schema for both: it asks for no key that plans
 * of earlier versions have not.
 */
import * as z from 'zod';
import { readingColumns } from './csv-columns.ts';
import { listAllDefaults } from './data/all-defaults.ts';
import { keyMeanings } from './data/key-meanings.ts';
import { recordMeaning } from './data/record-meanings.ts';
import { type FileKindName, fileKinds } from './file-kinds.ts';
import { machineRecords, type RecordName } from './records/machine-records.ts';
import { keptPlanSchema } from './records/plan-record.ts';

export type SchemaKind = FileKindName | RecordName;

export type JsonSchema = { readonly [key: string]: unknown };

/** The keys around a key, outermost first. */
type Path = readonly string[];

type Form = {
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

const meaningInRecord =
  (record: RecordName) =>
  (key: string, path: Path): string | undefined =>
    recordMeaning(record, [...path, key])?.meaning;

const files: readonly Form[] = fileKinds
  .filter(({ kind }) => kind !== 'plan')
  .map(({ kind, purpose, schema }) => ({
    kind,
    title: `leastcut ${kind} file: ${purpose}`,
    schema,
    open: false,
    meaningOf: meaningInFile,
  }));

const records: readonly Form[] = (Object.keys(machineRecords) as RecordName[]).map((command) => ({
  kind: command,
  title: `leastcut ${command}: the record that --format json writes`,
  schema: command === 'plan' ? keptPlanSchema : machineRecords[command],
  open: true,
  meaningOf: meaningInRecord(command),
}));

const kinds = [...new Set([...files, ...records].map(({ kind }) => kind))];

export const listSchemas = (): readonly {
  readonly kind: SchemaKind;
  readonly schema: JsonSchema;
}[] => kinds.map((kind) => ({ kind, schema: jsonSchemaOf(kind) }));

export function jsonSchemaOf(kind: SchemaKind): JsonSchema {
  const file = files.find((one) => one.kind === kind);
  const record = records.find((one) => one.kind === kind);
  const form = record ?? file;
  if (form === undefined) throw new Error(`no schema is published for ${kind}`);
  const $schema = 'https://json-schema.org/draft/2020-12/schema';
  const about = { $schema, $id: `leastcut/${kind}/1` };
  if (file === undefined || record === undefined) {
    return { ...about, title: form.title, ...formSchema(form) };
  }
  return {
    ...about,
    title: `${file.title}; or ${record.title}`,
    if: { required: ['command'] },
    // biome-ignore lint/suspicious/noThenProperty: it is a word of JSON Schema
    then: formSchema(record),
    else: formSchema(file),
  };
}

function formSchema({ schema, open, meaningOf }: Form): JsonSchema {
  const made = z.toJSONSchema(schema, { io: 'input', unrepresentable: 'any' });
  const { $schema: _, ...rest } = made;
  return described(rest, []) as JsonSchema;

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
