/** Standard output, written as fast as its reader takes it. */

/** Waits until a slow reader has taken the text; false once it has gone. */
export async function writeToReader(text: string): Promise<boolean> {
  const { stdout } = process;
  if (stdout.destroyed) return false;
  if (!stdout.write(text)) await nextOf(stdout, ['drain', 'error', 'close']);
  return !stdout.destroyed;
}

const nextOf = (stream: NodeJS.WriteStream, events: readonly string[]): Promise<void> =>
  new Promise((resolve) => {
    const done = (): void => {
      for (const event of events) stream.off(event, done);
      resolve();
    };
    for (const event of events) stream.on(event, done);
  });
