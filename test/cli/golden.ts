/**
 * Whole-program cases as folders: `cmd` (one line; NAME=value words before it are its environment),
 * `stdin` where something is piped, and what must come out: `expected.out`, `expected.err`,
 * `expected.code`. RECORD=1 writes them anew, to be reviewed like code.
 * `{case}` in `cmd` stands for the folder, `{tmp}` for an empty folder that is thrown away after.
 */
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { expect } from 'vitest';
import { projectRoot, type Run, runLeastcut } from './run-leastcut.ts';
import { shellWords } from './shell-words.ts';

export const caseNames = (folder: string): readonly string[] =>
  readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name)
    .sort();

export type Prepare = (tmp: string) => void;

/** Runs the case of a folder; `{tmp}` is named so in what comes back, since its name differs each time. */
export async function runCase(folder: string, prepare: Prepare = () => {}): Promise<Run> {
  const tmp = mkdtempSync(join(tmpdir(), 'leastcut-case-'));
  try {
    prepare(tmp);
    const line = readFileSync(join(folder, 'cmd'), 'utf8')
      .trim()
      .replaceAll('{case}', relative(projectRoot, folder))
      .replaceAll('{tmp}', tmp);
    const words = shellWords(line);
    const first = words.findIndex((word) => !/^[A-Z_]+=/.test(word));
    const env = Object.fromEntries(words.slice(0, first).map(assignment));
    const piped = join(folder, 'stdin');
    const stdin = existsSync(piped) ? readFileSync(piped) : '';
    const run = await runLeastcut(words.slice(first), { env, stdin });
    const named = (text: string): string => text.replaceAll(tmp, '{tmp}');
    return { ...run, out: named(run.out), err: named(run.err) };
  } finally {
    rmSync(tmp, { recursive: true, force: true });
  }
}

const assignment = (word: string): readonly [string, string] => {
  const at = word.indexOf('=');
  return [word.slice(0, at), word.slice(at + 1)];
};

/** The run against what was recorded, byte by byte; with RECORD=1 it is what will be recorded. */
export function expectRecorded(folder: string, { code, out, err }: Run): void {
  const wanted = { 'expected.out': out, 'expected.err': err, 'expected.code': `${code}\n` };
  for (const [name, text] of Object.entries(wanted)) {
    const file = join(folder, name);
    if (process.env['RECORD'] === '1') writeFileSync(file, text);
    expect(text, name).toBe(readFileSync(file, 'utf8'));
  }
}
