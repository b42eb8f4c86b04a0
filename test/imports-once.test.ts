import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { micrometres } from '../src/base/units.ts';

test('what a module imports by name is a constant, for which no getter is called', () => {
  expect(String(() => micrometres(1))).toMatch(/=> micrometres\(1\)/);
});

test('a fault is told at the line where it was written', () => {
  const stack = new Error('of this line').stack ?? '';
  const lines = readFileSync(import.meta.filename, 'utf8').split('\n');
  const written = 1 + lines.findIndex((line) => line.includes("new Error('of this line')"));
  expect(/imports-once\.test\.ts:(\d+):/.exec(stack)?.[1]).toBe(`${written}`);
});
