/**
 * Asks the built program in a process that stays for the next question, and so is started once: a start is most of
 * what a run costs. It is for what a page, a record or a message says. What depends on pipes, signals, threads or the
 * beginning and end of a process is tried with `runLeastcut`, which runs the program as a user does.
 */
import { type ChildProcess, fork } from 'node:child_process';
import { ftruncateSync, openSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { bareEnvironment, type Run, type RunOptions } from './run-command.ts';
import { program, projectRoot } from './run-leastcut.ts';
import type { Answered, Question } from './serve.ts';
import { temporaryFolder } from './temporary-folder.ts';

type Ask = (question: Question) => Promise<Run>;

let ask: Ask | undefined;
let before: Promise<unknown> = Promise.resolve();

/** One question at a time: a process has one working directory and one environment. */
export function askLeastcut(
  words: readonly string[],
  { stdin = '', env = {}, cwd = projectRoot }: RunOptions = {},
): Promise<Run> {
  const toProgram = ask ?? startProgram();
  ask = toProgram;
  const question = { words, stdin, env: { ...bareEnvironment(), ...env }, cwd };
  const answer = before.then(() => toProgram(question));
  before = answer.catch(() => undefined);
  return answer;
}

function startProgram(): Ask {
  const folder = temporaryFolder();
  const [out, err] = [outputIn(folder, 'out'), outputIn(folder, 'err')];
  const home = dirname(dirname(program()));
  const child = fork(join(home, 'serve.cjs'), [join(home, 'dist')], {
    env: bareEnvironment(),
    execArgv: [],
    serialization: 'advanced',
    stdio: ['ignore', out.descriptor, err.descriptor, 'ipc'],
  });
  // It ends with the process that asks, and does not keep that from ending.
  child.unref();
  child.channel?.unref();
  return async (question) => {
    child.send(question);
    const answered = await nextAnswer(child);
    const said = { out: out.taken(), err: err.taken() };
    if ('bug' in answered) throw new Error(answered.bug);
    return { code: answered.code, ...said };
  };
}

/** A file that is written to its end and emptied when it is read. */
function outputIn(folder: string, name: string) {
  const path = join(folder, name);
  const descriptor = openSync(path, 'a');
  return {
    descriptor,
    taken: (): string => {
      const text = readFileSync(path, 'utf8');
      ftruncateSync(descriptor);
      return text;
    },
  };
}

const nextAnswer = (child: ChildProcess): Promise<Answered> =>
  new Promise((resolve, reject) => {
    const gone = (): void => reject(new Error('the program that is asked has gone'));
    child.once('exit', gone);
    child.once('message', (answered: Answered) => {
      child.off('exit', gone);
      resolve(answered);
    });
  });
