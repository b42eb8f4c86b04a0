/** Width and colour of the text output. */
import type { TextStyle } from '../render/text.ts';
import type { Tone } from '../report/model.ts';
import type { Effective } from '../tasks/settings/setting-origin.ts';
import type { ColourUse } from '../tasks/settings/settings-layers.ts';

type Environment = Readonly<Record<string, string | undefined>>;
type Stream = { readonly isTTY?: boolean; readonly columns?: number };

const LEAST_WIDTH = 60;
const USUAL_WIDTH = 80;

/** The terminal's width, else COLUMNS, else 80; and which of them it is. */
export function textWidth(
  { columns = 0 }: Stream,
  environment: Environment,
): { readonly width: number; readonly from: string } {
  const stated = Number.parseInt(environment['COLUMNS'] ?? '', 10);
  // A terminal that does not know how wide it is says 0.
  if (columns > 0) return { width: Math.max(LEAST_WIDTH, columns), from: 'the terminal' };
  return Number.isNaN(stated)
    ? { width: USUAL_WIDTH, from: 'the output is no terminal' }
    : { width: Math.max(LEAST_WIDTH, stated), from: 'COLUMNS' };
}

export type ColourDecision = { readonly colour: boolean; readonly why: string };

/**
 * Whether to colour, and why. Order of decision: the flag or LEASTCUT_COLOR, NO_COLOR, FORCE_COLOR, a
 * settings file, then the terminal.
 */
export function colourDecision(
  { value, origin, where }: Effective<ColourUse>,
  stream: Stream,
  environment: Environment,
): ColourDecision {
  const said = { colour: value === 'always', why: `${where} says ${value}` };
  const typed = origin === 'flag' || origin === 'environment';
  if (typed && value !== 'auto') return said;
  if ((environment['NO_COLOR'] ?? '') !== '') return { colour: false, why: 'NO_COLOR is set' };
  const force = environment['FORCE_COLOR'];
  if (force !== undefined) {
    return { colour: force !== '0' && force !== 'false', why: `FORCE_COLOR is ${force}` };
  }
  if (value !== 'auto') return said;
  if (stream.isTTY !== true) return { colour: false, why: 'the output is no terminal' };
  return environment['TERM'] === 'dumb'
    ? { colour: false, why: 'TERM is dumb' }
    : { colour: true, why: 'the output is a terminal' };
}

/**
 * Whether to write in ASCII signs only, and why: as typed, or on a terminal whose locale is not UTF-8.
 * What goes into a file or a pipe is UTF-8 unless somebody says otherwise. Windows has no such locale,
 * and its terminals are written to in Unicode.
 */
export function asciiDecision(
  typed: boolean | undefined,
  { isTTY }: Stream,
  environment: Environment,
  platform: NodeJS.Platform,
): { readonly ascii: boolean; readonly why: string } {
  if (typed !== undefined) return { ascii: typed, why: `--ascii says ${typed ? 'so' : 'no'}` };
  if (isTTY !== true) return { ascii: false, why: 'the output is no terminal' };
  if (platform === 'win32') return { ascii: false, why: 'the terminal takes Unicode' };
  const variable = ['LC_ALL', 'LC_CTYPE', 'LANG'].find((name) => (environment[name] ?? '') !== '');
  if (variable === undefined) return { ascii: true, why: 'no locale is set' };
  const locale = environment[variable] ?? '';
  return { ascii: !/utf-?8/i.test(locale), why: `${variable} is ${locale}` };
}

/** The same for this process. */
export const isAscii = (typed: boolean | undefined, stream: Stream): boolean =>
  asciiDecision(typed, stream, process.env, process.platform).ascii;

/**
 * Blue and bold only: safe for every kind of colour vision, and the words stand without it. The bright
 * blue, as the other is next to unreadable on black (xterm's #0000ee has a contrast of 2.2).
 */
export async function textStyle(width: number, colour: boolean): Promise<TextStyle> {
  if (!colour) return { width, paint: (text) => text };
  const { Chalk } = await import('chalk');
  const chalk = new Chalk({ level: 1 });
  const paints: Readonly<Record<Tone, (text: string) => string>> = {
    plain: (text) => text,
    strong: chalk.bold,
    quiet: chalk.dim,
    binding: chalk.blueBright,
  };
  return { width, paint: (text, tone) => paints[tone](text) };
}
