/** How wide help and messages are, and how messages stand out: as the terminal they are read on. */
import type { MessageLook } from '../render/diagnostic-text.ts';
import { STANDARD_ERROR, STANDARD_OUTPUT, terminalOn } from './files/standard-output.ts';
import type { TypedOptions } from './options.ts';
import { colourDecision, textWidth } from './terminal.ts';

/** Longer lines are hard to follow. */
const WIDEST_HELP = 100;

export const helpWidth = (): number =>
  Math.min(WIDEST_HELP, textWidth(terminalOn(STANDARD_OUTPUT), process.env).width);

/** What goes into a file or a pipe is one line a message, for whoever looks through it. */
export function messageLook({ color = 'auto' }: TypedOptions): MessageLook {
  const stream = terminalOn(STANDARD_ERROR);
  if (stream.isTTY !== true) return {};
  const { width } = textWidth(stream, process.env);
  const asked = { value: color, origin: 'flag', where: '--color' } as const;
  const { colour } = colourDecision(asked, stream, process.env);
  return colour ? { width, strong } : { width };
}

/** By hand: one piece of bold text is not worth loading what colours pages. */
const strong = (text: string): string => `\u001b[1m${text}\u001b[22m`;
