import { describe, expect, it } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import { readSpotsFile } from '../../src/intake/read-spots-file.ts';

const read = (text: string) =>
  readSpotsFile({ name: 'spots.csv', bytes: new TextEncoder().encode(text) }, micrometres(3000));
const header =
  'spot,panel,machine,pad,product,sets,mark,before_um,after_um,defect,cleared_pct,haze_grade,colour_on_pad,panel_c,note';

/** What is said of one row, and where. */
const faults = (row: string, columns = header): readonly string[] =>
  read(`${columns}\n${row}\n`).diagnostics.map(
    ({ code, message, at }) => `${code} ${at?.line}:${at?.column} ${message}`,
  );

describe('a file of test spots', () => {
  it('is read a row for each mark', () => {
    const [row] =
      read(
        `${header}\nA,bonnet,da,foam-medium,medium,2,m1,112.4,110.9,swirl marks,60,1,no,31,dusty\n`,
      ).value ?? [];
    expect(row).toMatchObject({
      spot: 'A',
      panel: 'bonnet',
      machine: 'da',
      pad: 'foam-medium',
      product: 'medium',
      sets: 2,
      mark: 'm1',
      before: 112.4,
      after: 110.9,
      defect: 'swirl marks',
      cleared: 0.6,
      haze: 1,
      colourOnPad: false,
      temperature: 31,
      note: 'dusty',
    });
  });

  it('needs no film where the trial was judged by eye alone', () => {
    const [row] =
      read('spot,panel,machine,pad,product,sets,cleared_pct\nA,roof,da,wool,heavy,1,85\n').value ??
      [];
    expect(row).toMatchObject({ before: null, after: null, sets: 1, cleared: 0.85, haze: null });
  });

  it('is refused where no column tells of the sets, and guesses none where a cell of it is empty', () => {
    const columns = 'spot,panel,machine,pad,product,mark,before_um,after_um';
    expect(faults('A,roof,da,wool,heavy,1,112,111', columns)).toEqual([
      'column-missing 1:1 there is no column "sets"',
    ]);
    const [row] = read(`${header}\nA,roof,da,wool,heavy,,1,112,111,,,,,,\n`).value ?? [];
    expect(row?.sets).toBeNull();
  });

  it('may be written in the dialect of another country, in mil, with names of its own', () => {
    const [row] =
      read(
        'Spot;Panel;Tool;Pad;Product;Sets;Before (mil);After (mil);Cleared %;Panel temp\n1;roof;da;wool;heavy;1;4,5;4,4;70 %;35 °C\n',
      ).value ?? [];
    expect(row?.before).toBeCloseTo(114.3, 9);
    expect(row?.after).toBeCloseTo(111.76, 9);
    expect(row).toMatchObject({ machine: 'da', cleared: 0.7, temperature: 35 });
  });

  it.each([
    ['A,roof,da,wool,heavy,1.5,1,,,,50,,,,', 'cell-invalid 2:22 "1.5" is not a number of sets'],
    ['A,roof,da,wool,heavy,0,1,,,,50,,,,', 'cell-invalid 2:22 "0" is not a number of sets'],
    ['A,roof,da,wool,heavy,1,1,,,,120,,,,', 'cell-invalid 2:29 "120" is not a share cleared'],
    ['A,roof,da,wool,heavy,1,1,,,,50,5,,,', 'cell-invalid 2:32 "5" is not a grade of haze'],
    [
      'A,roof,da,wool,heavy,1,1,,,,50,1,perhaps,,',
      'cell-invalid 2:34 "perhaps" is neither yes nor no',
    ],
    ['A,roof,da,wool,heavy,1,1,112,,,50,,,,', 'cell-invalid 2:26 a reading before, and none after'],
    ['A,roof,da,wool,heavy,1,1,,112,,50,,,,', 'cell-invalid 2:27 a reading after, and none before'],
    ['A,,da,wool,heavy,1,1,,,,50,,,,', 'cell-invalid 2:3 the row names no panel'],
    ['A,roof,da,wool,heavy,1,1,112 mm,111,,50,,,,', 'cell-invalid 2:26 "112 mm" is not a reading'],
  ])('refuses %s', (row, fault) => {
    expect(faults(row)).toContain(fault);
  });

  it('refuses film whose unit nobody names', () => {
    const columns = 'spot,panel,machine,pad,product,sets,before,after';
    expect(faults('A,roof,da,wool,heavy,1,112,111', columns).join('\n')).toContain('unit-missing');
  });
});
