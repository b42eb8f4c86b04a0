/** What the small entries load when it is needed: the whole program, built into one script. */
import { run } from './run.ts';

/** What a thread of a batch does, which nothing else needs. */
const serveJobs = async (): Promise<void> => (await import('./batch/serve-jobs.ts')).serveJobs();

export const program = { run, serveJobs };
