/** Standard output, written as fast as its reader takes it, and to the last byte. */
import { fstatSync, writeSync } from 'node:fs';

/** By an error told to the entry: Node itself would go on writing to a reader that has gone. */
let failed = false;
process.stdout.on('error', () => {
  failed = true;
});

/**
 * Waits until a slow reader has taken the text; false once it has gone, or nothing can be written any
 * more. What went wrong is an event of the stream, for the entry to tell.
 */
export async function writeToReader(text: string): Promise<boolean> {
  const { stdout } = process;
  if (failed || stdout.destroyed) return false;
  if (isFile()) return writeToFile(text);
  if (!stdout.write(text)) await nextOf(stdout, ['drain', 'error', 'close']);
  return !failed && !stdout.destroyed;
}

const nextOf = (stream: NodeJS.WriteStream, events: readonly string[]): Promise<void> =>
  new Promise((resolve) => {
    const done = (): void => {
      for (const event of events) stream.off(event, done);
      resolve();
    };
    for (const event of events) stream.on(event, done);
  });

function isFile(): boolean {
  try {
    return fstatSync(1).isFile();
  } catch {
    return false;
  }
}

/** A disk that fills takes a part of a write without a word: the stream would lose the rest. */
function writeToFile(text: string): boolean {
  const bytes = Buffer.from(text);
  try {
    for (let from = 0; from < bytes.length; ) from += writeSync(1, bytes, from);
    return true;
  } catch (problem) {
    process.stdout.emit('error', problem);
    return false;
  }
}
