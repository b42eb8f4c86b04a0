import { homedir } from 'node:os';
import { afterEach, expect, test, vi } from 'vitest';
import { surroundings } from '../../src/cli/surroundings.ts';

afterEach(() => void vi.unstubAllEnvs());

test.each([
  ['as it is', undefined],
  ['named', '/somewhere/else'],
  ['empty', ''],
])('the home is what Node says it is, with HOME %s', (_, home) => {
  if (home !== undefined) vi.stubEnv('HOME', home);
  expect(surroundings().home).toBe(homedir());
});

test('the home is known where the environment does not name it', () => {
  vi.stubEnv('HOME', undefined);
  expect(surroundings().home).toBe(homedir());
});
