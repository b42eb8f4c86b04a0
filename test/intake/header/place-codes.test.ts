import { expect, test } from 'vitest';
import { arePlaceCodes } from '../../../src/intake/header/place-codes.ts';
import { values } from '../helpers.ts';

const where = (label: string) => ['LF', 'RF', 'LR', 'RR'].includes(label);

test('codes are places where some say where, or where they come in pairs of left and right', () => {
  expect(arePlaceCodes(['LF', 'RF', 'BON'], where)).toBe(true);
  expect(arePlaceCodes(['KVL', 'KVR', 'TVL', 'TVR'], () => false)).toBe(true);
  expect(arePlaceCodes(['AVG', 'AVD', 'ARG', 'ARD'], () => false)).toBe(true);
  expect(arePlaceCodes(['右F', '左F'], () => false)).toBe(true);
});

test('and people, days or other words are none', () => {
  expect(arePlaceCodes(['Anna', 'Ben'], where)).toBe(false);
  expect(arePlaceCodes(['MON', 'TUE', 'WED'], where)).toBe(false);
  expect(arePlaceCodes(['LF', 'LF'], where)).toBe(false);
});

test('they are the panels of a table, in its rows or its columns', () => {
  const more = { mayBePanel: where };
  expect(values('Pos,µm,µm,µm\nLF,89,91,88\nRF,95,102,91\nBON,107,110,106\n', more)).toHaveLength(
    9,
  );
  const across = 'N°;AVG;AVD;ARG;ARD\n;µm;µm;µm;µm\n1;128;139;161;138\n2;128;143;139;135\n';
  expect(values(across)?.slice(0, 2)).toEqual([
    ['AVG', '1', 1, 128],
    ['AVD', '1', 1, 139],
  ]);
});
