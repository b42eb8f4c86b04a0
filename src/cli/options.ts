/**
 * Every option in one list, and what may be typed of it. One name has one meaning in every command.
 * The options themselves stand in options/, by what they are for.
 */
import { batchSpecs } from './options/batch-specs.ts';
import { gaugeSpecs } from './options/gauge-specs.ts';
import type { OptionSpec, ValueOf } from './options/option-spec.ts';
import { outputSpecs } from './options/output-specs.ts';
import { readingSpecs } from './options/reading-specs.ts';
import { settingsSpecs } from './options/settings-specs.ts';
import { trainingSpecs } from './options/training-specs.ts';
import { vehicleSpecs } from './options/vehicle-specs.ts';
import { visitSpecs } from './options/visit-specs.ts';

export const optionSpecs = {
  ...settingsSpecs,
  ...vehicleSpecs,
  ...visitSpecs,
  ...gaugeSpecs,
  ...trainingSpecs,
  ...batchSpecs,
  ...readingSpecs,
  ...outputSpecs,
};

export type OptionName = keyof typeof optionSpecs;

/** What was typed, checked against the spec; absent where nothing was. */
export type TypedOptions = { readonly [Name in OptionName]?: TypedValue<Name> };

/** An aim is one of its words, or per cent of the defects. */
type TypedValue<Name extends OptionName> = Name extends 'aim'
  ? (typeof optionSpecs)['aim']['among'][number] | number
  : ValueOf<(typeof optionSpecs)[Name]>;

/** Known everywhere, also where no command stands. */
export const helpOption: OptionSpec = {
  flags: '-h, --help',
  summary: 'help: -h what is most used, --help every option and examples',
};

/** How files of readings are read, in every command that reads them. */
export const readingOptions: readonly OptionName[] = Object.keys(readingSpecs) as OptionName[];

/** Options every command takes. */
export const commonOptions: readonly OptionName[] = [
  'showUnit',
  'format',
  'out',
  'force',
  'color',
  'plain',
  'ascii',
  'quiet',
  'verbose',
];
