import type { SettingOrigin } from './setting-origin.ts';

/** Something the result rests on and nobody measured. */
export type Assumption = {
  readonly code: string;
  readonly text: string;
  readonly origin: SettingOrigin;
};
