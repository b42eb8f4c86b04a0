/**
 * Runs are killed by every signal that ends one: at moments drawn from all its time, and, where it
 * writes, as soon as its file stands beside the old one. The output is the old or the new, and only
 * SIGKILL may leave anything beside it. A batch that is cut off goes on to the same bytes.
 */
import { spawn } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { carsCsv } from '../cli/cars.ts';
import { bareEnvironment, runCommand } from '../cli/run-command.ts';
import { createRandom, type Random } from '../intake/corpus/random.ts';
import type { Attack, AttackSetup } from './attack.ts';

const signals = ['SIGKILL', 'SIGTERM', 'SIGINT', 'SIGHUP'] as const;
type Signal = (typeof signals)[number];

const old = 'yesterday\n';

type Killed = {
  readonly ended: string | null;
  /** Whether its file stood beside the old one when it was killed. */
  readonly whileWriting: boolean;
};

/** Kills a run `ms` after `isTime` first holds. */
async function killedRun(
  { program, folder }: AttackSetup,
  words: readonly string[],
  signal: Signal,
  when: { readonly isTime: () => boolean; readonly ms: number },
): Promise<Killed> {
  const child = spawn(process.execPath, [program, ...words], {
    cwd: folder,
    env: bareEnvironment(),
    stdio: 'ignore',
  });
  const ended = new Promise<string | null>((resolve) => child.on('close', (_, by) => resolve(by)));
  while (child.exitCode === null && !when.isTime()) await pause(1);
  await pause(when.ms);
  const whileWriting = begun(folder).length > 0;
  child.kill(signal);
  return { ended: await ended, whileWriting };
}

const begun = (folder: string): readonly string[] =>
  readdirSync(folder).filter((name) => name.startsWith('.leastcut-'));

async function killOneFile(setup: AttackSetup, random: Random, k: number, wanted: string) {
  const { folder } = setup;
  const out = join(folder, 'out.ndjson');
  writeFileSync(out, old);
  const signal = signals[k % signals.length] ?? 'SIGKILL';
  // Four signals at each kind of moment in turn.
  const isToWrite = Math.floor(k / signals.length) % 2 === 0;
  const when = isToWrite
    ? { isTime: () => begun(folder).length > 0, ms: random.int(0, 3) }
    : { isTime: () => true, ms: random.int(0, 1200) };
  const words = ['survey', 'cars.csv', '--format', 'ndjson', '-o', out, '--force'];
  const { ended, whileWriting } = await killedRun(setup, words, signal, when);
  const text = readFileSync(out, 'utf8');
  const left = begun(folder);
  for (const name of left) rmSync(join(folder, name));
  const state = text === old ? 'old' : text === wanted ? 'new' : 'half';
  return { signal, state, ended, whileWriting, left: left.length };
}

async function killBatch(setup: AttackSetup, random: Random, k: number, wanted: string) {
  const { folder, program } = setup;
  const out = join(folder, 'batch.ndjson');
  const part = `${out}.part`;
  for (const path of [out, part]) rmSync(path, { force: true });
  const words = ['batch', 'cars.csv', '--command', 'survey', '--workers', '2', '-o', out];
  const signal = signals[k % signals.length] ?? 'SIGKILL';
  await killedRun(setup, words, signal, { isTime: () => existsSync(part), ms: random.int(0, 400) });
  if (existsSync(out)) return readFileSync(out, 'utf8') === wanted ? 'whole' : 'half';
  await runCommand(process.execPath, [program, ...words, '--resume'], { cwd: folder });
  const text = existsSync(out) ? readFileSync(out, 'utf8') : '';
  return text === wanted ? 'resumed' : 'half';
}

const tally = (words: readonly string[]): string =>
  [...new Set(words)].map((one) => `${words.filter((w) => w === one).length} ${one}`).join(', ');

async function whole(setup: AttackSetup, words: readonly string[]): Promise<string> {
  const { out } = await runCommand(process.execPath, [setup.program, ...words], {
    cwd: setup.folder,
  });
  return out;
}

export const kills: Attack = {
  name: 'kills',
  claim: 'half an output, or a file left beside it, where a run is killed',
  run: async (setup) => {
    const random = createRandom(setup.times);
    writeFileSync(join(setup.folder, 'cars.csv'), carsCsv(40));
    const wanted = await whole(setup, ['survey', 'cars.csv', '--format', 'ndjson']);
    const files = [];
    for (let k = 0; k < setup.times; k += 1) {
      files.push(await killOneFile(setup, random, k, wanted));
    }
    const wantedBatch = await whole(setup, ['batch', 'cars.csv', '--command', 'survey']);
    const batches = [];
    for (let k = 0; k < setup.times; k += 4) {
      batches.push(await killBatch(setup, random, k / 4, wantedBatch));
    }
    const faults = [
      ...files
        .filter(({ state }) => state === 'half')
        .map(({ signal }) => `half a file after ${signal}`),
      ...files
        .filter(({ signal, left }) => signal !== 'SIGKILL' && left > 0)
        .map(({ signal }) => `a file is left beside the output after ${signal}`),
      ...batches.filter((state) => state === 'half').map(() => 'a batch did not go on to its end'),
    ];
    const ended = files.filter((one) => one.ended !== null);
    const writing = ended.filter(({ whileWriting }) => whileWriting).length;
    return {
      figure: `${files.length} files: ${ended.length} killed before their end, ${writing} of them while they wrote, ${tally(files.map(({ state }) => state))}; ${batches.length} batches: ${tally(batches)}`,
      faults,
    };
  },
};
