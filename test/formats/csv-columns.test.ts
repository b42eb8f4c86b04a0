import { expect, test } from 'vitest';
import { csvTables } from '../../src/formats/csv-columns.ts';
import { flagNames, placeNames } from '../../src/intake/cells/words.ts';
import { gaugeVocabulary } from '../../src/intake/header/gauge-vocabulary.ts';
import { defectVocabulary, headerReader } from '../../src/intake/header/header.ts';

const columnsOf = (kind: string) => csvTables.find((table) => table.kind === kind)?.columns ?? [];
const roles = (kind: string) => columnsOf(kind).map(({ role }) => role);

test('the columns of readings and of defects are those that the program reads', () => {
  // Marks that exports carry and that people who fill in a table need not.
  const exportsOnly = ['deleted', 'valid', 'status'];
  expect([...roles('readings'), ...exportsOnly].sort()).toEqual(
    Object.keys(gaugeVocabulary).sort(),
  );
  expect(roles('defects').sort()).toEqual(Object.keys(defectVocabulary).sort());
});

test('each canonical name of a column is understood as that column, in its unit', () => {
  for (const [kind, read] of [
    ['readings', headerReader(gaugeVocabulary)],
    ['defects', headerReader(defectVocabulary)],
  ] as const) {
    for (const { name, role, unit } of columnsOf(kind)) {
      expect(read(name)).toMatchObject({ role, ...(unit === 'µm' ? { unit: 'um' } : {}) });
    }
  }
});

test('words that a column takes are those that the program takes', () => {
  const words = (name: string) => columnsOf('readings').find((one) => one.name === name)?.words;
  expect(words('place')).toEqual(placeNames);
  expect(words('marked')).toEqual(flagNames);
});

test('each table names a column once, needs at least one, and gives a unit to what ends in one', () => {
  for (const { kind, columns } of csvTables) {
    const names = columns.map(({ name }) => name);
    expect(names, kind).toEqual([...new Set(names)]);
    expect(
      columns.some(({ required }) => required),
      kind,
    ).toBe(true);
    for (const { name, unit, meaning } of columns) {
      expect(unit === null, name).toBe(!/_(um|pct|c|gu|deg|min)$/.test(name));
      expect(meaning).toMatch(/^[A-Z].*[.…]$/);
    }
  }
});
