import type { Remark } from '../../base/remark.ts';
import type { SettingOrigin } from './setting-origin.ts';

/** Something the result rests on and nobody measured. */
export type Assumption = Omit<Remark, 'value'> & {
  readonly origin: SettingOrigin;
};
