import { describe, expect, test } from 'vitest';
import { readWorkedFile } from '../../src/intake/read-worked-file.ts';

const read = (text: string) => readWorkedFile({ name: 'worked.csv', bytes: Buffer.from(text) });
const told = (text: string): readonly string[] =>
  read(text).diagnostics.map(({ code, message, at }) => `${at?.line} ${code}: ${message}`);

const HEADER = 'panel,zone,step,sets';

describe('a file of worked sets', () => {
  test('is read a row a step, by its number or its combination', () => {
    const { value, diagnostics } = read(
      `${HEADER},note\nroof,,1,2,\nroof,,da/foam-soft/fine,0,no time left\nboot,thinner,1,3,\n`,
    );
    expect(diagnostics).toEqual([]);
    expect(value?.map(({ at: _, ...row }) => row)).toEqual([
      { panel: 'roof', zone: null, step: '1', sets: 2 },
      { panel: 'roof', zone: null, step: 'da/foam-soft/fine', sets: 0 },
      { panel: 'boot', zone: 'thinner', step: '1', sets: 3 },
    ]);
    expect(value?.[1]?.at).toMatchObject({ file: 'worked.csv', line: 3, column: 1 });
  });

  test('says of a whole panel that nothing was worked, with or without a column of steps', () => {
    expect(read('panel,sets\nroof,0\n').value?.map(({ step, sets }) => [step, sets])).toEqual([
      [null, 0],
    ]);
    expect(read('Panel;Step;Sets done\nRoof;;0\n').value).toHaveLength(1);
  });

  test('never takes a count for all steps of a panel together', () => {
    expect(told('panel,sets\nroof,2\n')).toEqual(['2 cell-invalid: the row names no step']);
    expect(told(`${HEADER}\nroof,,,2\n`)).toEqual(['2 cell-invalid: the row names no step']);
  });

  test('refuses what is no count of sets, no zone or no panel', () => {
    expect(
      told(`${HEADER}\nroof,,1,\nroof,,2,1.5\nroof,,3,-1\nroof,,4,1001\nroof,left,1,1\n,,1,1\n`),
    ).toEqual([
      '2 cell-invalid: "" is no count of sets',
      '3 cell-invalid: "1.5" is no count of sets',
      '4 cell-invalid: "-1" is no count of sets',
      '5 cell-invalid: "1001" is no count of sets',
      '6 cell-invalid: "left" is no zone',
      '7 cell-invalid: the row names no panel',
    ]);
  });

  test('refuses a file without its columns, or without a row', () => {
    expect(told('roof,1,2\n')[0]).toMatch(/header-missing|column-missing/);
    expect(told(`${HEADER}\n`)[0]).toContain('no-readings');
  });
});
