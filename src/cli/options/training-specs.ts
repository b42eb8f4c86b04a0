/** The grading of trainees. */
import type { OptionSpec } from './option-spec.ts';

export const trainingSpecs = {
  rubric: {
    flags: '--rubric <file>',
    summary: 'rubric file (JSON): how surveys of trainees are marked',
  },
  consensus: {
    flags: '--consensus',
    summary: 'no file is a reference: the class is, by the middle of its means',
  },
  traineeGauge: {
    flags: '--trainee-gauge <name=file>',
    summary: 'gauge file of one trainee; may be repeated',
    repeatable: true,
  },
  trainee: { flags: '--trainee <name>', summary: 'the sheet of this trainee, naming no one else' },
  anonymous: {
    flags: '--anonymous',
    summary: 'Trainee 1, Trainee 2 … in place of names and files of trainees',
  },
} as const satisfies Record<string, OptionSpec>;
