/**
 * How large the parts of an export may be. A table of readings stays far below all of them; what
 * goes beyond is no table, or has lost its line ends or a closing quote.
 */
export type Limits = {
  /** Characters from the first of a row to its line end, quoted line ends counted. */
  readonly longestRow: number;
  /** Cells of one row. */
  readonly mostColumns: number;
};

export const usualLimits: Limits = { longestRow: 100_000, mostColumns: 2_000 };

/** Bytes that decisions about a long file are taken from. */
export const sampleBytes = 1024 * 1024;
