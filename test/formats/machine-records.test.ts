import { describe, expect, test } from 'vitest';
import { jsonSchemaOf } from '../../src/formats/json-schemas.ts';
import { machineRecords, type RecordName } from '../../src/formats/records/machine-records.ts';
import { schemaFaults } from './json-schema-faults.ts';
import { outputsWithRecords, recordedOutputs } from './recorded-files.ts';

const records = recordedOutputs().map(({ name, text }) => {
  const record = JSON.parse(text) as { readonly schema: `leastcut/${RecordName}/1` };
  return { name, record, command: record.schema.slice(9, -2) as RecordName };
});

const publishedAs = (command: RecordName) =>
  command === 'template' || command === 'gauge' ? (`${command}-record` as const) : command;

describe('records that the program was recorded to write', () => {
  test.each(records)(
    '$name keeps to the schema, with no key more or less',
    ({ record, command }) => {
      expect(machineRecords[command].safeParse(record).error?.issues ?? []).toEqual([]);
    },
  );

  test.each(records)('$name keeps to the published schema', ({ record, command }) => {
    expect(schemaFaults(jsonSchemaOf(publishedAs(command)), record)).toEqual([]);
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
