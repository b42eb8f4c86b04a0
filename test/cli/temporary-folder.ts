import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';

const base = mkdtempSync(join(tmpdir(), 'leastcut-test-'));
afterAll(() => rmSync(base, { recursive: true, force: true }));

/** An empty folder, gone after the tests of the file. */
export const temporaryFolder = (): string => mkdtempSync(join(base, 'folder-'));
