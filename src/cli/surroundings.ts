/** What a run finds around it; read once, in `run.ts`, and handed on as a value. */
import { homedir } from 'node:os';
import type { Environment } from './options/environment.ts';

export type Surroundings = {
  readonly environment: Environment;
  /** Undefined where the folder has been removed under the run. */
  readonly workingDirectory: string | undefined;
  readonly home: string;
  readonly platform: NodeJS.Platform;
};

export const surroundings = (): Surroundings => ({
  environment: process.env,
  workingDirectory: currentFolder(),
  home: homedir(),
  platform: process.platform,
});

function currentFolder(): string | undefined {
  try {
    return process.cwd();
  } catch {
    return undefined;
  }
}
