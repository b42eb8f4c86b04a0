/** The check of a gauge on shims. */
import type { OptionSpec } from './option-spec.ts';

export const gaugeSpecs = {
  gaugeOut: {
    flags: '--gauge-out <file>',
    summary: 'write the gauge file that --gauge of survey and plan takes',
  },
  adjust: { flags: '--adjust', summary: 'work out what would put the readings right' },
  mpeUm: {
    flags: '--mpe-um <number>',
    summary: 'largest error the gauge may have: the fixed part, as its maker states',
    range: [0, 50],
  },
  mpePct: {
    flags: '--mpe-pct <number>',
    summary: 'the part of that error that grows with the film, in per cent of it',
    range: [0, 50],
  },
  shimUncertaintyUm: {
    flags: '--shim-uncertainty-um <number>',
    summary: 'what the shims may be off by (k = 2), where the file does not say',
    range: [0, 50],
  },
} as const satisfies Record<string, OptionSpec>;
