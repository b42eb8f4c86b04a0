/** Runs the built program as a user does, in a bare environment, from the top of the project. */
import { join } from 'node:path';
import { inject } from 'vitest';
import { type Run, type RunOptions, runCommand } from './run-command.ts';

export const projectRoot = join(import.meta.dirname, '../..');

export const program = (): string => inject('program');

export function runLeastcut(words: readonly string[], options: RunOptions = {}): Promise<Run> {
  return runCommand(process.execPath, [program(), ...words], { cwd: projectRoot, ...options });
}

/** `leastcut …` as a line for a shell. */
export const runShell = (line: string, options: RunOptions = {}): Promise<Run> =>
  runCommand('bash', ['--norc', '-o', 'pipefail', '-c', line], {
    cwd: projectRoot,
    ...options,
    env: { NODE: process.execPath, PROGRAM: program(), ...options.env },
  });
