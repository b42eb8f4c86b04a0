/**
 * The built program in a process that stays: runs one command after another, as `ask-leastcut.ts` asks. What a
 * command writes goes to the descriptors 1 and 2 as ever; what it reads comes with the question.
 */
import { Readable } from 'node:stream';
import { loadProgram } from '../../src/cli/load-program.ts';

export type Question = {
  readonly words: readonly string[];
  readonly stdin: string | Uint8Array;
  readonly env: Readonly<Record<string, string>>;
  readonly cwd: string;
};
export type Answered = { readonly code: number } | { readonly bug: string };

const { program } = loadProgram(process.argv[2] ?? '');

async function answerTo({ words, stdin, env, cwd }: Question): Promise<Answered> {
  for (const name of Object.keys(process.env)) delete process.env[name];
  Object.assign(process.env, env);
  process.chdir(cwd);
  Object.defineProperty(process, 'stdin', {
    value: Readable.from(stdin.length === 0 ? [] : [Buffer.from(stdin)]),
    configurable: true,
  });
  try {
    return { code: await program.run(words) };
  } catch (problem) {
    return { bug: problem instanceof Error ? String(problem.stack) : String(problem) };
  }
}

process.on('message', (question: Question) => {
  void answerTo(question).then((answered) => process.send?.(answered));
});
