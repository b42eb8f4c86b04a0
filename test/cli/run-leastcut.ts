/** Runs the built program as a user does, in a bare environment, from the top of the project. */
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { inject } from 'vitest';

export const projectRoot = join(import.meta.dirname, '../..');

export type Run = { readonly code: number | null; readonly out: string; readonly err: string };
export type RunOptions = {
  readonly stdin?: string | Uint8Array;
  readonly env?: Readonly<Record<string, string>>;
  /** The working directory; the top of the project where it is not said. */
  readonly cwd?: string;
};

/** What any program needs, and nothing that decides how the output looks. */
const bareEnvironment = (): Record<string, string> =>
  Object.fromEntries(
    ['PATH', 'HOME', 'TMPDIR', 'SystemRoot'].flatMap((name) => {
      const value = process.env[name];
      return value === undefined ? [] : [[name, value] as const];
    }),
  );

export const program = (): string => inject('program');

export function runLeastcut(words: readonly string[], options: RunOptions = {}): Promise<Run> {
  return runCommand(process.execPath, [program(), ...words], options);
}

/** `leastcut …` as a line for a shell. */
export const runShell = (line: string, options: RunOptions = {}): Promise<Run> =>
  runCommand('bash', ['--norc', '-o', 'pipefail', '-c', line], {
    ...options,
    env: { NODE: process.execPath, PROGRAM: program(), ...options.env },
  });

function runCommand(
  command: string,
  words: readonly string[],
  { stdin, env = {}, cwd = projectRoot }: RunOptions,
): Promise<Run> {
  return new Promise((resolve, reject) => {
    const child = spawn(command, words, {
      cwd,
      env: { ...bareEnvironment(), ...env },
    });
    const out: Buffer[] = [];
    const err: Buffer[] = [];
    child.stdout.on('data', (chunk: Buffer) => out.push(chunk));
    child.stderr.on('data', (chunk: Buffer) => err.push(chunk));
    child.on('error', reject);
    child.on('close', (code) =>
      resolve({
        code,
        out: Buffer.concat(out).toString('utf8'),
        err: Buffer.concat(err).toString('utf8'),
      }),
    );
    child.stdin.on('error', () => {});
    child.stdin.end(stdin ?? '');
  });
}
