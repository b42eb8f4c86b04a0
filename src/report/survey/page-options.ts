import type { ShowUnit } from './film-table.ts';

export type PageOptions = {
  readonly unit: ShowUnit;
  readonly verbose: boolean;
  /** Whether the page has room for drawings beside its tables. */
  readonly drawn?: boolean;
};
