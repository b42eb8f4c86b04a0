import { expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

const disagreements = (text: string) =>
  read(text).diagnostics.filter(({ code }) => code === 'statistics-disagree');

test.each([
  'roof,Mean,102\nroof,Min,101\nroof,Max,103\nroof,SD,1.4\nroof,n,2\n', // SD of 101 and 103 is √2
  'Mittelwert,,102\nStabw.,,1.41\nAnz.,,2\n',
  'Moyenne,,102\nÉcart type,,1.0\nNombre,,2\n', // 1.0: with n, not n − 1, below the sum
  'Mean (µm),,102.0\nMediana,,102\nSumme,,204\n',
  '平均,,102\n標準偏差,,1.41\n個数,,2\n',
  '\nMean: 102 µm\nCount: 2\n',
])('statistics %j agree with their readings and are left out', (statistics) => {
  const text = `panel,point,reading_um\nroof,1,101\nroof,2,103\n${statistics}`;
  expect(values(text)?.map(([, , , value]) => value)).toEqual([101, 103]);
  expect(disagreements(text)).toEqual([]);
  expect(read(text).value?.excluded.every((cell) => cell.class === 'statistics')).toBe(true);
});

test('a mean that its readings do not give is told, with both numbers', () => {
  const text = 'panel,point,reading_um\nroof,1,101\nroof,2,103\nroof,Mean,108\n';
  expect(values(text)).toHaveLength(2);
  expect(disagreements(text)[0]).toMatchObject({
    severity: 'warning',
    message: 'the mean in the file, 108, disagrees with its readings, which give 102',
    at: { line: 4, column: 11 },
  });
});

test('a mean of another size stops the file: a decimal mark was taken wrongly', () => {
  const text = 'panel,point,reading_um\nroof,1,1011\nroof,2,1033\nroof,Mean,102.2\n';
  expect(read(text).value).toBeUndefined();
  expect(disagreements(text)[0]?.severity).toBe('error');
});

test('a count tells of a lost reading', () => {
  expect(disagreements('panel,reading_um\nroof,101\nroof,103\nCount,3\n')).toHaveLength(1);
  expect(disagreements('panel,reading_um\nroof,101\nroof,OL\nroof,103\nCount,3\n')).toEqual([]);
});

test('a mean of each panel is of the rows above it, whoever repeats the panel later', () => {
  const text =
    'panel,point,reading_um\nroof,1,101\nroof,2,103\nroof,Mean,102\nboot,1,90\nboot,2,92\nboot,Mean,91\nAverage,,96.5\n';
  expect(disagreements(text)).toEqual([]);
});

test('columns of statistics are of their row or their panel', () => {
  expect(disagreements('panel;r1_um;r2_um;Mean;n\nroof;101;103;102;2\n')).toEqual([]);
  expect(disagreements('panel;r1_um;r2_um;Mean\nroof;101;103;112\n')).toHaveLength(1);
  const long = 'panel,point,reading_um,panel mean\nroof,1,101,102\nroof,2,103,102\n';
  expect(disagreements(long)).toEqual([]);
});

test('a summary of the panels in a table of its own is left out and checked', () => {
  const text = (mean: string) =>
    `panel,point,reading_um\nroof,1,101\nroof,2,103\n\nPanel,Mean,n\nroof,${mean},2\n`;
  expect(briefs(text('102'))).toEqual(['5:1+5 warning statistics-left-out']);
  expect(disagreements(text('112'))).toHaveLength(1);
});

test('a panel called N or Average door and a point called max keep their readings', () => {
  const text =
    'panel,point,reading_um\nN,1,101\nN,2,103\nAverage door,1,99\nAverage door,2,98\nroof,max,99\nroof,7,100\n';
  expect(values(text)).toHaveLength(6);
  expect(briefs(text)).toEqual(['6:6+3 warning reading-doubted']);
});

test('a nameless last row of means is no row of readings', () => {
  const text = 'bonnet_um,roof_um\n100,90\n101,92\n102,95\n\n101.0,92.3\n';
  expect(values(text)).toHaveLength(6);
  expect(briefs(text)).toEqual(['6:1+5 warning statistics-left-out']);
  expect(values(text.replace('92.3', '92.9'))).toHaveLength(8);
});

test('a car called Mini and a trainee called Max are no statistics', () => {
  const text = 'vehicle,panel,reading_um,operator\nMini,roof,101,Max\nMini,boot,99,Ann\n';
  expect(values(text)).toHaveLength(2);
  expect(briefs(text)).toEqual([]);
});
