/** Help on a stream: asked for as an answer, unasked beside what is wrong. */
import { asciiText } from '../../render/ascii-text.ts';
import { exitCodes } from '../exit-code.ts';
import {
  STANDARD_ERROR,
  STANDARD_OUTPUT,
  terminalOn,
  writeAnswer,
  writeError,
} from '../files/standard-output.ts';
import { helpWidth } from '../message-look.ts';
import { isAscii } from '../terminal.ts';
import { rootHelp } from './help.ts';

/** The help of the program, on standard error where nobody asked for it; gives the exit code. */
export async function showHelp(asked: boolean): Promise<number> {
  if (asked) await writeHelp(rootHelp(helpWidth()));
  else remind(rootHelp(helpWidth()));
  return asked ? exitCodes.done : exitCodes.usage;
}

/** Help that was asked for. */
export const writeHelp = (text: string): Promise<void> =>
  writeAnswer(isAscii(undefined, terminalOn(STANDARD_OUTPUT)) ? asciiText(text) : text);

/** Help that was not, beside what is wrong. */
export const remind = (text: string): void =>
  writeError(isAscii(undefined, terminalOn(STANDARD_ERROR)) ? asciiText(text) : text);
