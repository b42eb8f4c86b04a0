import { expect, expectTypeOf, test } from 'vitest';
import { type Micrometres, micrometres } from '../../src/base/units.ts';
import { listDefaults, number, type Values, values } from '../../src/formats/default.ts';

const tree = {
  floor: number(micrometres(80), 'µm', 'assumption', '', 'the least film that may stay'),
  share: { of: { clear: number(0.4, '1', 'derived', 'from the floor', 'share of clear coat') } },
  ladder: [number(1, '1', 'assumption', '', 'first'), number(2, '1', 'assumption', '', 'second')],
} as const;

test('the values of a tree are its numbers in the same shape', () => {
  expect(values(tree)).toEqual({ floor: 80, share: { of: { clear: 0.4 } }, ladder: [1, 2] });
});

test('values keep their units, and a literal becomes any number', () => {
  expectTypeOf<Values<typeof tree>['floor']>().toEqualTypeOf<Micrometres>();
  expectTypeOf(values(tree).share.of.clear).toEqualTypeOf<number>();
  expectTypeOf(values(tree).ladder[1]).toEqualTypeOf<number>();
});

test('defaults are listed in the order they are written, each with its path and grounds', () => {
  expect(listDefaults(tree).map(({ path, value }) => [path, value])).toEqual([
    ['floor', 80],
    ['share.of.clear', 0.4],
    ['ladder.0', 1],
    ['ladder.1', 2],
  ]);
  expect(listDefaults(tree)[1]).toEqual({
    path: 'share.of.clear',
    value: 0.4,
    unit: '1',
    basis: 'derived',
    source: 'from the floor',
    meaning: 'share of clear coat',
    range: [0.004, 40],
  });
});

test('a single default is a tree', () => {
  expect(values(tree.floor)).toBe(80);
  expect(listDefaults(tree.floor)).toEqual([{ path: '', ...tree.floor }]);
});

test('a branch may be named as a field of a default is', () => {
  const named = { value: tree.floor, basis: { unit: tree.floor } };
  expect(values(named)).toEqual({ value: 80, basis: { unit: 80 } });
});
