/**
 * Builds the program once before the tests, with the flags of `npm run build`, into a folder of its own:
 * whole-program tests run what a user runs, and never while somebody else's build replaces it.
 */
import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { shellWords } from './shell-words.ts';

const root = join(import.meta.dirname, '../..');

declare module 'vitest' {
  interface ProvidedContext {
    /** The built `bin/leastcut.js`. */
    program: string;
  }
}

export function setup(project: TestProject): () => void {
  const folder = mkdtempSync(join(tmpdir(), 'leastcut-build-'));
  const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
    scripts: { build: string };
  };
  const [, build = ''] = scripts.build.split(' && ');
  const [bundler = '', ...flags] = shellWords(build.replaceAll('\\"', '"'));
  const outdir = `--outdir=${join(folder, 'dist')}`;
  execFileSync(
    join(root, 'node_modules/.bin', bundler),
    flags.map((flag) => (flag.startsWith('--outdir=') ? outdir : flag)),
    { cwd: root, stdio: 'inherit' },
  );
  cpSync(join(root, 'bin'), join(folder, 'bin'), { recursive: true });
  cpSync(join(root, 'package.json'), join(folder, 'package.json'));
  project.provide('program', join(folder, 'bin/leastcut.js'));
  return () => rmSync(folder, { recursive: true, force: true });
}
