/** What one option takes, as data: read alike from the command line and from the environment. */
import { type OptionName, type OptionSpec, optionSpecs } from './options.ts';

/** A value, or the sentence that says what is taken instead. */
export type ReadValue = { readonly value: string | number } | { readonly takes: string };

const NUMBER = /^\d+(\.\d+)?$/;
const AIMS = ['enhance', 'correct', 'full'];

export function readOptionValue(name: OptionName, text: string): ReadValue {
  const spec: OptionSpec = optionSpecs[name];
  if (name === 'aim') return readAim(text);
  if (spec.range !== undefined) return readNumber(text, spec.range);
  const { choices } = spec;
  return choices === undefined || choices.includes(text)
    ? { value: text }
    : { takes: `one of ${choices.join(', ')}` };
}

function readNumber(text: string, [least, most]: readonly [number, number]): ReadValue {
  const value = NUMBER.test(text) ? Number(text) : Number.NaN;
  return value >= least && value <= most
    ? { value }
    : { takes: `a number from ${least} to ${most}` };
}

function readAim(text: string): ReadValue {
  if (AIMS.includes(text)) return { value: text };
  const number = readNumber(text, [1, 99]);
  return 'value' in number ? number : { takes: `${AIMS.join(', ')}, or a number from 1 to 99` };
}
