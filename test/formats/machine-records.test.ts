import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { jsonSchemaOf, listSchemas } from '../../src/formats/json-schemas.ts';
import { machineRecords, type RecordName } from '../../src/formats/records/machine-records.ts';
import { schemaFaults } from './json-schema-faults.ts';
import { outputsWithRecords, recordedOutputs } from './recorded-files.ts';

const records = recordedOutputs().map(({ name, text }) => {
  const record = JSON.parse(text) as { readonly schema: `leastcut/${RecordName}/1` };
  return { name, record, command: record.schema.slice(9, -2) as RecordName };
});

describe('records that the program was recorded to write', () => {
  test.each(records)(
    '$name keeps to the schema, with no key more or less',
    ({ record, command }) => {
      expect(machineRecords[command].safeParse(record).error?.issues ?? []).toEqual([]);
    },
  );

  test.each(records)('$name keeps to the published schema', ({ record, command }) => {
    expect(schemaFaults(jsonSchemaOf(command), record)).toEqual([]);
  });

  test.each(records)('$name says the name that its schema is published under', ({ record }) => {
    const published = listSchemas().map(({ schema }) => schema['$id']);
    expect(published).toContain(record.schema);
    expect(jsonSchemaOf(record.schema.slice(9, -2) as RecordName)['$id']).toBe(record.schema);
  });

  test('are of every command that can be recorded', () => {
    // What doctor says is of the machine it runs on: its own test asks for it.
    const commands = new Set<string>(['doctor', ...records.map(({ command }) => command)]);
    expect([...commands].sort()).toEqual(Object.keys(machineRecords).sort());
  });

  test('are looked at wherever a case prints one', () => {
    const looked = new Set(records.map(({ name }) => name));
    expect(outputsWithRecords().filter(({ name }) => !looked.has(name))).toEqual([]);
  });

  test('are failures too', () => {
    const empty = records.filter(({ record }) => Object.keys(record).length === 7);
    expect(empty.length).toBeGreaterThan(0);
  });
});

describe('unknown is null and never absent', () => {
  test('in every object of one kind that was recorded: all have the same keys', () => {
    const kinds = new Map<string, Map<string, string>>();
    for (const { name, record, command } of records) {
      for (const { kind, keys } of objectsIn(record, command)) {
        const forms = kinds.get(kind) ?? new Map<string, string>();
        kinds.set(kind, forms.set(keys, name));
      }
    }
    expect(kinds.size).toBeGreaterThan(150);
    const uneven = [...kinds].filter(([, forms]) => forms.size > 1);
    expect(uneven.map(([kind, forms]) => `${kind}: ${[...forms].join(' | ')}`)).toEqual([]);
  });

  test('in every schema: only the figure of a remark may be left out', () => {
    const optional = Object.entries(machineRecords).flatMap(([command, schema]) =>
      optionalKeys(schema, command),
    );
    const others = optional.filter(({ key, beside }) => !(key === 'value' && isRemark(beside)));
    expect(others.map(({ at, key }) => `${at}.${key}`)).toEqual([]);
    expect(optional.length).toBeGreaterThan(5);
  });
});

type Found = { readonly kind: string; readonly keys: string };
type Plain = Readonly<Record<string, unknown>>;

const isRemark = (keys: readonly string[]): boolean =>
  keys.includes('code') && keys.includes('text');

/** What a file calls its columns is the file's own. */
const OPEN = 'columns';

/** Each object below a record with the place it stands in, a zone as a panel, a result as a record of its own. */
function objectsIn(value: unknown, kind: string): readonly Found[] {
  if (Array.isArray(value)) return value.flatMap((one) => objectsIn(one, kind));
  if (typeof value !== 'object' || value === null) return [];
  const inner = Object.entries(value as Plain).flatMap(([key, one]) =>
    key === 'result'
      ? objectsIn(one, String((one as Plain | null)?.['command']))
      : objectsIn(one, `${kind}.${key}`),
  );
  const keys = Object.keys(value).filter((key) => key !== 'value' || !isRemark(Object.keys(value)));
  // A record itself may be one of several forms, which its schema tells apart.
  const isForm = !kind.includes('.') || kind.endsWith(`.${OPEN}`);
  return isForm ? inner : [{ kind, keys: keys.sort().join(' ') }, ...inner];
}

type Optional = { readonly at: string; readonly key: string; readonly beside: readonly string[] };

function optionalKeys(schema: unknown, at: string): readonly Optional[] {
  if (schema instanceof z.ZodNullable || schema instanceof z.ZodOptional) {
    return optionalKeys(schema.unwrap(), at);
  }
  if (schema instanceof z.ZodArray) return optionalKeys(schema.element, at);
  if (schema instanceof z.ZodUnion) return schema.options.flatMap((one) => optionalKeys(one, at));
  if (!(schema instanceof z.ZodObject)) return [];
  const beside = Object.keys(schema.shape);
  return Object.entries(schema.shape).flatMap(([key, inner]) => [
    ...(inner instanceof z.ZodOptional ? [{ at, key, beside }] : []),
    ...optionalKeys(inner, `${at}.${key}`),
  ]);
}

describe('a record that drifts is caught', () => {
  const survey = records.find(({ command }) => command === 'survey')?.record ?? {};
  const faults = (record: object): number =>
    machineRecords.survey.safeParse(record).error?.issues.length ?? 0;

  test('with a key that is new', () => {
    expect(faults(survey)).toBe(0);
    expect(faults({ ...survey, odd: 1 })).toBeGreaterThan(0);
  });

  test('with a key that is missing, or another kind of value', () => {
    const { baseline_um: _, ...rest } = survey as { readonly baseline_um?: number };
    expect(faults(rest)).toBeGreaterThan(0);
    expect(faults({ ...survey, baseline_um: '118' })).toBeGreaterThan(0);
  });

  test('with a result beside an error that says there is none', () => {
    const failure = records.find(
      ({ record, command }) => command === 'survey' && Object.keys(record).length === 7,
    )?.record;
    expect(failure).toBeDefined();
    expect(faults(failure ?? {})).toBe(0);
    expect(faults({ ...failure, notes: [] })).toBeGreaterThan(0);
    expect(faults({ ...failure, diagnostics: [] })).toBeGreaterThan(0);
  });
});
