/** How far a batch has come, on a terminal only, in one line that is written over. */

import {
  STANDARD_ERROR,
  STANDARD_OUTPUT,
  terminalOn,
  writeError,
} from '../files/standard-output.ts';
import type { TypedOptions } from '../options.ts';
import { isPage } from './is-page.ts';

export type Progress = {
  readonly show: (done: number) => void;
  /** Takes the line away: nothing else may stand behind it. */
  readonly end: () => void;
};

const system = { terminalOn, writeError };

/** Milliseconds between two looks at it. */
const pause = 200;

/** What stands behind the two outputs. */
type Outputs = {
  readonly terminalOn: typeof terminalOn;
  readonly writeError: typeof writeError;
};

export function showProgress(
  jobs: number,
  options: TypedOptions,
  { terminalOn, writeError }: Outputs = system,
): Progress {
  const isSeen = terminalOn(STANDARD_ERROR).isTTY === true && options.quiet !== true;
  // Records that come to the terminal one by one say themselves how far it is.
  const isSaid = recordsToReader(options) && terminalOn(STANDARD_OUTPUT).isTTY === true;
  if (!isSeen || isSaid) return { show: () => {}, end: () => {} };
  let next = 0;
  let stands = false;
  return {
    show: (done) => {
      const now = performance.now();
      if (now < next && done < jobs) return;
      next = now + pause;
      stands = true;
      writeError(`\r${done} of ${jobs} jobs`);
    },
    end: () => {
      if (stands) writeError('\r\u001b[K');
      stands = false;
    },
  };
}

const recordsToReader = ({ out, format }: TypedOptions): boolean =>
  out === undefined && !isPage(format);
