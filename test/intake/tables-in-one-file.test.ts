import { expect, test } from 'vitest';
import { briefs, read, values } from './helpers.ts';

const vehicles = (text: string) => read(text).value?.readings.map(({ vehicle }) => vehicle);

test('a vehicle or panel named on the first of its rows is that of the rows below, and it is said', () => {
  const text =
    'vehicle,panel,point,reading_um\nA,roof,1,101\n,boot,1,102\n,boot,2,98\nB,roof,1,99\n,roof,2,97\n';
  expect(vehicles(text)).toEqual(['A', 'A', 'A', 'B', 'B']);
  expect(read(text).value?.decisions.evidence).toContain(
    'each vehicle is named on the first of its rows, those below are of the same',
  );
  expect(read(text).value?.readings[1]?.origin).toEqual({ file: 'r.csv', line: 3, column: 9 });
  expect(
    values('panel,point,reading_um\nroof,1,101\n,2,99\nboot,1,98\n,2,97\n')?.map(([p]) => p),
  ).toEqual(['roof', 'roof', 'boot', 'boot']);
});

test('one row without the vehicle that all others name is refused', () => {
  expect(briefs('vehicle,panel,reading_um\nA,roof,101\nA,boot,99\n,roof,98\nB,roof,97\n')).toEqual([
    '4:1+1 error cell-invalid',
  ]);
});

test('tables that a line of text sets apart are refused, pages of one report are not', () => {
  const head = 'panel,reading_um\n';
  expect(briefs(`Before\n${head}roof,101\nAfter\n${head}roof,99\n`)).toContain(
    '4:1+5 error tables-apart',
  );
  expect(briefs(`Stage: 1\n${head}roof,101\nStage: 2\n${head}roof,99\n`)).toContain(
    '4:1+8 error tables-apart',
  );
  const pages = `Report\nPage 1\n${head}roof,101\nReport\nPage 2\n${head}boot,99\n`;
  expect(values(pages)).toHaveLength(2);
});

test('tables in two units are each read in their own', () => {
  const text = 'Unit: µm\npanel,reading\nroof,101\nUnit: mil\npanel,reading\nboot,4\n';
  expect(values(text)?.map(([, , , value]) => value)).toEqual([101, 101.6]); // 4 × 25.4 µm
});

test('a second dialect in one file is refused, above the table or below it', () => {
  expect(briefs('bonnet;1;104\npanel,point,reading_um\nroof,1,101\n')).toEqual([
    '1:1+12 error row-above-header',
  ]);
  expect(briefs('panel,reading_um\nroof,101\n\npanel;reading_um\n')).toEqual([
    '4:1+16 error delimiter-ambiguous',
  ]);
});

test('a row of readings above the names of its columns is refused, whatever names it', () => {
  const above = (row: string, header: string, below: string) =>
    briefs(`${row}\n${header}\n${below}\n`).map((one) => one.replace(/\+\d+/u, ''));
  const refused = ['1:1 error row-above-header'];
  expect(above('3 (µm);109;121', 'Point;bonnet;roof', '1 (µm);107;125\n2 (µm);108;124')).toEqual(
    refused,
  );
  expect(above('3;109;121', 'Point;bonnet (µm);roof (µm)', '1;107;125\n2;108;124')).toEqual(
    refused,
  );
  expect(
    above('roof (µm);1;109', 'Panel;Point;Reading', 'roof (µm);2;112\nboot (µm);1;99'),
  ).toEqual(refused);
  expect(
    above('roof    3  109', 'panel   point  reading_um', 'bonnet  1      112\nbonnet  2      115'),
  ).toEqual(refused);
});

test('a column of one and the same number beside the panels is no panel', () => {
  const text = 'bonnet_um,roof_um,apron\n101,99,180\n102,98,180\n103,97,180\n';
  expect(values(text)).toHaveLength(6);
  expect(briefs(text)).toEqual(['1:19+5 warning column-unknown']);
});

test('a single number without a unit among others with one is told at its place', () => {
  expect(briefs('panel,reading\nroof,101 µm\nroof,4 mil\nroof,99\n')).toEqual([
    '4:6+2 error unit-missing',
  ]);
});

test('a row cut short before the panel stays short', () => {
  const text = 'point,panel,reading_um\n1,roof,101\n2\n3,,99\n';
  expect(briefs(text)).toEqual(['3:1+1 error row-too-short']);
});

test('names of panels right above another header are refused, for they may say which side the tables below are of', () => {
  const rows = 'bonnet;1;120;bonnet;1;118\nroof;1;122;roof;1;117\n';
  const text = `roof;;;bonnet;;\nPanel;Point;µm;Panel;Point;µm\n${rows}`;
  const [said] = read(text).diagnostics;
  expect(said).toMatchObject({
    severity: 'error',
    code: 'panel-ambiguous',
    at: { line: 1, column: 1 },
  });
  expect(said?.message).toContain('"roof" and "bonnet" may name the panels below');
});

test('panels that stand in two tables side by side are told, a list that goes on beside itself is not', () => {
  const names = 'panel;um;panel;um\n';
  expect(briefs(`${names}bonnet;120;bonnet;121\nroof;121;roof;122\n`)).toEqual([
    '2:12+6 warning reading-doubted',
  ]);
  expect(briefs(`${names}bonnet;120;roof;121\nroof;121;boot;122\n`)).toEqual([]);
});

test('a day that stands again between rows parts nothing', () => {
  const text = 'panel,reading_um\n2026-03-02,\nroof,120\n2026-03-02,\nboot,117\n';
  expect(briefs(text)).toEqual([]);
  expect(values(text)).toHaveLength(2);
});

test('days above the rows of two vehicles part nothing', () => {
  const rows = (vehicle: string, day: string) => `Vehicle: ${vehicle}\n${day}\nroof,120\n`;
  const text = `panel,reading_um\n${rows('A', '2026-03-02')}${rows('B', '2026-11-20')}`;
  expect(briefs(text).filter((brief) => brief.includes('tables-apart'))).toEqual([]);
});
