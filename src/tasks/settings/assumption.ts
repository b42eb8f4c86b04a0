import type { Remark } from '../../base/remark.ts';
import type { SettingOrigin } from './setting-origin.ts';

/** Something the result rests on and nobody measured. */
export type Assumption = Omit<Remark, 'value'> & {
  readonly origin: SettingOrigin;
  /** What it is about, one by one, where its text only counts them. */
  readonly names?: readonly string[];
};

/** Its text, and whatever it is about by name. */
export const namingAll = ({ text, names }: Pick<Assumption, 'text' | 'names'>): string =>
  names === undefined ? text : `${text}: ${names.join(', ')}`;
