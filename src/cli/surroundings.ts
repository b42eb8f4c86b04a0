/** What a run finds around it; read once, in `run.ts`, and handed on as a value. */
import { homedir } from 'node:os';
import { localDay } from '../base/calendar.ts';
import type { Environment } from './options/environment.ts';

export type Surroundings = {
  readonly environment: Environment;
  /** Undefined where the folder has been removed under the run. */
  readonly workingDirectory: string | undefined;
  readonly home: string;
  readonly platform: NodeJS.Platform;
  /** The day by the clock here. */
  readonly today: string;
};

export const surroundings = (): Surroundings => ({
  environment: process.env,
  workingDirectory: currentFolder(),
  home: homedir(),
  platform: process.platform,
  today: localDay(new Date()),
});

function currentFolder(): string | undefined {
  try {
    return process.cwd();
  } catch {
    return undefined;
  }
}
