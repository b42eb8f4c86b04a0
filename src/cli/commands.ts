/** The commands by name, what each is for, and how to load it: only the one asked for is loaded. */
import type { Command } from './command.ts';

export type CommandEntry = {
  readonly name: string;
  readonly summary: string;
  readonly load: () => Promise<Command>;
};

export const commands: readonly CommandEntry[] = [
  {
    name: 'read',
    summary: 'show the readings as understood, and every decision taken on the way',
    load: async () => (await import('./commands/read.ts')).readCommand,
  },
  {
    name: 'survey',
    summary: 'say what is on each panel, how sure that is, how much may come off',
    load: async () => (await import('./commands/survey.ts')).surveyCommand,
  },
  {
    name: 'plan',
    summary: 'plan the mildest steps within every limit, with time and materials',
    load: async () => (await import('./commands/plan.ts')).planCommand,
  },
  {
    name: 'template',
    summary: 'list the vehicle templates, or show one',
    load: async () => (await import('./commands/template.ts')).templateCommand,
  },
];
