import { describe, expect, test } from 'vitest';
import { checkSettingsFile } from '../../src/formats/check-file.ts';
import { fileKinds } from '../../src/formats/file-kinds.ts';
import { jsonSchemaOf } from '../../src/formats/json-schemas.ts';
import { startFiles } from '../../src/tasks/start/start-files.ts';
import { schemaFaults } from './json-schema-faults.ts';
import { recordedOutputs, soundFiles } from './recorded-files.ts';
import { told } from './told.ts';

const kindOf = (text: string) =>
  fileKinds.find(
    ({ schemaName }) => schemaName === (JSON.parse(text) as { schema: string }).schema,
  );

/** A small file of each kind that no sample shows. */
const small = {
  gauge: { permitted_error: { fixed_um: 1, proportional_pct: 2 }, verdict: null },
  rates: {
    observations: [{ date: '2026-03-31', combination: 'da/a/b', sets: 2, cleared_pct: 70 }],
  },
  rubric: { pass_mark_pct: 70, weights: { accuracy: 1 } },
  decisions: { delimiter: ';', columns: { panel: 'Bauteil' } },
};

const plans = recordedOutputs()
  .filter(
    ({ text }) => /^\s*\{\s*"schema": ?"leastcut\/plan\/1"/.test(text) && text.includes('"car"'),
  )
  .map(({ name, text }) => ({ name, text }));

const files = [
  ...soundFiles(),
  ...startFiles().filter(({ name }) => !name.startsWith('schemas/')),
  ...Object.entries(small).map(([kind, content]) => ({
    name: `a small ${kind} file`,
    text: JSON.stringify({ schema: `leastcut/${kind}/1`, ...content }),
  })),
  ...plans,
];

describe('settings files that stand in the project', () => {
  test('are of every kind', () => {
    const kinds = new Set(files.map(({ text }) => kindOf(text)?.kind));
    expect([...kinds].sort()).toEqual(fileKinds.map(({ kind }) => kind).sort());
  });

  test.each(files)('$name is sound, and of the kind it says', ({ name, text }) => {
    const { value, diagnostics } = checkSettingsFile(name, text);
    expect(diagnostics).toEqual([]);
    expect(value).toBe(kindOf(text)?.kind);
  });

  test.each(files)('$name keeps to the published schema', ({ text }) => {
    const kind = kindOf(text)?.kind;
    expect(kind).toBeDefined();
    if (kind !== undefined) expect(schemaFaults(jsonSchemaOf(kind), JSON.parse(text))).toEqual([]);
  });
});

describe('a file of a kind that there is not', () => {
  const kinds = fileKinds.map(({ kind }) => kind).join(', ');

  test('and one that does not say its kind, are told which there are', () => {
    const hint = `"schema": "leastcut/shop/1", or in place of shop another kind: ${kinds}`;
    expect(told(checkSettingsFile, '{ "note": "" }')).toEqual([
      `1:1 the file does not say what kind it is | ${hint}`,
    ]);
    expect(told(checkSettingsFile, '[1]')).toEqual([
      `1:1 the file does not say what kind it is | ${hint}`,
    ]);
    expect(told(checkSettingsFile, '{ "schema": "leastcut/survey/1" }')).toEqual([
      `1:13 "schema" is "leastcut/survey/1", which is no kind of settings file | ${hint}`,
    ]);
  });

  test('whose keys one kind alone knows is told which it seems to be', () => {
    expect(told(checkSettingsFile, '{ "note": "", "machines": [] }')).toEqual([
      '1:1 the file does not say what kind it is | by its keys it is a shop file: add "schema": "leastcut/shop/1"',
    ]);
  });

  test('that is nearly one is told which is meant', () => {
    expect(told(checkSettingsFile, '{ "schema": "leastcut/shops/1" }')).toEqual([
      '1:13 "schema" is "leastcut/shops/1", which is no kind of settings file | did you mean "leastcut/shop/1"?',
    ]);
  });

  test('is told of what is no JSON first', () => {
    expect(told(checkSettingsFile, '{ "schema": "leastcut/shop/1", }')).toEqual([
      expect.stringContaining('nothing follows this comma'),
    ]);
  });
});

test('a plan that came to nothing is no plan to go by', () => {
  const [plan] = plans;
  const { car: _, ...rest } = JSON.parse(plan?.text ?? '{}') as { readonly car?: object };
  expect(told(checkSettingsFile, JSON.stringify(rest)).join()).toContain('"car" is missing');
});

test('a plan is told what is wrong in it where it stands', () => {
  const text = plans[0]?.text.replace('"verdict": "polish"', '"verdict": "polsh"') ?? '';
  expect(told(checkSettingsFile, text)).toEqual([
    expect.stringMatching(
      /"panels\[\d+\]\.verdict" is "polsh"; it takes "polish", .*did you mean "polish"\?/,
    ),
  ]);
});
