/**
 * The texts of a column, blanks around them aside: each once, with the row where it stands first.
 *
 * A file of a million rows has some thousand different texts in a column of readings, some dozen in one of
 * panels. What is asked of the text of a cell is therefore asked once a text; only where the answer is
 * yes are the rows gone through. The texts are collected once for all who ask: rows never change.
 */
import type { Row } from './row.ts';

export type ColumnText = {
  /** The first row with this text. */
  readonly row: Row;
  readonly count: number;
};
/** In the order in which they come first in the file. */
export type ColumnTexts = ReadonlyMap<string, ColumnText>;

const collected = new WeakMap<readonly Row[], Map<number, ColumnTexts>>();

export function columnTexts(rows: readonly Row[], column: number): ColumnTexts {
  const columns = collected.get(rows) ?? new Map<number, ColumnTexts>();
  collected.set(rows, columns);
  const texts = columns.get(column) ?? collect(rows, column);
  columns.set(column, texts);
  return texts;
}

function collect(rows: readonly Row[], column: number): ColumnTexts {
  const texts = new Map<string, { readonly row: Row; count: number }>();
  // Rows of one panel stand together: a cell like the one above is not looked up.
  let above: { readonly cell: string; readonly text: { count: number } } | undefined;
  for (const row of rows) {
    const cell = row.cells[column] ?? '';
    if (above?.cell !== cell) {
      const key = cell.trim();
      let text = texts.get(key);
      if (text === undefined) {
        text = { row, count: 0 };
        texts.set(key, text);
      }
      above = { cell, text };
    }
    above.text.count += 1;
  }
  return texts;
}

/** Whether some cell of a column has a text of which this is true. */
export function someText(
  rows: readonly Row[],
  column: number,
  test: (text: string) => boolean,
): boolean {
  for (const text of columnTexts(rows, column).keys()) if (test(text)) return true;
  return false;
}
