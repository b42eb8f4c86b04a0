/** The command of a case folder (`test/cli/golden.ts`): its words, environment and standard input. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { shellWords } from './shell-words.ts';

export const caseNames = (folder: string): readonly string[] =>
  readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name)
    .sort();

export type CaseCommand = {
  readonly words: readonly string[];
  readonly env: Readonly<Record<string, string>>;
  readonly stdin: Uint8Array;
};

/** As it is run from `root`, with `tmp` for a folder that is thrown away. */
export function commandOfCase(folder: string, root: string, tmp: string): CaseCommand {
  const line = readFileSync(join(folder, 'cmd'), 'utf8')
    .trim()
    .replaceAll('{case}', relative(root, folder))
    .replaceAll('{tmp}', tmp);
  const words = shellWords(line);
  const first = words.findIndex((word) => !/^[A-Z_]+=/.test(word));
  const piped = join(folder, 'stdin');
  return {
    words: words.slice(first),
    env: Object.fromEntries(words.slice(0, first).map(assignment)),
    stdin: existsSync(piped) ? readFileSync(piped) : new Uint8Array(),
  };
}

const assignment = (word: string): readonly [string, string] => {
  const at = word.indexOf('=');
  return [word.slice(0, at), word.slice(at + 1)];
};
