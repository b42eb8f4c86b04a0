/** The commands by name, what each is for, and how to load it: only the one asked for is loaded. */
import type { Command } from './command.ts';

export type CommandEntry = {
  readonly name: string;
  readonly summary: string;
  /** What others call it. */
  readonly also?: readonly string[];
  readonly load: () => Promise<Command>;
};

export const commands: readonly CommandEntry[] = [
  {
    name: 'read',
    summary: 'show the readings as understood, and each decision taken on the way',
    also: ['import', 'show', 'parse', 'open'],
    load: async () => (await import('./commands/read.ts')).readCommand,
  },
  {
    name: 'survey',
    summary: 'say what is on each panel, how sure that is, how much may come off',
    also: ['measure', 'analyse', 'analyze', 'report', 'inspect', 'assess'],
    load: async () => (await import('./commands/survey.ts')).surveyCommand,
  },
  {
    name: 'plan',
    summary: 'plan the mildest steps within every limit, with time and materials',
    also: ['polish', 'correct', 'steps', 'card'],
    load: async () => (await import('./commands/plan.ts')).planCommand,
  },
  {
    name: 'quote',
    summary: 'price the job: the aims side by side, what each takes and costs',
    also: ['price', 'estimate', 'cost', 'offer', 'invoice'],
    load: async () => (await import('./commands/quote.ts')).quoteCommand,
  },
  {
    name: 'batch',
    summary: 'survey, plan or quote many vehicles: a record for each, in parallel',
    also: ['jobs', 'list', 'many'],
    load: async () => (await import('./commands/batch.ts')).batchCommand,
  },
  {
    name: 'spot',
    summary: 'say what test spots removed, how hard the paint is, what comes next',
    also: ['test', 'spots', 'trial', 'test-spot'],
    load: async () => (await import('./commands/spot.ts')).spotCommand,
  },
  {
    name: 'compare',
    summary: 'say what came off between readings, what is left, go on or stop',
    also: ['diff', 'before-after', 'removed'],
    load: async () => (await import('./commands/compare.ts')).compareCommand,
  },
  {
    name: 'grade',
    summary: 'grade surveys of trainees against a reference, and the whole class',
    also: ['mark', 'score', 'exam', 'class'],
    load: async () => (await import('./commands/grade.ts')).gradeCommand,
  },
  {
    name: 'gauge',
    summary: 'check a gauge on shims: pass, fail or undecided, and how it drifted',
    also: ['shim', 'shims', 'calibrate', 'calibration', 'verify'],
    load: async () => (await import('./commands/gauge.ts')).gaugeCommand,
  },
  {
    name: 'template',
    summary: 'list, show and check vehicle templates; print a blank reading sheet',
    also: ['sheet', 'templates', 'panels'],
    load: async () => (await import('./commands/template.ts')).templateCommand,
  },
  {
    name: 'methods',
    summary: 'list what cuts how much, show how a rate is reckoned, list what is used up',
    also: ['machines', 'pads', 'products', 'rates', 'materials'],
    load: async () => (await import('./commands/methods.ts')).methodsCommand,
  },
  {
    name: 'explain',
    summary: 'say what a word, a code, a number, an option or a key means',
    also: ['what', 'meaning', 'glossary', 'define'],
    load: async () => (await import('./commands/explain.ts')).explainCommand,
  },
  {
    name: 'init',
    summary: 'write a shop file and a job file to start from',
    also: ['new', 'start', 'create', 'setup'],
    load: async () => (await import('./commands/init.ts')).initCommand,
  },
  {
    name: 'doctor',
    summary: 'say which settings are in force, from where; check settings files',
    also: ['check', 'settings', 'config', 'validate'],
    load: async () => (await import('./commands/doctor.ts')).doctorCommand,
  },
  {
    name: 'completion',
    summary: 'write what a shell needs to complete commands, options and words',
    also: ['complete', 'completions'],
    load: async () => (await import('./commands/completion.ts')).completionCommand,
  },
];

export async function loadCommand(name: string): Promise<Command> {
  const entry = commands.find((one) => one.name === name);
  if (entry === undefined) throw new Error(`there is no command "${name}"`);
  return entry.load();
}
