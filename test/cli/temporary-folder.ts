import { mkdtempSync } from 'node:fs';
import { join } from 'node:path';
import { inject } from 'vitest';

/** An empty folder, gone after the run. */
export const temporaryFolder = (): string => mkdtempSync(join(inject('folder'), 'folder-'));
