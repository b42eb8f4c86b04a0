/**
 * Builds the program once before the tests, with the flags of `npm run build`, into a folder of its own:
 * whole-program tests run what a user runs, and never while somebody else's build replaces it. Beside it stands
 * the process that answers `askLeastcut`.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildSync } from 'esbuild';
import type { TestProject } from 'vitest/node';
import { buildProgram } from './build-program.ts';

const root = join(import.meta.dirname, '../..');

declare module 'vitest' {
  interface ProvidedContext {
    /** The built `bin/leastcut.js`. */
    program: string;
    /** What tests write stands in here. */
    folder: string;
  }
}

export function setup(project: TestProject): () => void {
  const folder = mkdtempSync(join(tmpdir(), 'leastcut-build-'));
  project.provide('program', buildProgram(root, folder));
  buildSync({
    entryPoints: [join(import.meta.dirname, 'serve.ts')],
    outfile: join(folder, 'serve.cjs'),
    bundle: true,
    platform: 'node',
    logLevel: 'warning',
  });
  project.provide('folder', folder);
  return () => rmSync(folder, { recursive: true, force: true });
}
