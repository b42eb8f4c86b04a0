import type { PageOptions } from '../report/survey/page-options.ts';
import type { Settings } from '../tasks/settings/settings.ts';

/** The forms of output there are; a command says which it offers. */
export const formats = ['text', 'json', 'ndjson', 'csv', 'md', 'html'] as const;
export type Format = (typeof formats)[number];

/** What a command offers that gives pages and no table. */
export const pageFormats: readonly Format[] = ['text', 'json', 'ndjson', 'md', 'html'];

/** Every option as data: the parser and the help come from here. One name has one meaning everywhere. */
export type OptionSpec = {
  readonly flags: string;
  readonly summary: string;
  readonly choices?: readonly string[];
  /** Words among what it takes, which may be anything else besides. */
  readonly among?: readonly string[];
  readonly range?: readonly [number, number];
  /** Of a range, only whole numbers. */
  readonly whole?: boolean;
  /** Words that stand for what may also be typed as it is. */
  readonly words?: Readonly<Record<string, string>>;
  readonly repeatable?: boolean;
  /** What it says is said once: two different values are refused. */
  readonly once?: boolean;
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
  rates: {
    environment: true,
    flags: '--rates <file>',
    summary: 'rates file (JSON): what was measured on earlier vehicles of this shop',
  },
  ratesOut: {
    flags: '--rates-out <file>',
    summary: 'write the rates with what this vehicle showed added, for --rates',
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
  history: {
    environment: true,
    flags: '--history <file>',
    summary: 'hours that jobs took (CSV): job, stage, estimated_min, actual_min',
  },
  card: {
    flags: '--card',
    summary: 'the plan as a card to work from in the bay, with boxes to tick',
  },
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
  filmRecord: {
    flags: '--film-record <file>',
    summary: 'film record: what earlier visits took; else the one the job names',
  },
  record: {
    flags: '--record <file>',
    summary: 'write a film record with this visit, for --film-record next time',
  },
  check: { flags: '--check', summary: 'let the answer decide the exit code' },
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
  kind: {
    flags: '--kind <kind>',
    summary: 'what the quote is: an estimate may change, a quotation is a fixed offer',
    choices: ['estimate', 'quotation'],
    once: true,
  },
  date: {
    flags: '--date <date>',
    summary: 'the day it is of, as 2026-03-31, or today',
    among: ['today'],
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
  points: {
    flags: '--points <number>',
    summary: 'points on each panel of the sheet; else as the template has them',
    choices: ['3', '4', '5', '6', '7', '8', '9'],
  },
  for: {
    flags: '--for <survey.json>',
    summary: 'only what a survey (its --format json) asks to be read next',
  },
  command: {
    flags: '--command <name>',
    summary: 'what is done with each job: quote, where none is named',
    choices: ['survey', 'plan', 'quote'],
  },
  workers: {
    environment: true,
    flags: '--workers <number>',
    summary: 'jobs done at the same time; else as many as there are processors, up to 8',
    range: [1, 64],
    whole: true,
  },
  failFast: { flags: '--fail-fast', summary: 'begin no job after one that is not done' },
  resume: { flags: '--resume', summary: 'go on with what an earlier run left in FILE.part' },
  summary: { flags: '--summary <file>', summary: 'write a row for each job, for a spreadsheet' },
  reorder: {
    flags: '--reorder <file>',
    summary: 'write what to buy for all quotes together, against stock (csv)',
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

/** Known everywhere, also where no command stands. */
export const helpOption: OptionSpec = {
  flags: '-h, --help',
  summary: 'help: -h what is most used, --help every option and examples',
};

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
  'plain',
  'ascii',
  'quiet',
  'verbose',
];

/** What was typed, checked against the spec; absent where nothing was. */
export type TypedOptions = {
  readonly template?: string;
  readonly job?: string;
  readonly shop?: string;
  readonly gauge?: string;
  readonly rates?: string;
  readonly ratesOut?: string;
  readonly gaugeOut?: string;
  readonly adjust?: boolean;
  readonly mpeUm?: number;
  readonly mpePct?: number;
  readonly shimUncertaintyUm?: number;
  readonly defects?: string;
  readonly spots?: string;
  readonly history?: string;
  readonly card?: boolean;
  readonly plan?: string;
  readonly worked?: string;
  readonly marked?: boolean;
  readonly gaugeAfter?: string;
  readonly gloss?: string;
  readonly filmRecord?: string;
  readonly record?: string;
  readonly check?: boolean;
  readonly rubric?: string;
  readonly consensus?: boolean;
  readonly traineeGauge?: readonly string[];
  readonly trainee?: string;
  readonly anonymous?: boolean;
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
  readonly kind?: 'estimate' | 'quotation';
  /** A day of the calendar, as 2026-03-31. */
  readonly date?: string;
  readonly fields?: string;
  readonly command?: 'survey' | 'plan' | 'quote';
  readonly workers?: number;
  readonly failFast?: boolean;
  readonly resume?: boolean;
  readonly summary?: string;
  readonly reorder?: string;
  readonly showUnit?: 'um' | 'mil';
  readonly format?: Format;
  readonly points?: string;
  readonly out?: string;
  readonly force?: boolean;
  readonly color?: 'auto' | 'always' | 'never';
  readonly plain?: boolean;
  readonly ascii?: boolean;
  readonly quiet?: boolean;
  readonly verbose?: boolean;
};

/** How a page is to be written, as settings and options say. */
export const pageOptions = (
  { showUnit }: Pick<Settings, 'showUnit'>,
  { verbose, format }: TypedOptions,
): PageOptions => ({
  unit: showUnit.value,
  verbose: verbose ?? false,
  drawn: format === 'html',
});
