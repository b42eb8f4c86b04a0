import { describe, expect, test } from 'vitest';
import { briefs, values } from '../helpers.ts';

const table = 'Panel;Point;Reading µm\nBonnet;1;112,4\nBonnet;2;109,1\nRoof;1;98,6\n';
const without = table.replace(' µm', '');

describe('lines in cells below the last reading are told, and no rows', () => {
  test.each(['End of export;18 records', 'Battery;76 %', 'Probe;FN1.6;cal ok', 'Exported;;10:11'])(
    '%s',
    (line) => {
      expect(values(`${table}\n${line}\n`)).toHaveLength(3);
    },
  );

  test.each(['Boot lid;112', 'Roof;2', 'Roof;2;', 'Somewhere;118', 'boot,1,118', 'roof,1,118'])(
    'but not "%s", which may be a row',
    (line) => {
      const told = briefs(`${table}\n${line}\n`).join();
      expect(told).toMatch(/error|reading-missing/u);
    },
  );

  test('nor where they stand right below the rows', () => {
    expect(values(`${table}Battery;76 %\n`)).toBeUndefined();
  });
});

describe('a unit below the last reading', () => {
  test.each([
    'Unit: µm',
    'Unit;µm',
    '* thickness in microns',
    'All values in µm',
    'Messwerte in µm',
  ])('is that of all: %s', (line) => {
    expect(values(`${without}\n${line}\n`)).toHaveLength(3);
  });

  test('contradicts another one', () => {
    expect(briefs(`${table}\nUnit: mil\n`).join()).toContain('error unit-conflict');
  });

  test('between the rows is not that of those above it', () => {
    expect(values('Panel;Reading\nBonnet;112\nUnit: µm\nRoof;98\n')).toBeUndefined();
  });
});

test('a panel with its readings in one cell below the rows is no closing line', () => {
  const text = 'Panel;Point;Reading µm\nbonnet;1;104\nbonnet;2;106\n\nroof: 111 109\n';
  expect(briefs(text)).toEqual(['5:1+13 error row-too-short']);
});
