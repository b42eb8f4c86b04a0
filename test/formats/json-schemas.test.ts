import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { csvTables } from '../../src/formats/csv-columns.ts';
import { fileKinds } from '../../src/formats/file-kinds.ts';
import { jsonSchemaOf, listSchemas } from '../../src/formats/json-schemas.ts';
import { machineRecords } from '../../src/formats/records/machine-records.ts';
import { program } from '../cli/run-leastcut.ts';
import { schemaFaults } from './json-schema-faults.ts';

const schemas = listSchemas();

test('there is a schema for each kind of file and each record', () => {
  const wanted = [...fileKinds.map(({ kind }) => kind), ...Object.keys(machineRecords)];
  expect(schemas.map(({ kind }) => kind).sort()).toEqual([...new Set(wanted)].sort());
});

describe('each schema', () => {
  test.each(schemas)('of $kind says its draft, its name and what it is for', ({ kind, schema }) => {
    expect(schema).toMatchObject({
      $schema: 'https://json-schema.org/draft/2020-12/schema',
      $id: `leastcut/${kind}/1`,
      title: expect.stringContaining('leastcut'),
    });
  });

  test.each(schemas)('of $kind gives every key its meaning', ({ schema }) => {
    const mute = propertiesOf(schema).filter(
      ({ key, value }) => !('description' in value) && key !== 'properties',
    );
    expect(mute.map(({ key }) => key)).toEqual([]);
  });

  test.each(schemas)('of $kind is made of words that are judged', ({ schema }) => {
    expect(schemaFaults(schema, {}).length).toBeGreaterThan(0);
    for (const { value } of propertiesOf(schema)) schemaFaults(value, undefined);
  });

  test('of a file takes no key that means nothing; that of a record does', () => {
    const job = { schema: 'leastcut/job/1' };
    expect(schemaFaults(jsonSchemaOf('job'), job)).toEqual([]);
    expect(schemaFaults(jsonSchemaOf('job'), { ...job, odd: 1 })).toEqual([': odd means nothing']);
    expect(JSON.stringify(jsonSchemaOf('survey'))).not.toContain('additionalProperties');
  });
});

type Properties = readonly {
  readonly key: string;
  readonly value: Readonly<Record<string, unknown>>;
}[];

function propertiesOf(part: unknown): Properties {
  if (typeof part !== 'object' || part === null) return [];
  return Object.entries(part).flatMap(([word, inner]): Properties => {
    if (word !== 'properties') return propertiesOf(inner);
    const entries = Object.entries(
      inner as Readonly<Record<string, Readonly<Record<string, unknown>>>>,
    );
    return entries.flatMap(([key, value]) => [{ key, value }, ...propertiesOf(value)]);
  });
}

describe('the build', () => {
  const folder = join(program(), '../../dist/schemas');

  test('publishes what the code makes, and nothing else, in the folder that is shipped', () => {
    const written = Object.fromEntries(
      readdirSync(folder).map((name) => [
        name,
        JSON.parse(readFileSync(join(folder, name), 'utf8')) as unknown,
      ]),
    );
    expect(written).toEqual(
      JSON.parse(
        JSON.stringify({
          ...Object.fromEntries(schemas.map(({ kind, schema }) => [`${kind}.schema.json`, schema])),
          ...Object.fromEntries(csvTables.map((table) => [`${table.kind}.columns.json`, table])),
        }),
      ),
    );
  });
});
