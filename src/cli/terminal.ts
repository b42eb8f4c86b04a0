/** Width and colour of the text output. */
import { Chalk } from 'chalk';
import type { TextStyle } from '../render/text.ts';
import type { Tone } from '../report/model.ts';

type Environment = Readonly<Record<string, string | undefined>>;
type Stream = { readonly isTTY?: boolean; readonly columns?: number };

const LEAST_WIDTH = 60;
const USUAL_WIDTH = 80;

/** The terminal's width, else COLUMNS, else 80. */
export function textWidth(stream: Stream, environment: Environment): number {
  const stated = Number.parseInt(environment['COLUMNS'] ?? '', 10);
  const width = stream.columns ?? (Number.isNaN(stated) ? USUAL_WIDTH : stated);
  return Math.max(LEAST_WIDTH, width);
}

/** Order of decision: flag, NO_COLOR, FORCE_COLOR, then the terminal. */
export function wantsColour(
  flag: 'auto' | 'always' | 'never',
  stream: Stream,
  environment: Environment,
): boolean {
  if (flag !== 'auto') return flag === 'always';
  if ((environment['NO_COLOR'] ?? '') !== '') return false;
  const force = environment['FORCE_COLOR'];
  if (force !== undefined) return force !== '0' && force !== 'false';
  return stream.isTTY === true && environment['TERM'] !== 'dumb';
}

/** Blue and bold only: safe for every kind of colour vision, and the words stand without it. */
export function textStyle(width: number, colour: boolean): TextStyle {
  const chalk = new Chalk({ level: colour ? 1 : 0 });
  const paints: Readonly<Record<Tone, (text: string) => string>> = {
    plain: (text) => text,
    strong: chalk.bold,
    quiet: chalk.dim,
    binding: chalk.blue,
  };
  return { width, paint: (text, tone) => paints[tone](text) };
}
