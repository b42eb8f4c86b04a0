/**
 * Settings from the environment. One rule: the option `riskPct` is LEASTCUT_RISK_PCT. Options that are
 * about a single run (`--job`, `--out`) cannot be set there; an empty variable is not set.
 */
import { type Diagnostic, error, type Outcome, warning } from '../../base/diagnostics.ts';
import { suggest } from '../../base/did-you-mean.ts';
import { type OptionName, optionSpecs, type TypedOptions } from '../options.ts';
import type { OptionSpec } from './option-spec.ts';
import { type ReadValue, readOptionValue } from './option-values.ts';

export type Environment = Readonly<Record<string, string | undefined>>;

const PREFIX = 'LEASTCUT_';

export const variableOf = (name: OptionName): string =>
  PREFIX + name.replace(/[A-Z]/g, (letter) => `_${letter}`).toUpperCase();

const optionNames = Object.keys(optionSpecs) as OptionName[];
const isSettable = (name: OptionName): boolean => {
  const spec: OptionSpec = optionSpecs[name];
  return spec.environment === true;
};
const byVariable: ReadonlyMap<string, OptionName> = new Map(
  optionNames.filter(isSettable).map((name) => [variableOf(name), name]),
);

export function readEnvironment(environment: Environment): Outcome<TypedOptions> {
  const given = Object.entries(environment)
    .filter(([variable, text]) => variable.startsWith(PREFIX) && text !== undefined && text !== '')
    .sort(([a], [b]) => (a < b ? -1 : 1));
  const diagnostics: Diagnostic[] = [];
  const values = new Map<OptionName, string | number | boolean>();
  for (const [variable, text = ''] of given) {
    const name = byVariable.get(variable);
    if (name === undefined) {
      diagnostics.push(unknownVariable(variable));
      continue;
    }
    const read = readOptionValue(name, text);
    if ('value' in read) values.set(name, read.value);
    else diagnostics.push(invalidVariable(variable, text, name, read));
  }
  const value = Object.fromEntries(values) as TypedOptions;
  return diagnostics.some(({ severity }) => severity === 'error')
    ? { diagnostics }
    : { value, diagnostics };
}

function unknownVariable(variable: string): Diagnostic {
  const known = [...byVariable.keys()];
  const option = optionNames.find((name) => variableOf(name) === variable);
  const flag = option === undefined ? undefined : optionSpecs[option].flags.split(' <')[0];
  const hint =
    flag === undefined
      ? (suggest(variable, known) ?? `known are ${known.join(', ')}`)
      : `${flag} is said anew for every run`;
  return warning('environment-unknown', `${variable} sets nothing`, { hint });
}

function invalidVariable(
  variable: string,
  text: string,
  name: OptionName,
  { takes, meant }: Extract<ReadValue, { takes: string }>,
): Diagnostic {
  const { choices = [] }: OptionSpec = optionSpecs[name];
  return error('environment-invalid', `${variable} is ${JSON.stringify(text)}; it takes ${takes}`, {
    hint:
      meant === undefined
        ? (suggest(text, choices) ?? 'set it anew, or unset it')
        : `did you mean "${meant}"?`,
  });
}
