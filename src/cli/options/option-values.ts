/** What one option takes, as data: read alike from the command line and from the environment. */
import { isDay, localDay } from '../../base/calendar.ts';
import { closest } from '../../base/did-you-mean.ts';
import { pageNamed, pageNames } from '../../intake/bytes/code-pages.ts';
import { type OptionName, optionSpecs } from '../options.ts';
import type { OptionSpec } from './option-spec.ts';

/** A value, or what is taken instead, with the word that may be meant. */
export type ReadValue =
  | { readonly value: string | number | boolean }
  | { readonly takes: string; readonly meant?: string | undefined };

const WHOLE = /^\d+$/;
const NUMBER = /^\d+(\.\d+)?$/;
const AIMS: readonly string[] = optionSpecs.aim.among;

export function readOptionValue(name: OptionName, text: string): ReadValue {
  const spec: OptionSpec = optionSpecs[name];
  if (!spec.flags.includes('<')) return readSwitch(text);
  if (name === 'aim') return readAim(text);
  if (name === 'encoding') return readEncoding(text);
  if (name === 'date') return readDay(text);
  if (spec.words !== undefined) return readWord(text, spec.words);
  if (spec.range !== undefined) return readNumber(text, spec.range, spec.whole);
  const { choices } = spec;
  return choices === undefined || choices.includes(text)
    ? { value: text }
    : { takes: `one of ${choices.join(', ')}` };
}

/** A switch is typed bare; in the environment it says yes or no. */
function readSwitch(text: string): ReadValue {
  const plain = text.trim().toLowerCase();
  if (['1', 'yes', 'true'].includes(plain)) return { value: true };
  return ['0', 'no', 'false'].includes(plain) ? { value: false } : { takes: 'yes or no, 1 or 0' };
}

function readNumber(
  text: string,
  [least, most]: readonly [number, number],
  whole = false,
): ReadValue {
  const value = (whole ? WHOLE : NUMBER).test(text) ? Number(text) : Number.NaN;
  return value >= least && value <= most
    ? { value }
    : { takes: `${whole ? 'a whole number' : 'a number'} from ${least} to ${most}` };
}

/** A word for a sign, or the sign itself; a tab is typed as \t where a shell gives none. */
function readWord(text: string, words: Readonly<Record<string, string>>): ReadValue {
  const plain = text.trim().toLowerCase();
  const sign = Object.values(words).find((one) => one === text || (one === '\t' && text === '\\t'));
  const value = sign ?? (Object.hasOwn(words, plain) ? words[plain] : undefined);
  if (value !== undefined) return { value };
  const names = Object.keys(words);
  return { takes: `one of ${names.join(', ')}`, meant: closest(plain, names) };
}

function readEncoding(text: string): ReadValue {
  const page = pageNamed(text);
  return page === undefined
    ? { takes: `one of ${pageNames.join(', ')}`, meant: closest(text.toLowerCase(), pageNames) }
    : { value: page.name };
}

/** What `today` is by the clock is settled here: what comes after reads no clock. */
function readDay(text: string): ReadValue {
  if (text === 'today') return { value: localDay(new Date()) };
  return isDay(text)
    ? { value: text }
    : { takes: 'a day as 2026-03-31, or today', meant: closest(text, ['today']) };
}

function readAim(text: string): ReadValue {
  if (AIMS.includes(text)) return { value: text };
  const number = readNumber(text.replace(/\s*%$/, ''), [1, 99]);
  if ('value' in number) return number;
  const takes = `${AIMS.join(', ')}, or a number from 1 to 99`;
  return { takes, meant: closest(text, AIMS) };
}
