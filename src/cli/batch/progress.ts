/** How far a batch has come, on a terminal only, in one line that is written over. */

import { STANDARD_ERROR, terminalOn, writeError } from '../files/standard-output.ts';
import type { TypedOptions } from '../options.ts';

export type Progress = { readonly show: (done: number) => void; readonly end: () => void };

/** Milliseconds between two looks at it. */
const pause = 200;

export function showProgress(jobs: number, { quiet }: TypedOptions): Progress {
  if (terminalOn(STANDARD_ERROR).isTTY !== true || quiet === true)
    return { show: () => {}, end: () => {} };
  let next = 0;
  return {
    show: (done) => {
      const now = performance.now();
      if (now < next && done < jobs) return;
      next = now + pause;
      writeError(`\r${done} of ${jobs} jobs`);
    },
    end: () => {
      writeError('\r\u001b[K');
    },
  };
}
