/** Two plugins of Stryker: one leaves out the mutants beside the sample, the other tells what the tests missed. */
import { readFileSync } from 'node:fs';
import { isSampled, type Mutant, type Sample } from './sample.ts';
import { type Tried, tally, unkilledLine } from './tally.ts';

const room = process.env['ROOM'] ?? 'base';
const sample: Sample = {
  every: Number(process.env['SAMPLE'] ?? 1),
  seed: Number(process.env['SEED'] ?? 1),
};

type Numbered = Mutant & { readonly id: string };
type Verdict = { readonly status: 'passed' | 'compileError'; readonly reason?: string };

const verdictOn = (mutant: Mutant): Verdict =>
  isSampled(mutant, sample)
    ? { status: 'passed' }
    : { status: 'compileError', reason: 'outside the sample' };

const sampler = {
  init: async (): Promise<void> => {},
  group: async (mutants: readonly Numbered[]) => [mutants.map(({ id }) => id)],
  check: async (mutants: readonly Numbered[]) =>
    Object.fromEntries(mutants.map((mutant) => [mutant.id, verdictOn(mutant)])),
};

const tried: Tried[] = [];
const say = (line: string): void => void process.stdout.write(`${line}\n`);

const teller = {
  onMutantTested: (mutant: Tried): void => {
    tried.push(mutant);
    const line = unkilledLine(mutant, readFileSync(mutant.fileName, 'utf8'));
    if (line !== undefined) say(line);
  },
  onMutationTestReportReady: (): void => say(tally(room, tried, sample)),
};

export const strykerPlugins = [
  { kind: 'Checker', name: 'sample', value: sampler },
  { kind: 'Reporter', name: 'tally', value: teller },
];
