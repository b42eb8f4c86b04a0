/** What is known of a vehicle beside its readings, and what is asked about it. */
import type { OptionSpec } from './option-spec.ts';

export const vehicleSpecs = {
  defects: { flags: '--defects <file>', summary: 'defects file (CSV): panel, defect, grade' },
  spots: {
    flags: '--spots <file>',
    summary: 'trials on test spots (CSV); may be repeated',
    repeatable: true,
  },
  filmRecord: {
    flags: '--film-record <file>',
    summary: 'film record of earlier visits; of it and the one the job names, the fuller',
  },
  vehicle: { flags: '--vehicle <id>', summary: 'only this vehicle of the input' },
  panel: { flags: '--panel <name>', summary: 'only this panel; may be repeated', repeatable: true },
  why: {
    flags: '--why <panel>',
    summary: 'take this panel apart: how its figures come about; may be repeated',
    repeatable: true,
  },
  card: {
    flags: '--card',
    summary: 'the plan as a card to work from in the bay, with boxes to tick',
  },
  kind: {
    flags: '--kind <kind>',
    summary: 'what the quote is: an estimate may change, a quotation is a fixed offer',
    choices: ['estimate', 'quotation'],
  },
  date: {
    flags: '--date <date>',
    summary: 'the day it is of, as 2026-03-31, or today',
    among: ['today'],
  },
  points: {
    flags: '--points <number>',
    summary: 'points on each panel of the sheet; else as the template has them',
    choices: ['3', '4', '5', '6', '7', '8', '9'],
  },
  repeats: {
    flags: '--repeats <number>',
    summary: 'readings of each point on the sheet; where a class is graded 3; else 1',
    choices: ['1', '2', '3', '4', '5'],
  },
  for: {
    flags: '--for <survey.json>',
    summary: 'only what a survey (its --format json) asks to be read next',
  },
} as const satisfies Record<string, OptionSpec>;
