import { expect, test } from 'vitest';
import { briefs, read, values } from './helpers.ts';

test('the decisions of a file are told with their evidence', () => {
  const text = 'Device: x\n\nPart;Spot;Thickness (µm)\nbonnet;a;101,5\nbonnet;a;102\n';
  expect(read(text).value?.decisions).toEqual({
    encoding: 'utf-8',
    delimiter: ';',
    decimal: ',',
    layout: 'long',
    unit: 'um',
    headerLine: 3,
    columns: new Map([
      ['panel', ['Part']],
      ['point', ['Spot']],
      ['reading', ['Thickness (µm)']],
    ]),
    evidence: [
      'semicolon as delimiter, it alone makes line 3 a header',
      'the header says µm',
      '1 of 2 readings fits only a decimal comma',
    ],
    metadata: [{ key: 'Device', value: 'x', line: 1 }],
  });
});

test('readings of one point are repeats in order, and an explicit repeat wins', () => {
  expect(values('panel,point,reading_um\nroof,1,101\nroof,1,102\nroof,2,103')).toEqual([
    ['roof', '1', 1, 101],
    ['roof', '1', 2, 102],
    ['roof', '2', 1, 103],
  ]);
  expect(values('panel,point,repeat,reading_um\nroof,1,3,101\nroof,1,,102')).toEqual([
    ['roof', '1', 3, 101],
    ['roof', '1', 4, 102],
  ]);
});

test('the same repeat given twice is refused', () => {
  expect(briefs('panel,point,repeat,reading_um\nroof,1,1,101\nroof,1,1,101')).toEqual([
    '3:8+1 error cell-invalid',
  ]);
});

test('a row without a point is its own point, and never joins a named one', () => {
  expect(values('panel,reading_um\nroof,101\nboot,90\nroof,102')).toEqual([
    ['roof', '1', 1, 101],
    ['boot', '1', 1, 90],
    ['roof', '2', 1, 102],
  ]);
  expect(values('panel,point,reading_um\nroof,,101\nroof,1,102')).toEqual([
    ['roof', '2', 1, 101],
    ['roof', '1', 1, 102],
  ]);
});

test('vehicles and layers are kept apart', () => {
  const text =
    'car,panel,point,layer,reading_um\nA,roof,1,Clear,40\nA,roof,1,total,110\nB,roof,1,,99';
  expect(read(text).value?.readings.map((r) => [r.vehicle, r.layer, r.repeat])).toEqual([
    ['A', 'clear', 1],
    ['A', '', 1],
    ['B', '', 1],
  ]);
});

test('a wide table gives one reading per panel and row', () => {
  expect(values('sep=;\nbonnet;roof (µm)\n101,5;99\n98;97\n')).toEqual([
    ['bonnet', '1', 1, 101.5],
    ['roof', '1', 1, 99],
    ['bonnet', '2', 1, 98],
    ['roof', '2', 1, 97],
  ]);
});

test('a misspelt panel of a wide table keeps its readings for the matching of names', () => {
  const text = 'bonnet,rof,roof,weather\n101,110,99,dry\n';
  expect(values(text, { unit: 'um' })?.map(([panel]) => panel)).toEqual(['bonnet', 'rof', 'roof']);
  expect(briefs(text, { unit: 'um' })).toEqual(['1:17+7 warning column-unknown']);
});

test('cells without a reading are left out aloud, never read as 0', () => {
  const { value, diagnostics } = read('panel,reading_um\nroof,\nroof,n/a\nroof,0\nroof,101');
  expect(value?.readings.map(({ thickness }) => Number(thickness))).toEqual([101]);
  expect(value?.excluded.map(({ line, text }) => [line, text])).toEqual([
    [2, ''],
    [3, 'n/a'],
    [4, '0'],
  ]);
  expect(diagnostics.map(({ severity, code }) => `${severity} ${code}`)).toEqual([
    'note reading-missing',
    'warning reading-missing',
    'warning reading-implausible',
  ]);
});

test('every bad cell of a file is reported at its place', () => {
  const text =
    'panel,reading_um,place,marked\nroof,1O1,edeg,x\n,101,,\nroof,6000,face,maybe\nroof\nroof,1,,,x';
  const { value, diagnostics } = read(text);
  expect(value).toBeUndefined();
  expect(diagnostics.find(({ code }) => code === 'cell-invalid')?.hint).toBe(
    'did you mean "edge"?',
  );
  expect(briefs(text)).toEqual([
    '2:10+4 error cell-invalid',
    '2:6+3 error reading-not-a-number',
    '3:1+1 error panel-missing',
    '4:16+5 error cell-invalid',
    '4:6+4 error reading-implausible',
    '5:1+4 error row-too-short',
    '6:10+1 error row-too-long',
  ]);
});

test('more than twenty of a kind end in a count', () => {
  const { diagnostics } = read(`panel,reading_um\n${'roof,1O1\n'.repeat(57)}`);
  expect(diagnostics).toHaveLength(21);
  expect(diagnostics[20]?.message).toBe('and 37 more of this kind');
});

test('a number that may be read two ways is refused with both', () => {
  const { diagnostics } = read('panel,reading_um\nroof,101.5\nroof,1.234');
  expect(diagnostics[0]).toMatchObject({
    code: 'reading-ambiguous',
    message: '"1.234" may be 1.234 or 1,234',
    at: { file: 'r.csv', line: 3, column: 6, length: 5, lineText: 'roof,1.234' },
  });
});

test('three decimals are read where the thousands cannot be, or where the user says so', () => {
  expect(values('panel,reading_mil\nroof,4.000')?.[0]?.[3]).toBeCloseTo(101.6, 9); // 1 mil = 25.4 µm
  expect(values('panel,reading_um\nroof,1.234', { decimal: '.' })?.[0]?.[3]).toBe(1.234);
  expect(values('panel,reading_um\nroof,101.234\nroof,1.234')?.[1]?.[3]).toBe(1.234);
});

test('a cell against the decimal mark of the others is refused', () => {
  expect(briefs('panel;reading_um\nroof;101,5\nroof;99,5\nroof;98.55')).toEqual([
    '4:6+5 error reading-ambiguous',
  ]);
});

test.each([
  ['panel,reading\nroof,101', '1:7+7 error unit-missing'],
  ['panel,reading_mm\nroof,101', '1:7+10 error unit-unknown'],
  ['panel,reading_um\nroof,4 mil', '2:6+5 error unit-conflict'],
  ['bonnet_um,roof_mil\n100,104', '1:11+8 error unit-conflict'],
  ['pannel,reading_um\nroof,101', '1:1+6 error column-missing'],
  ['panel,value_um,dft\nroof,1,2', '1:16+3 error column-repeated'],
  ['roof,101\nboot,99', '1:6+3 error unit-missing'],
  ['apron,101\nboot,99', '1:1+5 error header-missing'],
  ['panel,reading_um\nroof,"101\nboot,"99"', '2:6+1 error quote-unclosed'],
  ['panel,reading_um\nroof,"101', '2:6+1 error quote-unclosed'],
  ['sep=!\npanel!reading_um\nroof!101', '1:1+5 error cell-invalid'],
])('%j is refused', (text, told) => expect(briefs(text)[0]).toBe(told));

test('an option against the unit of the header is refused, not obeyed', () => {
  expect(briefs('panel,reading_um\nroof,101', { unit: 'mil' })).toEqual([
    '1:7+10 error unit-conflict',
  ]);
});

test('a missing column lists the columns found and the likely slip', () => {
  expect(read('pannel,reading_um\nroof,101').diagnostics[0]?.hint).toBe(
    'did you mean "panel" by "pannel"? columns found: pannel, reading_um',
  );
});

test('two delimiters that fit equally are refused', () => {
  expect(briefs('panel,a;panel;reading_um;b,reading_um\n')[0]).toBe(
    '1:1+37 error delimiter-ambiguous',
  );
});

test('a unit after every number settles the unit', () => {
  expect(read('panel,reading\nroof,101.5 µm\nroof,99μm').value?.decisions.unit).toBe('um');
});

test('a reading behind a quoted cell of two lines knows its place', () => {
  const text = 'panel,note,reading_um\nroof,"a\nb", 101\n';
  expect(read(text).value?.readings[0]?.origin).toEqual({ file: 'r.csv', line: 3, column: 5 });
});

test('a file of names only holds no readings', () => {
  expect(read('panel,reading_um\n').diagnostics.map(({ code }) => code)).toEqual(['no-readings']);
});

test('a file of comments only has no header', () => {
  expect(read('# panel,reading_um\n#\n').diagnostics.map(({ code }) => code)).toEqual([
    'header-missing',
  ]);
});
