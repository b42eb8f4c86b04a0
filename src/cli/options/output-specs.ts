/** What is written, where and how it looks. */
import type { OptionSpec } from './option-spec.ts';

/** The forms of output there are; a command says which it offers. */
export const formats = ['text', 'json', 'ndjson', 'csv', 'md', 'html'] as const;
export type Format = (typeof formats)[number];

/** What a command offers that gives pages and no table. */
export const pageFormats: readonly Format[] = ['text', 'json', 'ndjson', 'md', 'html'];

export const outputSpecs = {
  decisions: {
    flags: '--decisions <file>',
    summary: 'write how the file was read, for --as-decided next time',
  },
  fields: {
    flags: '--fields <names>',
    summary: 'columns of the csv, with commas between; empty lists them',
  },
  showUnit: {
    environment: true,
    flags: '--show-unit <unit>',
    summary: 'unit of the text output',
    choices: ['um', 'mil'],
  },
  format: {
    environment: true,
    flags: '--format <format>',
    summary: 'form of the output',
    choices: formats,
  },
  out: { flags: '-o, --out <file>', summary: 'write to a file instead of standard output' },
  force: { flags: '--force', summary: 'let an output replace a file' },
  color: {
    environment: true,
    flags: '--color <when>',
    summary: 'colour in the text',
    choices: ['auto', 'always', 'never'],
  },
  plain: {
    environment: true,
    flags: '--plain',
    summary: 'text as one fact a line: for screen readers, logs, grep',
  },
  ascii: {
    environment: true,
    flags: '--ascii',
    summary: 'text in ASCII signs (um, +/-); other letters, as of labels, as \\u{e9}',
  },
  quiet: { flags: '-q, --quiet', summary: 'no remarks on standard error, only errors' },
  verbose: { flags: '-v, --verbose', summary: 'more detail: decisions, clear estimates, limits' },
} as const satisfies Record<string, OptionSpec>;
