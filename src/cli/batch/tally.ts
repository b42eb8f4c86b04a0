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

export function createTally(): Tally {
  const counts: Record<JobStatus, number> = { done: 0, refused: 0, failed: 0 };
  const exits = new Set<number>();
  const reasons = new Map<string, Alike>();
  const seen = (): number => counts.done + counts.refused + counts.failed;
  const wrong = (): number => counts.refused + counts.failed;
  const note = (job: CountedJob): void => {
    const key = `${job.status} ${job.reason}`;
    const alike = reasons.get(key);
    if (alike === undefined) {
      if (reasons.size < mostTold) reasons.set(key, { first: job, jobs: [job.job], count: 1 });
      return;
    }
    alike.count += 1;
    if (alike.jobs.length < mostTold) alike.jobs.push(job.job);
  };
  return {
    add: (job) => {
      counts[job.status] += 1;
      if (job.status === 'done') return;
      exits.add(job.exit);
      note(job);
    },
    seen,
    exit: () => {
      if (wrong() === 0) return exitCodes.done;
      if (counts.done > 0) return exitCodes.someFailed;
      const [shared = exitCodes.data, ...others] = exits;
      return others.length === 0 ? shared : exitCodes.data;
    },
    summary: (jobs, stood) => {
      const told = [...reasons.values()];
      const more = wrong() - told.reduce((sum, { count }) => sum + count, 0);
      const left = jobs - seen();
      return [
        ...told.map(alikeText),
        ...(more > 0 ? [`and ${counted(more, 'more job')} not done`] : []),
        [
          `${counted(jobs, 'job')}: ${counts.done} done`,
          ...(counts.refused > 0 ? [`${counts.refused} refused`] : []),
          ...(counts.failed > 0 ? [`${counts.failed} failed`] : []),
          ...(left > 0 ? [`${left} not begun`] : []),
          ...(stood > 0 ? [`${stood} of them stood from before`] : []),
        ].join(', '),
      ];
    },
  };
}

function alikeText({ first, jobs, count }: Alike): string {
  const names = jobs.map((job) => printable(JSON.stringify(job)));
  const more = count > jobs.length ? [`${count - jobs.length} more`] : [];
  const who = `${count === 1 ? 'job' : 'jobs'} ${inWords([...names, ...more])} ${first.status}`;
  return `${who}${count === 1 ? '' : ' alike'}\n${first.told.trimEnd()}`.trimEnd();
}
