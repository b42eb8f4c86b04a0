import { chmodSync, writeFileSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { expect, test } from 'vitest';
import { temporaryFolder } from '../cli/temporary-folder.ts';
import { findBrowser, startBrowser } from './browser.ts';

test('a browser is the one that is named, else the first of its names in the path, else none', () => {
  const folder = temporaryFolder();
  const path = [temporaryFolder(), folder].join(delimiter);
  expect(findBrowser({ PATH: path })).toBeUndefined();
  writeFileSync(join(folder, 'google-chrome'), '');
  expect(findBrowser({ PATH: path })).toBe(join(folder, 'google-chrome'));
  writeFileSync(join(folder, 'chromium'), '');
  expect(findBrowser({ PATH: path })).toBe(join(folder, 'chromium'));
  expect(findBrowser({ PATH: path, CHROMIUM: '/opt/own' })).toBe('/opt/own');
  expect(findBrowser({ PATH: path, CHROMIUM: '' })).toBe(join(folder, 'chromium'));
});

test('a browser that ends at once, or is not there, is told and not waited for', async () => {
  const folder = temporaryFolder();
  const ends = join(folder, 'chromium');
  writeFileSync(ends, '#!/bin/sh\nexit 3\n');
  chmodSync(ends, 0o755);
  await expect(startBrowser(ends)).rejects.toThrow('the browser ended with 3');
  await expect(startBrowser(join(folder, 'missing'))).rejects.toThrow('ENOENT');
});
