import { describe, expect, test } from 'vitest';
import { csvTables } from '../../src/formats/csv-columns.ts';
import { readGlossFile } from '../../src/intake/read-gloss-file.ts';

const read = (text: string) => readGlossFile({ name: 'gloss.csv', bytes: Buffer.from(text) });
const told = (text: string): readonly string[] =>
  read(text).diagnostics.map(({ code, message, at }) => `${at?.line} ${code}: ${message}`);

const HEADER = 'panel,point,angle_deg,before_gu,after_gu,before_haze,after_haze';

describe('a file of gloss', () => {
  test('is read a row a place, with haze where it was read', () => {
    const { value, diagnostics } = read(
      `${HEADER}\nbonnet,1,60,84.1,91.2,,\nbonnet,2,20,68,83,31,12\n`,
    );
    expect(diagnostics).toEqual([]);
    expect(value?.map(({ at: _, ...row }) => row)).toEqual([
      { panel: 'bonnet', point: '1', angle: 60, before: 84.1, after: 91.2, haze: null },
      {
        panel: 'bonnet',
        point: '2',
        angle: 20,
        before: 68,
        after: 83,
        haze: { before: 31, after: 12 },
      },
    ]);
  });

  test('is read in the dialects that exports come in, its angle with or without a sign', () => {
    const { value } = read('Panel;Angle;Gloss before;Gloss after\nRoof;60°;84,1;91,2\n');
    expect(value?.map(({ angle, before, after, point }) => [angle, before, after, point])).toEqual([
      [60, 84.1, 91.2, '1'],
    ]);
  });

  test('needs the angle of each row, which is the same before and after', () => {
    expect(told('panel,before_gu,after_gu\nroof,84,91\n')[0]).toMatch(
      /header-missing|column-missing/,
    );
    expect(told(`${HEADER}\nroof,1,45,84,91,,\n`)).toEqual([
      '2 cell-invalid: "45" is no angle of gloss',
    ]);
    expect(told(`${HEADER}\nroof,1,20/60,84,91,,\n`)[0]).toContain('no angle of gloss');
  });

  test('refuses a value on one side only, whatever it is of', () => {
    expect(told(`${HEADER}\nroof,1,60,84,,,\n`)).toEqual(['2 cell-invalid: no value here']);
    expect(told(`${HEADER}\nroof,1,60,84,91,30,\n`)).toEqual(['2 cell-invalid: no value here']);
    expect(told('panel,angle_deg,before_gu,after_gu,before_haze\nroof,60,84,91,30\n')).toEqual([
      '2 cell-invalid: haze on one side only',
    ]);
  });

  test('refuses what is no gloss, a row without a panel and a file without a row', () => {
    expect(told(`${HEADER}\nroof,1,60,shiny,91,,\n,2,60,84,91,,\nroof,3,60,84,3000,,\n`)).toEqual([
      '2 cell-invalid: "shiny" is no value of gloss or haze',
      '3 cell-invalid: the row names no panel',
      '4 cell-invalid: "3000" is out of range',
    ]);
    expect(told(`${HEADER}\n`)).toEqual([
      'undefined no-readings: the file holds no reading of gloss',
    ]);
  });

  test('has the columns that are published for it', () => {
    const names = csvTables.find(({ kind }) => kind === 'gloss')?.columns.map(({ name }) => name);
    expect(names?.join(',')).toBe(HEADER);
  });
});
