/** Files that a command line names: what is read, what is written, and what is wrong with that beforehand. */
import { resolve } from 'node:path';
import { type Diagnostic, error } from '../../base/diagnostics.ts';
import { STANDARD_INPUT } from '../../base/file-name.ts';
import { isTemplatePath } from '../../film/template/template-name.ts';
import type { Command } from '../command.ts';
import type { TypedOptions } from '../options.ts';
import { outputProblem, standardOutputProblem } from './output-problem.ts';

/** All that is read because it was named. */
export function namedInputs(
  { filesOf }: Pick<Command, 'filesOf'>,
  operands: readonly string[],
  options: TypedOptions,
): readonly string[] {
  const inputs = [
    ...(filesOf === undefined ? operands : filesOf(operands)),
    ...[options.template ?? ''].filter(isTemplatePath),
    options.job,
    options.shop,
    options.gauge,
    options.rates,
    options.gaugeAfter,
    options.rubric,
    ...traineeGaugeFiles(options),
    options.plan,
    options.worked,
    options.filmRecord,
    options.gloss,
    options.defects,
    ...(options.spots ?? []),
    options.history,
    options.asDecided,
    options.for,
    ...panelNameFiles(options),
  ];
  return inputs.flatMap((name) => name ?? []);
}

const traineeGaugeFiles = ({ traineeGauge = [] }: TypedOptions): readonly string[] =>
  traineeGauge.map((word) => word.slice(word.indexOf('=') + 1));

const panelNameFiles = ({ panelNames = [] }: TypedOptions): readonly string[] =>
  panelNames.filter((word) => !word.includes('='));

/** What keeps a command from being begun. */
export async function problemBeforehand(
  inputs: readonly string[],
  options: TypedOptions,
): Promise<Diagnostic | undefined> {
  if (inputs.filter((name) => name === STANDARD_INPUT).length > 1) {
    return error('usage-option-value', 'standard input (-) can be read once, and is named twice');
  }
  if (options.fields !== undefined && options.format !== 'csv') {
    return error('usage-option-value', '--fields chooses columns of a table, and only csv is one', {
      hint: 'add --format csv; --fields= with it lists the columns',
    });
  }
  const outputs = outputsOf(options);
  const [twice] = outputs.filter(
    (name, i) => outputs.findIndex((one) => isSamePath(one, name)) < i,
  );
  if (twice !== undefined) {
    return error('usage-option-value', `two outputs would be written to "${twice}"`, {
      hint: 'name a file for each',
    });
  }
  for (const name of outputs) {
    const problem = outputProblem(name, options.force ?? false, inputs);
    if (problem !== undefined) return forResumed(problem, options);
  }
  return options.out === undefined ? standardOutputProblem(inputs) : undefined;
}

/** A batch that goes on keeps what stands: --force replaces no more than has changed. */
const forResumed = (problem: Diagnostic, { resume }: TypedOptions): Diagnostic =>
  resume === true && problem.code === 'output-exists'
    ? { ...problem, hint: '--resume --force does again only what has changed' }
    : problem;

/** The same of files that were read without being named: settings found, and what settings name. */
export async function problemAfterwards(
  loaded: readonly string[],
  options: TypedOptions,
): Promise<Diagnostic | undefined> {
  for (const name of outputsOf(options)) {
    const problem = outputProblem(name, true, loaded);
    if (problem !== undefined) return problem;
  }
  return undefined;
}

/** The result, and what a command writes beside it. */
const outputsOf = (options: TypedOptions): readonly string[] => {
  const { out, gaugeOut, decisions, record, summary, reorder, ratesOut } = options;
  return [out, gaugeOut, decisions, record, summary, reorder, ratesOut].flatMap(
    (name) => name ?? [],
  );
};

const isSamePath = (a: string, b: string): boolean => resolve(a) === resolve(b);
