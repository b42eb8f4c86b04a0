/** What a vehicle shows when it is read again, and what is kept of that for the next. */
import type { OptionSpec } from './option-spec.ts';

export const visitSpecs = {
  plan: { flags: '--plan <file>', summary: 'plan that was worked to (plan --format json)' },
  worked: {
    flags: '--worked <file>',
    summary: 'sets worked of the plan (CSV): panel, step, sets; else all of it',
  },
  marked: { flags: '--marked', summary: 'every point was marked: names alike are one place' },
  gaugeAfter: {
    flags: '--gauge-after <file>',
    summary: 'gauge file of the later readings, where another gauge took them',
  },
  gloss: { flags: '--gloss <file>', summary: 'gloss before and after (CSV)' },
  check: { flags: '--check', summary: 'let the answer decide the exit code' },
  record: {
    flags: '--record <file>',
    summary: 'write a film record with this visit, for --film-record next time',
  },
  ratesOut: {
    flags: '--rates-out <file>',
    summary: 'write the rates with what this vehicle showed added, for --rates',
  },
} as const satisfies Record<string, OptionSpec>;
