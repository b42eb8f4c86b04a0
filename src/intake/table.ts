/** A table whose columns are known, and what is said of a cell that gives no reading. */
import type { Layout } from './layout.ts';
import type { Source } from './source.ts';
import type { Delimiter, Row } from './tokens.ts';

export type ExcludedCell = {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly text: string;
  readonly reason: string;
};
export type Table = {
  readonly source: Source;
  readonly delimiter: Delimiter;
  readonly layout: Layout;
  readonly rows: readonly Row[];
};
