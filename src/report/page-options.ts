import type { LengthUnit } from '../base/units.ts';

/** How a page is to be written. */
export type PageOptions = {
  readonly unit: LengthUnit;
  readonly verbose: boolean;
  /** Whether the page has room for drawings beside its tables. */
  readonly drawn?: boolean;
  /** Whether it may be read far from the terminal, where `-v` says nothing. */
  readonly onPaper?: boolean;
};

/** `(-v: which)` behind what there is more of; nothing on paper. */
export const byVerbose = (
  more: string,
  { onPaper = false }: Pick<PageOptions, 'onPaper'>,
): string => (onPaper ? '' : ` (-v${more})`);
