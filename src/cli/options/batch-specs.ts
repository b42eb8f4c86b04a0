/** Many jobs in one run. */
import type { OptionSpec } from './option-spec.ts';

export const batchSpecs = {
  command: {
    flags: '--command <name>',
    summary: 'what is done with each job: quote, where none is named',
    choices: ['survey', 'plan', 'quote'],
  },
  workers: {
    environment: true,
    flags: '--workers <number>',
    summary: 'jobs done at the same time; else as many as there are processors, up to 8',
    range: [1, 64],
    whole: true,
  },
  failFast: { flags: '--fail-fast', summary: 'begin no job after one that is not done' },
  resume: {
    flags: '--resume',
    summary: 'go on after a run that was cut off; with --force redo only what has changed',
  },
  summary: { flags: '--summary <file>', summary: 'write a row for each job, for a spreadsheet' },
  reorder: {
    flags: '--reorder <file>',
    summary: 'write what to buy for all quotes together, against stock (csv)',
  },
} as const satisfies Record<string, OptionSpec>;
