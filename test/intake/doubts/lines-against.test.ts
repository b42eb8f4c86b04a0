import { describe, expect, test } from 'vitest';
import { briefs, values } from '../helpers.ts';

const table = 'panel,point,reading_um\nroof,1,101\nroof,2,103\n';
const codesAbove = (line: string) =>
  briefs(`${line}\n${table}`).filter((one) => one.startsWith('1:') && !one.includes('line-left'));

describe('a line that makes other numbers of the readings', () => {
  test.each([
    'All values x 0.1',
    'Scale factor;0.1',
    'Faktor: 0,1',
    'Divisor = 10',
    'Offset: -12 µm',
    'Alle Werte durch 10 teilen',
    'Alle Werte mal 10',
    'Readings in tenths of a micron',
    'minus 12 µm',
    'Soustraire 50 µm',
    '# Scale 0.1',
  ])('%j stops the file at its line', (line) => {
    expect(codesAbove(line)).toEqual([expect.stringMatching(/ error readings-altered$/)]);
  });

  test('stops it below and between the rows as well', () => {
    expect(briefs(`${table}Subtract 12 µm from all\n`).join()).toMatch(
      /4:1\+\d+ error readings-alt/,
    );
    const between = `Panel: bonnet\npoint,reading_um\n1,101\nOffset: 5\nPanel: roof\n1,103\n`;
    expect(briefs(between).join()).toMatch(/4:1\+\d+ error readings-altered/);
  });

  test.each([
    'Scale factor: 1.0',
    'Offset: 0',
    'Scale 1:1',
    'Resolution: tenths of a micron',
    'UTC offset: +2',
    'Temperature: minus 5',
    'Golf Plus 2019',
    'Paint correction: 2 stages',
    'Photos: 12',
  ])('%j does not', (line) => expect(codesAbove(line)).toEqual([]));
});

describe('a line that speaks against readings', () => {
  test.each([
    'NOT CALIBRATED',
    'Gauge: not calibrated',
    'Left and right are swapped',
    'Includes 50 µm of protection film',
    'Roof readings belong to another car',
    'Roof point 2 is wrong',
    'Roof 2: 105 and not 188',
    'Note: roof 2 was a mistake, please ignore',
    'Nicht kalibriert!',
  ])('%j is told, and every reading kept', (line) => {
    expect(codesAbove(line)).toEqual([expect.stringMatching(/ warning reading-doubted$/)]);
    expect(values(`${line}\n${table}`)).toHaveLength(2);
  });

  test.each([
    'Errors: 0',
    'Deleted: none',
    'Paint report',
    'Operator: Wrong',
    'Calibration foil: 125 µm',
    'Vehicle: saloon, roof in black',
    'P01 = roof',
  ])('%j says nothing of the kind', (line) => expect(codesAbove(line)).toEqual([]));
});

describe('a line like a row, written otherwise', () => {
  test('stops the file', () => {
    const list = 'roof: 111 109 112 µm\nboot: 97 98 99 µm\n';
    expect(briefs(`bonnet 104 106 103 µm\n${list}`)).toEqual(['1:1+21 error row-too-short']);
    expect(briefs(`${list}bonnet 104 106 103 µm\n`)).toContain('3:1+21 error row-too-short');
  });

  test('is none without readings as large as films', () => {
    const list = 'roof: 111 109 112 µm\nboot: 97 98 99 µm\n';
    expect(briefs(`bonnet 2\n${list}`)).toEqual(['1:1+8 warning line-left-out']);
    expect(briefs(`Job 104 106\n${list}`)).toEqual(['1:1+11 warning line-left-out']);
  });
});

describe('a line that names two units', () => {
  const unitless = 'panel,point,reading\nroof,1,101\nroof,2,103\n';

  test.each(['All readings in µm, bumpers in mil', 'Readings in µm; boot read in mil'])(
    '%j is told, for all readings are read in one',
    (line) => {
      expect(briefs(`${line}\n${unitless}`).join()).toMatch(/1:1\+\d+ warning reading-doubted/);
      expect(values(`${line}\n${unitless}`)).toHaveLength(2);
    },
  );

  test.each(['Readings in µm; under 3 mil is thin', 'Report µm/mil', '1 mil = 25.4 µm'])(
    '%j says nothing of the kind',
    (line) => expect(codesAbove(line)).toEqual([]),
  );

  test('is no news where a column names the unit of each', () => {
    const text = 'Units are µm and mil\npanel,reading,unit\nroof,101,µm\nroof,4.1,mil\n';
    expect(briefs(text).join()).not.toContain('reading-doubted');
  });
});
