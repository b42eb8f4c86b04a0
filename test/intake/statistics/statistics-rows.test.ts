import { expect, test } from 'vitest';
import { briefs, options, read, values } from '../helpers.ts';

const left = '3:%+% note statistics-left-out';
const leftAt = (column: number, length: number) =>
  left.replace('%', String(column)).replace('%', String(length));

test.each([
  ['panel,point,reading_um', 'roof,1,100', 'roof,Mean,100', leftAt(6, 4)],
  ['panel,point,reading_um', 'roof,1,100', 'roof,Std. Dev.,3', leftAt(6, 9)],
  ['panel,point,reading_um', 'roof,1,100', 'roof,n,1', leftAt(6, 1)],
  ['panel,point,reading_um', 'roof,1,100', 'roof,mean of 5,100', leftAt(6, 9)],
  ['panel,point,reading_um', 'roof,1,100', 'roof,1-2 avg,100', leftAt(6, 7)],
  ['panel,point,reading_um', 'roof,1,100', 'roof mean,,100', leftAt(1, 9)],
  ['panel,point,reading_um', 'roof,1,100', 'Average,,100', leftAt(1, 7)],
  ['panel,reading_um', 'roof,100', 'N,1', leftAt(1, 1)],
  ['panel;point;reading_um', 'roof;1;100', 'Mean;100.0', leftAt(1, 4)],
  ['panel,reading_um,operator', 'roof,100,ann', 'roof,100,Mittelwert', leftAt(10, 10)],
  ['panel,reading_um,note', 'roof,100,', 'roof,100,average of 2', leftAt(10, 12)],
  ['panel,reading_um,layer', 'roof,100,total', 'roof,100,x̄', leftAt(10, 2)],
  ['panel,reading_um,repeat', 'roof,100,1', 'roof,100,SD', leftAt(10, 2)],
])('below %j and %j the row %j is no reading', (header, row, statistics, told) => {
  const text = `${header}\n${row}\n${statistics}\n`;
  expect(briefs(text)).toEqual([told]);
  expect(values(text)?.map(([, , , value]) => value)).toEqual([100]);
  expect(read(text).value?.excluded.map(({ line }) => line)).toEqual([3]);
});

test('the mean below a wide table is no reading, and has no say in the decimal mark', () => {
  const text = ';bonnet_um;roof_um\n1;100,5;101\nØ;100.25;101.25\n';
  expect(read(text).value?.excluded).toEqual([
    {
      ...{ file: 'r.csv', line: 3, column: 1, text: 'Ø' },
      ...{ class: 'statistics', reason: 'a statistics row: Ø is no reading' },
      ...{ vehicle: null, panel: null, point: null },
    },
  ]);
  expect(values(text)?.map(([, , , value]) => value)).toEqual([100.5, 101]);
});

test('people, minutes and remarks that only hold such a word keep their readings', () => {
  const text =
    'panel,reading_um,operator,time,note\nroof,100,Max,5 min,more than the mean\nroof,101,Ann,,\n';
  expect(briefs(text)).toEqual([]);
  expect(values(text)).toHaveLength(2);
  const person = 'panel,reading_um,operator\nroof,100,Ann\nroof,102,Max\nroof,101,Mean\n';
  expect(values(person)?.map(([, , , value]) => value)).toEqual([100, 102]);
  expect(briefs(person)).toEqual(['4:10+4 note statistics-left-out']);
  const statistic = `${person.replace('Max', 'Ben')}roof,102,Max\n`;
  expect(values(statistic)?.map(([, , , value]) => value)).toEqual([100, 102]);
});

test('a column of statistics in a wide table is no panel', () => {
  const text = 'bonnet_um,roof_um,Mean,bonnet max_um,Battery\n100,101,100.5,100,87\n';
  expect(values(text)?.map(([panel]) => panel)).toEqual(['bonnet', 'roof']);
  expect(briefs(text)).toEqual([
    '1:19+4 note statistics-left-out',
    '1:24+13 note statistics-left-out',
    '1:38+7 warning column-unknown',
  ]);
  const isPanel = (label: string) => options.isPanel(label) || label.startsWith('bonnet');
  expect(values(text, { isPanel })?.map(([panel]) => panel)).toEqual(['bonnet', 'roof']);
});

test('German rows of the least and the largest value beside a column of numbered measurements are statistics', () => {
  const rows = (panel: string, values: readonly number[]) => [
    ...values.map((value, k) => `${panel};${k + 1};${value}`),
    `${panel};Kleinstwert;${Math.min(...values)}`,
    `${panel};Größtwert;${Math.max(...values)}`,
  ];
  const own = [...rows('roof', [92, 93, 98]), ...rows('boot', [103, 107, 105])];
  const text = `Teil;Messung;Wert (µm)\n${own.join('\n')}\n`;
  expect(values(text)?.map((one) => one[3])).toEqual([92, 93, 98, 103, 107, 105]);
});

test.each(['5;Total;---', '5;Mean;', '5;Total;n/a'])(
  'a row of statistics without a value is left out aloud, and its number is none of them: %s',
  (row) => {
    const text = `No;Panel;Reading µm\n3;bonnet;112\n4;roof;109\n${row}\n6;roof;108\n`;
    expect(briefs(text)).toEqual([expect.stringMatching(/^4:3\+\d+ note statistics-left-out$/u)]);
    expect(values(text)?.map(([, , , value]) => value)).toEqual([112, 109, 108]);
    expect(read(text).value?.excluded).toMatchObject([{ line: 4, class: 'statistics' }]);
  },
);

test('a total that holds a number is told twice, so that no panel of that name is lost quietly', () => {
  const text = 'No;Panel;Reading µm\n1;bonnet;112\n2;total;109\n3;roof;108\n';
  expect(briefs(text)).toContain('3:9+3 warning statistics-disagree');
});

test('a mean that is named is worth a note; one of a panel or column without readings is warned of', () => {
  const severity = (text: string) =>
    read(text)
      .diagnostics.filter(({ code }) => code === 'statistics-left-out')
      .map((one) => one.severity);
  const long = 'panel,point,reading_um\nroof,1,100\nroof,2,102\n';
  expect(severity(`${long}roof,Mean,101\n`)).toEqual(['note']);
  expect(severity(`${long}Average,,101\n`)).toEqual(['note']);
  expect(severity(`${long}bonnet,Mean,117\n`)).toEqual(['warning']);
  expect(severity('point;bonnet (µm);roof (µm)\n1;;100\n2;;102\nMean;117;101\n')).toEqual([
    'warning',
  ]);
  const wide = 'panel;1 (µm);2 (µm);Avg\nroof;100;102;101\nbonnet;110;114;112\n';
  expect(severity(wide)).toEqual(['note']);
  expect(severity(`${wide}boot;;;117\n`)).toEqual(['warning']);
});
