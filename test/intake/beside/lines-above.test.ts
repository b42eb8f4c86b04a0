/** Lines above the rows: what they say of all readings is heard, and whatever is not read is told. */
import { describe, expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

const LIST = 'bonnet 118 121\nroof 99 98\n';

describe('a line above a list that somebody typed', () => {
  test('is told where nothing of it is read, as one below the list is', () => {
    const lines = 'Tarn Wexel ask for the blue key\n27/11/2026 - Sam\nrear wiper broken\n';
    expect(values(lines + LIST, { unit: 'um' })).toHaveLength(4);
    expect(briefs(lines + LIST, { unit: 'um' })).toEqual([
      '1:1+31 warning line-left-out',
      '2:1+16 warning line-left-out',
      '3:1+17 warning line-left-out',
    ]);
  });

  test.each(['Bonnet;112 µm\nRoof;110 µm\n', 'bonnet: 112, 109 µm\nroof: 110, 108 µm\n'])(
    'is told whatever form the list has: %j',
    (list) => {
      expect(briefs(`rear wiper broken\n${list}`)).toEqual(['1:1+17 warning line-left-out']);
    },
  );

  test.each(['Date: 2026-11-27', 'Operator: Sam', '----', 'Unit: um', 'all um'])(
    'that is heard, or a rule, is not: %j',
    (line) => {
      expect(briefs(`${line}\n${LIST}`, { unit: 'um' })).toEqual([]);
    },
  );
});

describe('a unit of all readings', () => {
  test.each([
    'all um, gauge zeroed on plate',
    'gauge zeroed on plate; all readings in microns',
    'readings in um | Sam',
    'Tarn Wexel estate, 26/11/2026, um',
    'Tarn Wexel estate\n26/11/2026, um',
    'Tarn Wexel estate 26/11/2026, readings in um',
  ])('is heard as one part of a line: %j', (line) => {
    expect(values(`${line}\n${LIST}`)).toHaveLength(4);
  });

  test('is asked for where two parts name two, and where it is that of a number', () => {
    expect(read(`all um, values in mil, gauge zeroed\n${LIST}`).value).toBeUndefined();
    expect(read(`Tolerance, 5, um\n${LIST}`).value).toBeUndefined();
  });
});

test('a title above names of columns is a note, for programs write one', () => {
  const table = 'panel,reading_um\nbonnet,101\nroof,99\n';
  expect(briefs(`Paint report\n${table}`)).toEqual(['1:1+12 note line-left-out']);
  expect(briefs(`Paint report,,\n${table}`)).toEqual(['1:1+12 note line-left-out']);
});
