import { existsSync } from 'node:fs';
import { expect, test } from 'vitest';
import { longest } from './longest-first.ts';

test('each file that comes first is there', () => {
  expect(longest.filter((path) => !existsSync(path))).toEqual([]);
});
