/**
 * `npm run fuzz -- --n 100000 [--seed 7] [--of reading]`: mutated files are read, some surveyed and planned; with
 * `--of classes` visits are compared and classes graded. A case that goes wrong is first written under
 * test/fuzz/found/ (of visits and classes each file of it, under test/fuzz/found-classes/), then told. The work runs in a thread, so that a
 * hang is seen from outside; time is processor time, so that a busy machine is not taken for one.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { parseArgs } from 'node:util';
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads';
import { caseOf, startingFiles } from './cases.ts';
import { depthOf, faultOf } from './check.ts';
import { faultOfClass } from './check-classes.ts';
import { classCaseOf, classStarts } from './class-cases.ts';

const HANG_SECONDS = 2;
const POLL_MS = 250;

type Work = {
  readonly of: keyof typeof subjects;
  readonly seed: number;
  readonly from: number;
  readonly to: number;
  readonly at: Int32Array;
};
type Fault = { readonly number: number; readonly why: string };

/** What is fuzzed: what is wrong with a case, the files of it, and where one went wrong. */
type Subject = {
  readonly fault: (seed: number, number: number) => string | undefined;
  readonly bytes: (seed: number, number: number) => readonly (readonly [string, Uint8Array])[];
  readonly from: number;
};

const reading = (): Subject => {
  const files = startingFiles('samples');
  return {
    fault: (seed, number) => faultOf(caseOf(files, seed, number), depthOf(number)),
    bytes: (seed, number) => [[`found/${seed}-${number}.bin`, caseOf(files, seed, number).bytes]],
    from: files.length,
  };
};

const classes = (): Subject => {
  const starts = classStarts('.');
  return {
    fault: (seed, number) => faultOfClass(classCaseOf(starts, seed, number)),
    bytes: (seed, number) => {
      const { files, settings, worked, gloss } = classCaseOf(starts, seed, number);
      return [...files, settings, worked, gloss].flatMap((file, i) =>
        file === undefined
          ? []
          : [[`found-classes/${seed}-${number}/${i}-${file.name}`, file.bytes] as const],
      );
    },
    from: starts.visits.length + starts.surveys.length,
  };
};

const subjects = { reading, classes } as const;

const processorSeconds = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
};

function work({ of, seed, from, to, at }: Work): void {
  const subject = subjects[of]();
  for (let number = from; number < to; number += 1) {
    Atomics.store(at, 0, number);
    const start = processorSeconds();
    const fault = subject.fault(seed, number);
    const took = processorSeconds() - start;
    const slow = took > HANG_SECONDS ? `took ${took.toFixed(1)} s` : undefined;
    const why = fault ?? slow;
    if (why !== undefined) parentPort?.postMessage({ number, why } satisfies Fault);
  }
}

function report(subject: Subject, seed: number, { number, why }: Fault): void {
  for (const [name, bytes] of subject.bytes(seed, number)) {
    const path = join('test', 'fuzz', name);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, bytes);
    console.log(path);
  }
  console.log(`case ${number}: ${why}`);
}

/** Runs from one number to the end, or to a hang; gives the number to go on from. */
function watch(
  of: Work['of'],
  seed: number,
  from: number,
  to: number,
  tell: (fault: Fault) => void,
): Promise<number> {
  const at = new Int32Array(new SharedArrayBuffer(4));
  Atomics.store(at, 0, from);
  const worker = new Worker(new URL(import.meta.url), {
    workerData: { of, seed, from, to, at } satisfies Work,
  });
  return new Promise((resolve, reject) => {
    let last = { number: from, since: processorSeconds() };
    const timer = setInterval(() => {
      const number = Atomics.load(at, 0);
      if (number !== last.number) last = { number, since: processorSeconds() };
      else if (processorSeconds() - last.since > 3 * HANG_SECONDS) {
        clearInterval(timer);
        worker.removeAllListeners();
        tell({ number, why: `hangs: not done after ${3 * HANG_SECONDS} s` });
        void worker.terminate().then(() => resolve(number + 1));
      }
    }, POLL_MS);
    worker.on('message', tell);
    worker.on('error', (problem) => {
      clearInterval(timer);
      tell({ number: Atomics.load(at, 0), why: `the thread died: ${problem.message}` });
      resolve(Atomics.load(at, 0) + 1);
    });
    worker.on('exit', (code) => {
      clearInterval(timer);
      if (code === 0) resolve(to);
      else reject(new Error(`the thread ended with ${code}`));
    });
  });
}

async function main(): Promise<void> {
  const { values } = parseArgs({
    options: {
      n: { type: 'string', default: '10000' },
      seed: { type: 'string', default: '1' },
      of: { type: 'string', default: 'reading' },
    },
  });
  const of = values.of === 'classes' ? 'classes' : 'reading';
  const subject = subjects[of]();
  const [count, seed] = [Number(values.n), Number(values.seed)];
  const start = Date.now();
  let faults = 0;
  const tell = (fault: Fault): void => {
    faults += 1;
    report(subject, seed, fault);
  };
  let next = 0;
  while (next < count) next = await watch(of, seed, next, count, tell);
  const seconds = (Date.now() - start) / 1000;
  console.log(
    `${count} cases from ${subject.from} files, seed ${seed}: ${faults} faults, ${seconds.toFixed(0)} s, ${processorSeconds().toFixed(0)} s of processor time`,
  );
  if (faults > 0) process.exitCode = 1;
}

if (isMainThread) await main();
else work(workerData as Work);
