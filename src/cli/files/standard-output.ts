/**
 * Standard output and standard error, written to the last byte.
 *
 * Node's streams take longer to load than a page takes to write, and of a file they make one write and
 * take a short one for the whole. So a file, a pipe, a socket or /dev/null is written to directly; a terminal goes by
 * its stream, and so does what a pipe that never blocks does not take at once.
 */
import { fstatSync, type Stats, statSync, writeSync } from 'node:fs';
import { exitCodes } from '../exit-code.ts';
import { readerHasGone, reasonOf, systemCodeOf } from './system-code.ts';

type Descriptor = 1 | 2;
export const STANDARD_OUTPUT: Descriptor = 1;
export const STANDARD_ERROR: Descriptor = 2;

/** Why nothing can be written to standard output any more. */
let lost: 'the reader has gone' | 'it cannot be written' | undefined;

/** A reader that has gone is no fault: the run ends quietly, with the code that it ends with anyway. */
function loseOutput(problem: unknown): void {
  if (lost !== undefined) return;
  lost = readerHasGone(problem) ? 'the reader has gone' : 'it cannot be written';
  if (lost === 'the reader has gone') return;
  process.exitCode = exitCodes.output;
  const why = reasonOf(problem);
  writeError(`leastcut: error[output-unwritable]: standard output cannot be written: ${why}\n`);
}

/** What a run that was to end with a code ends with. */
export const endingWith = (code: number): number =>
  lost === 'it cannot be written' ? exitCodes.output : code;

/** The stream behind a descriptor, where that may be a terminal: no file, pipe or socket is one. */
export const terminalOn = (descriptor: Descriptor): { isTTY?: boolean; columns?: number } =>
  isDirect(descriptor) ? {} : streamOf(descriptor);

/**
 * Writes a part of what is to come; waits until a slow reader has taken it. False once he has gone, or
 * nothing can be written any more.
 */
export async function writeToReader(part: string | Uint8Array): Promise<boolean> {
  if (lost === undefined) {
    if (statOf(() => fstatSync(STANDARD_OUTPUT))?.isFile() === true)
      writeDirectly(STANDARD_OUTPUT, part);
    else await writeToStream(part);
  }
  return lost === undefined;
}

/** Writes all there is. */
export async function writeAnswer(text: string): Promise<void> {
  if (lost !== undefined) return;
  const rest = isDirect(STANDARD_OUTPUT) ? writeDirectly(STANDARD_OUTPUT, text) : text;
  if (rest.length > 0) await writeToStream(rest);
}

/** Nobody is told of an error that cannot be written. */
export function writeError(text: string): void {
  const rest = isDirect(STANDARD_ERROR) ? writeDirectly(STANDARD_ERROR, text) : text;
  if (rest.length > 0) streamOf(STANDARD_ERROR).write(rest);
}

async function writeToStream(part: string | Uint8Array): Promise<void> {
  const stdout = streamOf(STANDARD_OUTPUT);
  if (!stdout.write(part)) await nextOf(stdout, ['drain', 'error', 'close']);
  if (stdout.destroyed) lost ??= 'the reader has gone';
}

const nextOf = (stream: NodeJS.WriteStream, events: readonly string[]): Promise<void> =>
  new Promise((resolve) => {
    const done = (): void => {
      for (const event of events) stream.off(event, done);
      resolve();
    };
    for (const event of events) stream.on(event, done);
  });

const opened = new Set<Descriptor>();

/** Whether nothing of what was said is still to be written: a stream may hold some of it, a direct write does not. */
export const isAllWritten = (): boolean => opened.size === 0;

/** Node would go on writing to a reader that has gone: its errors are listened to from the first. */
function streamOf(descriptor: Descriptor): NodeJS.WriteStream {
  const stream = descriptor === STANDARD_OUTPUT ? process.stdout : process.stderr;
  if (!opened.has(descriptor)) {
    opened.add(descriptor);
    stream.on('error', descriptor === STANDARD_OUTPUT ? loseOutput : () => undefined);
  }
  return stream;
}

/** What can be written to without its stream. */
function isDirect(descriptor: Descriptor): boolean {
  const stat = statOf(() => fstatSync(descriptor));
  if (stat === undefined) return false;
  return stat.isFile() || stat.isFIFO() || stat.isSocket() || isNowhere(stat);
}

/** What is written is thrown away. Not every system has the device. */
const isNowhere = ({ rdev }: Stats): boolean => statOf(() => statSync('/dev/null'))?.rdev === rdev;

/** Nothing stands behind a descriptor that is closed. */
function statOf(stat: () => Stats): Stats | undefined {
  try {
    return stat();
  } catch {
    return undefined;
  }
}

const NOTHING = new Uint8Array();

/** What a pipe that never blocks has no room for is left over. */
function writeDirectly(descriptor: Descriptor, part: string | Uint8Array): Uint8Array {
  const bytes = typeof part === 'string' ? Buffer.from(part) : part;
  let from = 0;
  try {
    while (from < bytes.length) from += writeSync(descriptor, bytes, from);
  } catch (problem) {
    if (systemCodeOf(problem) === 'EAGAIN') return bytes.subarray(from);
    if (descriptor === STANDARD_OUTPUT) loseOutput(problem);
  }
  return NOTHING;
}
