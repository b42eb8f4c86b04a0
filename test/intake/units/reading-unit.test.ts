import { expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

const unitOf = (text: string) => read(text).value?.decisions;

test('a column of units settles the unit, and says so', () => {
  const decisions = unitOf('panel,reading,unit\nroof,4,mil\nboot,5,\nboot,5,-\nroof,4.1,Mils\n');
  expect(decisions?.unit).toBe('mil');
  expect(decisions?.evidence).toContain('the column "unit" says mil');
  expect(briefs('panel,reading_um,units\nroof,101,µm\n')).toEqual([]);
  expect(unitOf('bonnet,roof,unit\n4,5,mil\n')?.unit).toBe('mil');
});

test('a line above the header that names the unit settles it', () => {
  expect(unitOf('Device,x\nUnit,mil\npanel,reading\nroof,4\n')?.evidence).toContain(
    'line 2 says mil',
  );
  expect(unitOf('Units: µm\npanel,reading\nroof,101\n')?.unit).toBe('um');
});

test.each([
  ['panel,reading_um,unit\nroof,101,µm\nroof,4,mil\n', '3:8+3 error unit-conflict'],
  ['panel,reading,unit\nroof,101,µm\nroof,4,mil\nroof,99,\n', '4:9+1 error unit-missing'],
  ['panel,reading_um,unit\nroof,101,furlong\n', '2:10+7 error unit-unknown'],
  ['Unit,mil\npanel,reading_um\nroof,4\n', '1:6+3 error unit-conflict'],
  ['Unit,mil\npanel,reading,unit\nroof,4,um\n', '3:8+2 error unit-conflict'],
])('%j is refused for its units', (text, told) => expect(briefs(text)).toEqual([told]));

test('an option against a column of units is refused', () => {
  expect(briefs('panel,reading,unit\nroof,4,mil\n', { unit: 'um' })).toEqual([
    '2:8+3 error unit-conflict',
  ]);
});

test('the hint for a missing unit names mil where a cell of the file does', () => {
  const hint = (text: string) => read(text).diagnostics[0]?.hint;
  expect(hint('panel,reading\nroof,101\n')).toBe('--reading-unit um');
  expect(hint('panel,reading\nroof,4 mil\nroof,4.1\n')).toBe('--reading-unit mil');
});

test('readings that are no paint as a whole put the unit in doubt', () => {
  const text = 'panel,reading_um\nroof,4.1\nroof,4.3\nboot,101\n';
  expect(briefs(text)).toEqual(['1:7+10 warning unit-doubtful']);
  expect(read(text).diagnostics[0]?.message).toBe('the middle reading is 4.3 µm: mil?');
  expect(values(text)).toHaveLength(3);
  expect(read('panel,reading_mil\nroof,118\nroof,120').diagnostics[0]?.message).toBe(
    'the middle reading is 3022.6 µm: µm?', // (118 + 120) / 2 mil × 25.4 µm
  );
  expect(briefs('panel,reading_um\nroof,1600\n')).toEqual(['1:7+10 warning unit-doubtful']);
  expect(briefs('panel,reading_um\nroof,15\nroof,1500\nroof,19\nroof,1501\n').join()).not.toContain(
    'unit-doubtful',
  );
  expect(briefs('panel,reading_um,layer\nroof,9,base\nroof,8,base\n')).toEqual([]);
});

test('a row of units under the header settles the unit', () => {
  expect(unitOf('panel,reading\n,mil\nroof,4\n')?.evidence).toContain(
    'the units in line 2 say mil',
  );
  expect(values('Panel;Point;Value;Temp\n[-];[-];[µm];[°C]\nroof;1;101;20\n')).toEqual([
    ['roof', '1', 1, 101],
  ]);
  expect(briefs('panel,reading_um\n,mil\nroof,4\n')).toEqual(['2:2+3 error unit-conflict']);
});

test('a column that names µm in one row and mil in the next is obeyed row by row, and said', () => {
  const text = 'panel,reading,unit\nroof,101,µm\nroof,4,mil\n';
  expect(values(text)?.map(([, , , value]) => value)).toEqual([101, 101.6]); // 4 × 25.4 µm
  expect(unitOf(text)?.evidence).toContain(
    'the column "unit" says µm in some rows and mil in others, each row is read in its own',
  );
});

test.each([
  'panel;1;2;3\n(µm);;;\nbonnet;101;102;103\nroof;99;98;97\n',
  'panel;1;2;3;;\nµm;;;;;\nbonnet;101;102;103\nroof;99;98;97;\n',
  'panel;point;value\n;µm;\nbonnet;1;101\nroof;1;99\n',
])('a row that holds one unit and nothing else is said of all readings: %j', (text) => {
  expect(read(text).value?.decisions.evidence).toContain('the units in line 2 say µm');
  expect(values(text)?.map((one) => one[3])).toContain(101);
  expect(briefs(text)).toEqual([]);
});

test('a row of one unit against the unit of the header is refused where it stands', () => {
  expect(briefs('panel;reading_um\nmil;\nbonnet;101\n')).toEqual(['2:1+3 error unit-conflict']);
});
