/** How a batch goes: counted while it runs, told at its end. */
import { counted } from '../../base/counted.ts';
import { inWords } from '../../base/in-words.ts';
import { printable } from '../../render/printable.ts';
import type { JobStatus } from '../../report/batch/batch-record.ts';
import { exitCodes } from '../exit-code.ts';
import type { WhyNotDone } from './why-not-done.ts';

/** What of a job is counted. */
export type CountedJob = WhyNotDone & {
  readonly job: string;
  readonly status: JobStatus;
  readonly exit: number;
};

export type Tally = {
  readonly add: (job: CountedJob) => void;
  readonly seen: () => number;
  /** 0 when all went well, 3 when some did; when none did, the code that all share, else 65. */
  readonly exit: () => number;
  /** The count, and before it the first failures; `jobs` is how many there were to do. */
  readonly summary: (jobs: number, stood: number) => readonly string[];
};

/** Reasons that are told, and names of jobs for each; more are counted. */
const mostTold = 5;

type Alike = { readonly first: CountedJob; readonly jobs: string[]; count: number };
type Counts = Readonly<Record<JobStatus, number>>;

export function createTally(): Tally {
  const counts: Record<JobStatus, number> = { done: 0, refused: 0, failed: 0 };
  const exits = new Set<number>();
  const reasons = new Map<string, Alike>();
  const seen = (): number => counts.done + notDone(counts);
  return {
    add: (job) => {
      counts[job.status] += 1;
      if (job.status === 'done') return;
      exits.add(job.exit);
      note(job, reasons);
    },
    seen,
    exit: () => exitOf(counts, exits),
    summary: (jobs, stood) => [
      ...reasonTexts([...reasons.values()], notDone(counts)),
      countText(counts, { jobs, left: jobs - seen(), stood }),
    ],
  };
}

const notDone = ({ refused, failed }: Counts): number => refused + failed;

function note(job: CountedJob, reasons: Map<string, Alike>): void {
  const key = `${job.status} ${job.reason}`;
  const alike = reasons.get(key);
  if (alike === undefined) {
    if (reasons.size < mostTold) reasons.set(key, { first: job, jobs: [job.job], count: 1 });
    return;
  }
  alike.count += 1;
  if (alike.jobs.length < mostTold) alike.jobs.push(job.job);
}

function exitOf(counts: Counts, exits: ReadonlySet<number>): number {
  if (notDone(counts) === 0) return exitCodes.done;
  if (counts.done > 0) return exitCodes.someFailed;
  const [shared = exitCodes.data, ...others] = exits;
  return others.length === 0 ? shared : exitCodes.data;
}

function reasonTexts(told: readonly Alike[], all: number): readonly string[] {
  const more = all - told.reduce((sum, { count }) => sum + count, 0);
  return [
    ...told.map(alikeText),
    ...(more > 0 ? [`and ${counted(more, 'more job')} not done`] : []),
  ];
}

/** How many of the jobs there were to do came to what. */
type Of = { readonly jobs: number; readonly left: number; readonly stood: number };

function countText({ done, refused, failed }: Counts, { jobs, left, stood }: Of): string {
  const some = (count: number, what: string): readonly string[] =>
    count > 0 ? [`${count} ${what}`] : [];
  return [
    `${counted(jobs, 'job')}: ${done} done`,
    ...some(refused, 'refused'),
    ...some(failed, 'failed'),
    ...some(left, 'not begun'),
    ...some(stood, 'of them stood from before'),
  ].join(', ');
}

function alikeText({ first, jobs, count }: Alike): string {
  const names = jobs.map((job) => printable(JSON.stringify(job)));
  const more = count > jobs.length ? [`${count - jobs.length} more`] : [];
  const who = `${count === 1 ? 'job' : 'jobs'} ${inWords([...names, ...more])} ${first.status}`;
  return `${who}${count === 1 ? '' : ' alike'}\n${first.told.trimEnd()}`.trimEnd();
}
