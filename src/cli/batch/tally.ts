/** How a batch goes: counted while it runs, told at its end. */

import { counted } from '../../base/counted.ts';
import { printable } from '../../render/printable.ts';
import type { JobStatus } from '../../report/batch/batch-record.ts';
import { exitCodes } from '../exit-code.ts';

/** What of a job is counted. */
export type CountedJob = {
  readonly job: string;
  readonly status: JobStatus;
  /** Its first error as people are told it. */
  readonly told: string;
};

export type Tally = {
  readonly add: (job: CountedJob) => void;
  readonly seen: () => number;
  /** 0 when all went well, 3 when some did, 65 when none did. */
  readonly exit: () => number;
  /** The count, and before it the first failures; `jobs` is how many there were to do. */
  readonly summary: (jobs: number, stood: number) => readonly string[];
};

/** Failures that are told one by one; more are counted. */
const mostTold = 5;

export function createTally(): Tally {
  const counts: Record<JobStatus, number> = { done: 0, refused: 0, failed: 0 };
  const failures: string[] = [];
  const seen = (): number => counts.done + counts.refused + counts.failed;
  const wrong = (): number => counts.refused + counts.failed;
  return {
    add: ({ job, status, told }) => {
      counts[status] += 1;
      if (status === 'done' || failures.length >= mostTold) return;
      failures.push(`job ${printable(JSON.stringify(job))} ${status}\n${told.trimEnd()}`.trimEnd());
    },
    seen,
    exit: () => {
      if (wrong() === 0) return exitCodes.done;
      return counts.done === 0 ? exitCodes.data : exitCodes.someFailed;
    },
    summary: (jobs, stood) => {
      const more = wrong() - failures.length;
      const left = jobs - seen();
      return [
        ...failures,
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
