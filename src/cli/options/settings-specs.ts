/** What holds for a job where none of its files says otherwise, and the files that say it. */
import type { OptionSpec } from './option-spec.ts';

export const settingsSpecs = {
  template: {
    environment: true,
    flags: '--template <id|file>',
    summary: 'vehicle template; else the one whose panels fit',
  },
  job: { flags: '--job <file>', summary: 'job file (JSON): vehicle, finish, history, aim' },
  shop: {
    environment: true,
    flags: '--shop <file>',
    summary: 'shop file (JSON): machines, pads, products, times',
  },
  gauge: {
    environment: true,
    flags: '--gauge <file>',
    summary: 'gauge file (JSON): what the gauge may be off by, and its check',
  },
  rates: {
    environment: true,
    flags: '--rates <file>',
    summary: 'rates file (JSON): what was measured on earlier vehicles of this shop',
  },
  history: {
    environment: true,
    flags: '--history <file>',
    summary: 'hours that jobs took (CSV): job, stage, estimated_min, actual_min',
  },
  aim: {
    environment: true,
    flags: '--aim <aim>',
    summary: 'enhance, correct, full, or per cent of the defects to clear',
    among: ['enhance', 'correct', 'full'],
  },
  riskPct: {
    environment: true,
    flags: '--risk-pct <number>',
    summary: 'risk of leaving clear under its floor, per panel',
    range: [0.1, 50],
  },
  floorUm: {
    environment: true,
    flags: '--floor-um <number>',
    summary: 'least total film at any point',
    range: [10, 300],
  },
  policy: {
    environment: true,
    flags: '--policy <name>',
    summary: 'how much clear must stay: the standard floor or the strict one',
    choices: ['standard', 'strict'],
  },
  finish: {
    environment: true,
    flags: '--finish <name>',
    summary: 'what the topcoat is',
    choices: [
      'clear-over-base',
      'single-stage-solid',
      'single-stage-metallic',
      'lacquer',
      'matte',
      'unknown',
    ],
  },
} as const satisfies Record<string, OptionSpec>;
