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
  /** Of a range, only whole numbers. */
  readonly whole?: boolean;
  /** Words that stand for what may also be typed as it is. */
  readonly words?: Readonly<Record<string, string>>;
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
  gauge: {
    environment: true,
    flags: '--gauge <file>',
    summary: 'gauge file (JSON): what the gauge may be off by, and its check',
  },
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
  defects: { flags: '--defects <file>', summary: 'defects file (CSV): panel, defect, grade' },
  spots: { flags: '--spots <file>', summary: 'test spots (CSV): what trials removed and cleared' },
  vehicle: { flags: '--vehicle <id>', summary: 'only this vehicle of the input' },
  panel: { flags: '--panel <name>', summary: 'only this panel; may be repeated', repeatable: true },
  why: {
    flags: '--why <panel>',
    summary: 'take this panel apart: how its figures come about; may be repeated',
    repeatable: true,
  },
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
  asDecided: {
    flags: '--as-decided <file>',
    summary: 'read as a decisions file says; flags win over it',
  },
  decisions: {
    flags: '--decisions <file>',
    summary: 'write how the file was read, for --as-decided next time',
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
  for: {
    flags: '--for <survey.json>',
    summary: 'only what a survey (its --format json) asks to be read next',
  },
  out: { flags: '-o, --out <file>', summary: 'write to a file instead of standard output' },
  force: { flags: '--force', summary: 'let an output replace a file' },
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

/** How files of readings are read, in every command that reads them. */
export const readingOptions: readonly OptionName[] = [
  'readingUnit',
  'encoding',
  'delimiter',
  'decimal',
  'layout',
  'headerLine',
  'columns',
  'panelNames',
  'asDecided',
  'longestRow',
  'mostColumns',
];

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
  readonly gauge?: string;
  readonly gaugeOut?: string;
  readonly adjust?: boolean;
  readonly mpeUm?: number;
  readonly mpePct?: number;
  readonly shimUncertaintyUm?: number;
  readonly defects?: string;
  readonly spots?: string;
  readonly vehicle?: string;
  readonly panel?: readonly string[];
  readonly why?: readonly string[];
  readonly for?: string;
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
  readonly encoding?: string;
  readonly delimiter?: ',' | ';' | '\t' | '|';
  readonly decimal?: '.' | ',';
  readonly layout?: 'long' | 'wide' | 'repeats' | 'blocks' | 'list';
  readonly headerLine?: number;
  readonly columns?: readonly string[];
  readonly panelNames?: readonly string[];
  readonly longestRow?: number;
  readonly mostColumns?: number;
  readonly asDecided?: string;
  readonly decisions?: string;
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
