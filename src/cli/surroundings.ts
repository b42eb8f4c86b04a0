/** What a run finds around it; read once, in `run.ts`, and handed on as a value. */
import { localDay } from '../base/calendar.ts';
import type { Environment } from './options/environment.ts';

export type Surroundings = {
  readonly environment: Environment;
  /** Undefined where the folder has been removed under the run. */
  readonly workingDirectory: string | undefined;
  readonly home: string;
  readonly platform: NodeJS.Platform;
  /** The day by the clock here, which Node has to ask for its time zone. */
  readonly today: string;
};

export const surroundings = (): Surroundings => ({
  environment: process.env,
  workingDirectory: currentFolder(),
  home: homeFolder(),
  platform: process.platform,
  get today() {
    return localDay(new Date());
  },
});

/** As `node:os` has it, which takes half a millisecond to load. */
const homeFolder = (): string =>
  (process.platform === 'win32' ? undefined : process.env['HOME']) ??
  process.getBuiltinModule('node:os').homedir();

function currentFolder(): string | undefined {
  try {
    return process.cwd();
  } catch {
    return undefined;
  }
}
