import { expect, test } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import { readDefectsFile } from '../../src/intake/read-defects-file.ts';
import { brief, utf8 } from './helpers.ts';

const read = (text: string) =>
  readDefectsFile({ name: 'd.csv', bytes: utf8(text) }, micrometres(5000));

test('a row of defects is read whole', () => {
  expect(
    read('panel,defect,grade,extent,depth_um,note\nroof,swirls,2.5,all,3.2,"a, b"').value,
  ).toEqual([
    {
      panel: 'roof',
      defect: 'swirls',
      grade: 2.5,
      extent: 'all',
      depth: 3.2,
      note: 'a, b',
      origin: { file: 'd.csv', line: 2, column: 1 },
      lineText: 'roof,swirls,2.5,all,3.2,"a, b"',
    },
  ]);
});

test('what is not given is null, not 0', () => {
  expect(read('panel;defect;grade;depth_um\nroof;swirls;;').value?.[0]).toMatchObject({
    grade: null,
    depth: null,
  });
});

test('a depth in mil is converted and a decimal comma read', () => {
  const row = read('panel;defect;grade;depth_mil\nroof;scratch;2,5;0,5').value?.[0];
  expect(row).toMatchObject({ grade: 2.5, depth: 12.7 }); // 1 mil = 25.4 µm
});

test('a list without rows is a list without defects', () => {
  expect(read('panel,defect\n')).toEqual({ value: [], diagnostics: [] });
});

test.each([
  ['panel,defect,grade\nroof,swirls,2.3', '2:13+3 error cell-invalid'],
  ['panel,defect,grade\nroof,swirls,6', '2:13+1 error cell-invalid'],
  ['panel,defect,grade\nroof,swirls,-1', '2:13+2 error cell-invalid'],
  ['panel,defect,depth_um\nroof,scratch,deep', '2:14+4 error cell-invalid'],
  ['panel,defect,depth\nroof,scratch,3', '1:14+5 error unit-missing'],
  ['panel,defect\n,scratch', '2:1+1 error panel-missing'],
  ['panel,defect\nroof,', '2:6+1 error cell-invalid'],
  ['panel,defct\nroof,x', '1:7+5 error column-missing'],
  ['panel,defect\nroof,x,y', '2:8+1 error row-too-long'],
])('%j is refused', (text, told) => {
  const { value, diagnostics } = read(text);
  expect(value).toBeUndefined();
  expect(diagnostics.map(brief)).toContain(told);
});

test('a table of test spots, which names panels and defects as well, is told as what it is', () => {
  const head = 'spot,panel,machine,pad,product,sets,before_um,after_um,defect,cleared_pct';
  const { value, diagnostics } = read(`${head}\nA,roof,da,foam-soft,fine,1,112,111,swirls,60\n`);
  expect(value).toBeUndefined();
  expect(diagnostics.map(brief)).toEqual(['1:1+4 error file-other-kind']);
  expect(diagnostics[0]?.message).toContain('this is a table of test spots');
  expect(diagnostics[0]?.hint).toContain('take it as --spots FILE');
});

test('further columns of a table of defects are warned of and left alone', () => {
  const { value, diagnostics } = read('panel,defect,spot,reading_um\nroof,swirls,A,112\n');
  expect(value).toHaveLength(1);
  expect(diagnostics.map(brief)).toEqual([
    '1:14+4 warning column-unknown',
    '1:19+10 warning column-unknown',
  ]);
});
