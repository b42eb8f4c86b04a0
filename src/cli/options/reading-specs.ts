/** How files of readings are read, in every command that reads them. */
import type { OptionSpec } from './option-spec.ts';

export const readingSpecs = {
  readingUnit: {
    environment: true,
    flags: '--reading-unit <unit>',
    summary: 'unit of the readings where the file does not say',
    choices: ['um', 'mil'],
  },
  encoding: {
    environment: true,
    flags: '--encoding <name>',
    summary: 'encoding of the readings, such as windows-1252',
  },
  delimiter: {
    environment: true,
    flags: '--delimiter <name>',
    summary: 'sign between columns: comma, semicolon, tab, pipe, or the sign itself',
    words: { comma: ',', semicolon: ';', tab: '\t', pipe: '|' },
  },
  decimal: {
    environment: true,
    flags: '--decimal <name>',
    summary: 'decimal mark of the readings: point or comma',
    words: { point: '.', comma: ',' },
  },
  layout: {
    environment: true,
    flags: '--layout <name>',
    summary: 'how the table of readings is laid out',
    choices: ['long', 'wide', 'repeats', 'blocks', 'list'],
  },
  headerLine: {
    flags: '--header-line <number>',
    summary: 'line that names the columns',
    range: [1, 100_000],
    whole: true,
  },
  columns: {
    flags: '--columns <role=header>',
    summary: 'what a column is, by its header or number: panel=Teil,reading=Wert',
    repeatable: true,
  },
  panelNames: {
    flags: '--panel-names <names>',
    summary: 'panels by the names of the file: Haube=bonnet, or a file of them',
    repeatable: true,
  },
  nearside: {
    environment: true,
    flags: '--nearside <side>',
    summary: 'the side that nearside is: left where traffic keeps left',
    choices: ['left', 'right'],
  },
  asDecided: {
    flags: '--as-decided <file>',
    summary: 'read as a decisions file says; flags win over it',
  },
  longestRow: {
    environment: true,
    flags: '--longest-row <number>',
    summary: 'most characters of a row of readings',
    range: [1000, 8_000_000],
    whole: true,
  },
  mostColumns: {
    environment: true,
    flags: '--most-columns <number>',
    summary: 'most columns of a table of readings',
    range: [10, 1_000_000],
    whole: true,
  },
} as const satisfies Record<string, OptionSpec>;
