import { expect, test } from 'vitest';
import { namesTogether } from '../../../src/tasks/read/names-together.ts';
import { reading } from '../../film/car-builder.ts';

/** What is told of readings, each by its label and the panel it is matched to. */
const told = (...pairs: readonly (readonly [label: string, panel: string])[]) =>
  namesTogether(
    new Map(
      pairs.map(([label, panel], k) => [reading(panel, `${k}`, 100), reading(label, `${k}`, 100)]),
    ),
    { nameOf: (panel) => `${panel} lid`, placeOf: ({ point }) => ({ file: `row ${point}` }) },
  ).map(({ message, at }) => [message, at?.file]);

test('names of one panel that mean two to many people are told together, at the second', () => {
  expect(
    told(['boot', 'boot'], ['tailgate', 'boot'], ['tailgate', 'boot'], ['roof', 'roof']),
  ).toEqual([['"boot" and "tailgate" are read as one panel, the boot lid', 'row 1']]);
});

test('another way to write a name is no other name', () => {
  expect(told(['Boot lid', 'boot'], ['boot_lid', 'boot'], ['BOOT-LID', 'boot'])).toEqual([]);
});

test('names of panels of their own are no matter', () => {
  expect(told(['boot', 'boot'], ['roof', 'roof'])).toEqual([]);
});
