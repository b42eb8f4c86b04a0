import { expect, test } from 'vitest';
import { namesTogether } from '../../src/tasks/names-together.ts';

const told = (...pairs: readonly (readonly [string, string])[]) =>
  namesTogether(
    pairs.map(([label, panel]) => ({ label, panel })),
    { nameOf: (panel) => `${panel} lid`, placeOf: (label) => ({ file: `${label}.csv` }) },
  ).map(({ message, at }) => [message, at?.file]);

test('names of one panel that mean two to many people are told together, at the second', () => {
  expect(told(['boot', 'boot'], ['tailgate', 'boot'], ['roof', 'roof'])).toEqual([
    ['"boot" and "tailgate" are read as one panel, the boot lid', 'tailgate.csv'],
  ]);
});

test('another way to write a name is no other name', () => {
  expect(told(['Boot lid', 'boot'], ['boot_lid', 'boot'], ['BOOT-LID', 'boot'])).toEqual([]);
});

test('names of panels of their own are no matter', () => {
  expect(told(['boot', 'boot'], ['roof', 'roof'])).toEqual([]);
});
