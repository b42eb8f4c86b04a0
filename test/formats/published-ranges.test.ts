import { describe, expect, test } from 'vitest';
import { hasErrors, type Outcome } from '../../src/base/diagnostics.ts';
import { micrometres } from '../../src/base/units.ts';
import { type CsvColumn, type CsvKind, csvTables } from '../../src/formats/csv-columns.ts';
import { filmDefaults } from '../../src/formats/data/film-defaults.ts';
import { readDefectsFile } from '../../src/intake/read-defects-file.ts';
import { readGaugeChecks } from '../../src/intake/read-gauge-checks.ts';
import { readGlossFile } from '../../src/intake/read-gloss-file.ts';
import { readHistoryFile } from '../../src/intake/read-history-file.ts';
import { readSpotsFile } from '../../src/intake/read-spots-file.ts';
import { readWorkedFile } from '../../src/intake/read-worked-file.ts';

type File = { readonly name: string; readonly bytes: Uint8Array };

const largest = micrometres(filmDefaults.measurement.largestReading.value);

/** A table of each kind that people fill in: a row that is read, and what reads it. */
const tables: Partial<
  Record<CsvKind, { row: Record<string, string>; read: (file: File) => Outcome<unknown> }>
> = {
  defects: {
    row: { panel: 'bonnet', defect: 'swirl-marks' },
    read: (file) => readDefectsFile(file, largest),
  },
  'test-spots': {
    row: {
      ...{ spot: 'A', panel: 'bonnet', machine: 'da', pad: 'foam-soft', product: 'fine' },
      sets: '1',
      ...{ mark: '1', before_um: '110', after_um: '109' },
    },
    read: (file) => readSpotsFile(file, largest),
  },
  'gauge-checks': {
    row: { shim_um: '100', shim_uncertainty_um: '1', reading_um: '100' },
    read: (file) => readGaugeChecks(file, {}),
  },
  gloss: {
    row: {
      ...{ panel: 'bonnet', angle_deg: '60', before_gu: '80', after_gu: '90' },
      ...{ before_haze: '20', after_haze: '10' },
    },
    read: readGlossFile,
  },
  worked: { row: { panel: 'bonnet', step: '1', sets: '2' }, read: readWorkedFile },
  history: {
    row: { job: 'a', estimated_min: '100', actual_min: '100' },
    read: (file) => readHistoryFile(file, []),
  },
};

const isRead = (kind: CsvKind, more: Record<string, string>): boolean =>
  isRowRead(kind, { ...tables[kind]?.row, ...more });

const isRowRead = (kind: CsvKind, cells: Record<string, string>): boolean => {
  const text = `${Object.keys(cells).join(',')}\n${Object.values(cells).join(',')}\n`;
  const outcome = tables[kind]?.read({ name: 'table.csv', bytes: new TextEncoder().encode(text) });
  return outcome?.value !== undefined && !hasErrors(outcome.diagnostics);
};

const bounded = csvTables.flatMap(({ kind, columns }) =>
  tables[kind] === undefined
    ? []
    : columns.flatMap(({ name, range, meaning }: CsvColumn) =>
        // A repeat only tells rows apart.
        range === null || name === 'repeat' ? [] : [{ kind, name, range, meaning }],
      ),
);

describe('what is published of a column', () => {
  test.each(bounded)('$name of $kind is read at its ends and refused beyond them', (column) => {
    const { kind, name, range, meaning } = column;
    const [least, most] = range;
    expect(isRead(kind, { [name]: `${least}` })).toBe(!meaning.includes('more than 0'));
    expect(isRead(kind, { [name]: `${most}` })).toBe(true);
    expect(isRead(kind, { [name]: `${most + 1}` })).toBe(false);
    expect(isRead(kind, { [name]: `${least - 1}` })).toBe(false);
  });

  test('of test spots is needed where that says so: a table without it is refused, and read without all others', () => {
    const row = tables['test-spots']?.row ?? {};
    const columns = csvTables.find(({ kind }) => kind === 'test-spots')?.columns ?? [];
    const needed = columns.flatMap(({ name, required }) => (required ? [name] : []));
    const isReadWith = (names: readonly string[]): boolean =>
      isRowRead('test-spots', Object.fromEntries(names.map((name) => [name, row[name] ?? ''])));
    expect(needed).toContain('sets');
    expect(isReadWith(needed)).toBe(true);
    for (const left of needed)
      expect(isReadWith(needed.filter((name) => name !== left)), left).toBe(false);
  });
});
