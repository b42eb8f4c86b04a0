/** Runs a command to its end in a bare environment. */
import { spawn } from 'node:child_process';

export type Run = { readonly code: number | null; readonly out: string; readonly err: string };
export type RunOptions = {
  readonly stdin?: string | Uint8Array;
  readonly env?: Readonly<Record<string, string>>;
  /** The working directory; that of the caller where it is not said. */
  readonly cwd?: string;
};

/** What any program needs, and nothing that decides how the output looks. */
export const bareEnvironment = (): Record<string, string> =>
  Object.fromEntries(
    ['PATH', 'HOME', 'TMPDIR', 'SystemRoot'].flatMap((name) => {
      const value = process.env[name];
      return value === undefined ? [] : [[name, value] as const];
    }),
  );

export function runCommand(
  command: string,
  words: readonly string[],
  { stdin, env = {}, cwd = process.cwd() }: RunOptions = {},
): Promise<Run> {
  return new Promise((resolve, reject) => {
    const child = spawn(command, words, { cwd, env: { ...bareEnvironment(), ...env } });
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
