/**
 * Whole-program cases as folders: `cmd` (one line; NAME=value words before it are its environment),
 * `stdin` where something is piped, and what must come out: `expected.out`, `expected.err`,
 * `expected.code`. RECORD=1 writes them anew, to be reviewed like code.
 * `{case}` in `cmd` stands for the folder, `{tmp}` for an empty folder that is thrown away after; in what
 * comes out, `{node}` for the version and platform that the run was by.
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect } from 'vitest';
import { commandOfCase } from './case-command.ts';
import type { Run, RunOptions } from './run-command.ts';
import { projectRoot } from './run-leastcut.ts';

/** As `doctor` names it. */
const node = `${process.version} on ${process.platform} ${process.arch}`;

export type Prepare = (tmp: string) => void;
type RunProgram = (words: readonly string[], options: RunOptions) => Promise<Run>;

/** Runs the case of a folder; `{tmp}` is named so in what comes back, since its name differs each time. */
export async function runCase(
  folder: string,
  runProgram: RunProgram,
  prepare: Prepare = () => {},
): Promise<Run> {
  const tmp = mkdtempSync(join(tmpdir(), 'leastcut-case-'));
  try {
    prepare(tmp);
    const { words, env, stdin } = commandOfCase(folder, projectRoot, tmp);
    const run = await runProgram(words, { env, stdin });
    const named = (text: string): string =>
      text.replaceAll(tmp, '{tmp}').replaceAll(node, '{node}');
    return { ...run, out: named(run.out), err: named(run.err) };
  } finally {
    rmSync(tmp, { recursive: true, force: true });
  }
}

/** The run against what was recorded, byte by byte; with RECORD=1 it is what will be recorded. */
export function expectRecorded(folder: string, { code, out, err }: Run): void {
  const wanted = { 'expected.out': out, 'expected.err': err, 'expected.code': `${code}\n` };
  for (const [name, text] of Object.entries(wanted)) {
    const file = join(folder, name);
    if (process.env['RECORD'] === '1') writeFileSync(file, text);
    expect(text, name).toBe(readFileSync(file, 'utf8'));
  }
}
