import type { PageOptions } from '../report/survey-blocks.ts';
import type { Settings } from '../tasks/settings.ts';

/** The forms of output there are; a command says which it offers. */
export const formats = ['text', 'json', 'ndjson', 'csv', 'html'] as const;
export type Format = (typeof formats)[number];

/** Every option as data: the parser and the help come from here. One name has one meaning everywhere. */
export type OptionSpec = {
  readonly flags: string;
  readonly summary: string;
  readonly choices?: readonly string[];
  readonly range?: readonly [number, number];
  readonly repeatable?: boolean;
  /** It may stand in the environment, as LEASTCUT_ and its name. */
  readonly environment?: boolean;
};

export const optionSpecs = {
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
  defects: { flags: '--defects <file>', summary: 'defects file (CSV): panel, defect, grade' },
  vehicle: { flags: '--vehicle <id>', summary: 'only this vehicle of the input' },
  panel: { flags: '--panel <name>', summary: 'only this panel; may be repeated', repeatable: true },
  aim: {
    environment: true,
    flags: '--aim <aim>',
    summary: 'enhance, correct, full, or per cent of the defects to clear',
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
    summary: 'which published clear floor to keep',
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
  readingUnit: {
    environment: true,
    flags: '--reading-unit <unit>',
    summary: 'unit of the readings where the file does not say',
    choices: ['um', 'mil'],
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
  points: {
    flags: '--points <number>',
    summary: 'points on each panel of the sheet; else as the template has them',
    choices: ['3', '4', '5', '6', '7', '8', '9'],
  },
  out: { flags: '-o, --out <file>', summary: 'write to a file instead of standard output' },
  force: { flags: '--force', summary: 'let --out replace a file' },
  color: {
    environment: true,
    flags: '--color <when>',
    summary: 'colour in the text',
    choices: ['auto', 'always', 'never'],
  },
  quiet: { flags: '-q, --quiet', summary: 'no remarks on standard error, only errors' },
  verbose: { flags: '-v, --verbose', summary: 'more detail: decisions, clear estimates, limits' },
} as const satisfies Record<string, OptionSpec>;

export type OptionName = keyof typeof optionSpecs;

/** Options every command takes. */
export const commonOptions: readonly OptionName[] = [
  'showUnit',
  'format',
  'out',
  'force',
  'color',
  'quiet',
  'verbose',
];

/** What was typed, checked against the spec; absent where nothing was. */
export type TypedOptions = {
  readonly template?: string;
  readonly job?: string;
  readonly shop?: string;
  readonly defects?: string;
  readonly vehicle?: string;
  readonly panel?: readonly string[];
  readonly aim?: 'enhance' | 'correct' | 'full' | number;
  readonly riskPct?: number;
  readonly floorUm?: number;
  readonly policy?: 'standard' | 'strict';
  readonly finish?:
    | 'clear-over-base'
    | 'single-stage-solid'
    | 'single-stage-metallic'
    | 'lacquer'
    | 'matte'
    | 'unknown';
  readonly readingUnit?: 'um' | 'mil';
  readonly showUnit?: 'um' | 'mil';
  readonly format?: Format;
  readonly points?: string;
  readonly out?: string;
  readonly force?: boolean;
  readonly color?: 'auto' | 'always' | 'never';
  readonly quiet?: boolean;
  readonly verbose?: boolean;
};

/** How a page is to be written, as settings and options say. */
export const pageOptions = (
  { showUnit }: Pick<Settings, 'showUnit'>,
  { verbose }: TypedOptions,
): PageOptions => ({
  unit: showUnit.value,
  verbose: verbose ?? false,
});
