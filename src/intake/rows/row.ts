/** One row of a table: its cells, and where it stands in the text. */
export type Row = {
  readonly cells: readonly string[];
  /** Line of the row's first character, from 1. */
  readonly line: number;
  /** Offset of the row's first character, always the first of a line. */
  readonly start: number;
  /** Whether its cells may stand in the text in another way than here: in quotes, or not at all. */
  readonly quoted: boolean;
  /** Where each cell stands in the text, of a line that is cut up otherwise than at a mark. */
  readonly offsets?: readonly number[];
};

/** What a cell says, blanks around it aside; nothing where the row ends before it. */
export const cellText = ({ cells }: Row, column: number): string => (cells[column] ?? '').trim();

/** Where a cell of a row without quotes starts, blanks included. */
export function cellOffset({ cells, start, offsets }: Row, column: number): number {
  if (offsets !== undefined) return offsets[column] ?? start;
  let offset = start;
  for (let k = 0; k < column && k < cells.length; k += 1) offset += (cells[k] ?? '').length + 1;
  return offset;
}

/** The character of its line that a cell starts at, counted from 1; of a row without quotes. */
export function cellColumn(row: Row, column: number): number {
  const cell = row.cells[column] ?? '';
  const blanks = cell.trim() === '' ? 0 : cell.length - cell.trimStart().length;
  return cellOffset(row, column) - row.start + blanks + 1;
}
