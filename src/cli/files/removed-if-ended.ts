/** A file that is only half made when the run is told to end. */
import { rmSync } from 'node:fs';

const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

/** Removes it where a signal ends the run, which ends by that signal all the same; call what comes back when it is made. */
export function removedIfEnded(path: string): () => void {
  const forget = (): void => {
    for (const signal of signals) process.off(signal, end);
  };
  const end = (signal: NodeJS.Signals): void => {
    rmSync(path, { force: true });
    forget();
    process.kill(process.pid, signal);
  };
  for (const signal of signals) process.on(signal, end);
  return forget;
}
