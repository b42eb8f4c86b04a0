/**
 * Rows with one cell more than the header, the first of which counts them: `"1","bonnet",1,104` under
 * `"panel","point","reading"`, as programs for statistics write a table with the names of its rows.
 */
import type { Source } from '../rows/source.ts';
import { cellSpan, type Delimiter, type Row } from '../rows/tokens.ts';

export const rowNamesSentence =
  'every row begins with its own number, which the header does not name: it is passed over';

const fewestRows = 2;

/** The rows without that cell; undefined where some row is otherwise. */
export function withoutRowNames(
  source: Source,
  delimiter: Delimiter,
  header: Row,
  rows: readonly Row[],
): readonly Row[] | undefined {
  const width = header.cells.length + 1;
  const start = rows.findIndex(({ line }) => line > header.line);
  const first = Number((rows[start]?.cells[0] ?? '').trim());
  if (first !== 0 && first !== 1) return undefined;
  const below = start === -1 ? [] : rows.slice(start);
  if (below.length < fewestRows) return undefined;
  const countsRows = below.every(
    ({ cells }, k) => cells.length === width && (cells[0] ?? '').trim() === String(first + k),
  );
  if (!countsRows) return undefined;
  // The rows begin behind that cell: their places are read off the text from there.
  return rows.map((row) =>
    row.line > header.line
      ? {
          ...row,
          cells: row.cells.slice(1),
          start: cellSpan(source, row, 1, delimiter).offset,
          quoted: true,
        }
      : row,
  );
}
