/** How a run ends: what there is to say on standard error, and an exit code. */
import { counted } from '../base/counted.ts';
import type { Diagnostic } from '../base/diagnostics.ts';
import { groupBy } from '../base/group-by.ts';
import { inWords } from '../base/in-words.ts';
import { cutOfAKind, standsFor } from '../base/of-a-kind.ts';
import { sum } from '../base/sum.ts';
import { asciiText } from '../render/ascii-text.ts';
import { renderDiagnostic } from '../render/diagnostic-text.ts';
import { printable } from '../render/printable.ts';
import type { StreamedRun } from './command.ts';
import { exitCodeOf, exitCodes } from './exit-code.ts';
import { STANDARD_ERROR, terminalOn, writeError } from './files/standard-output.ts';
import { messageLook } from './message-look.ts';
import type { TypedOptions } from './options.ts';
import { isAscii } from './terminal.ts';

export function finish(diagnostics: readonly Diagnostic[], options: TypedOptions): number {
  writeError(saidAtEnd(diagnostics, options));
  return exitCodeOf(diagnostics);
}

/** Errors always, warnings unless quiet, notes with -v or counted. */
export function saidAtEnd(diagnostics: readonly Diagnostic[], options: TypedOptions): string {
  if (diagnostics.length === 0) return '';
  const { quiet, verbose } = options;
  const ascii = isAscii(options.ascii, terminalOn(STANDARD_ERROR));
  const notes = diagnostics.filter(({ severity }) => severity === 'note');
  const said = diagnostics.filter(({ severity }) => {
    if (severity === 'note') return verbose === true && quiet !== true;
    return severity === 'error' || quiet !== true;
  });
  const hidden = verbose === true || quiet === true ? 0 : notes.length;
  const count =
    hidden === 0
      ? ''
      : `leastcut: ${counted(hidden, 'note')} (${whatAbout(notes, ascii)}), -v shows them\n`;
  const look = messageLook(options);
  return (
    cutOfAKind(said)
      .map((one) => renderDiagnostic(one, ascii, look))
      .join('') +
    howMany(said) +
    count
  );
}

/** More messages than this are no longer counted by the eye. */
const AT_A_GLANCE = 10;

function howMany(said: readonly Diagnostic[]): string {
  if (said.length <= AT_A_GLANCE) return '';
  const counts = (['error', 'warning', 'note'] as const).flatMap((severity) => {
    const of = said.filter((one) => one.severity === severity);
    return of.length === 0 ? [] : [counted(sum(of.map(standsFor)), severity)];
  });
  return `leastcut: ${inWords(counts)}\n`;
}

/** What notes say where all say the same in a few words, else their kinds, the most frequent first. */
function whatAbout(notes: readonly Diagnostic[], ascii: boolean): string {
  const messages = new Set(notes.map(({ message }) => message));
  const [only] = messages;
  if (messages.size === 1 && only !== undefined && only.length <= FEW_WORDS) {
    return ascii ? asciiText(printable(only)) : printable(only);
  }
  return [...groupBy(notes, ({ code }) => code)]
    .sort(([, one], [, other]) => other.length - one.length)
    .map(([code, of]) => (of.length === 1 ? code : `${of.length} ${code}`))
    .join(', ');
}

const FEW_WORDS = 50;

/** The same for a job that is done, whose answer may be no. */
export function conclude(
  diagnostics: readonly Diagnostic[],
  isNo: boolean,
  options: TypedOptions,
): number {
  const code = finish(diagnostics, options);
  return code === exitCodes.done && isNo ? exitCodes.answerIsNo : code;
}

/** The same where the output is written already. */
export function concludeStream(
  { diagnostics, exit, told }: StreamedRun,
  noticed: readonly Diagnostic[],
  options: TypedOptions,
): number {
  const code = finish([...noticed, ...diagnostics], options);
  if (options.quiet !== true) {
    writeError(told.map((text) => `leastcut: ${text}\n`).join(''));
  }
  return code === exitCodes.done ? exit : code;
}
