/**
 * Rows of readings that hide: behind a `#`, or inside a quote opened for one cell too long.
 *
 * Both are read as no readings by the rules of the table; a line that splits as a row does, with a
 * number where the reading stands, was more likely meant as one, and is refused.
 */

import { numberShape } from '../cells/numbers.ts';
import type { Findings } from '../findings.ts';
import { cellSpan } from '../rows/tokens.ts';
import type { Table } from '../tables/table.ts';

/** In a file whose quotes are our own no row can hide in one. */
export function tellHiddenRows(
  tables: readonly Table[],
  findings: Findings,
  ownQuotes: boolean,
): void {
  if (!ownQuotes) for (const table of tables) tellSwallowed(table, findings);
  tellCommented(tables, findings);
}

/** Whether a line has the cells of a row, a number as its reading among them. */
function looksLikeRow({ layout, delimiter }: Table, line: string): boolean {
  const cells = line.split(delimiter);
  const { length } = layout.header;
  return (
    cells.length > 1 &&
    (length === 0 || cells.length === length) &&
    layout.readings.some(({ column }) => {
      const text = (cells[column] ?? '').replace(/^\s*"|"\s*$/gu, '').trim();
      return numberShape(text) !== undefined;
    })
  );
}

function tellCommented(tables: readonly Table[], findings: Findings): void {
  const [table] = tables;
  const start = table?.header?.start ?? table?.rows[0]?.start;
  if (table === undefined || start === undefined) return;
  const { source } = table;
  const { text } = source;
  if (text.indexOf('\n#', start) === -1) return;
  const quoted = tables.flatMap(({ rows }) =>
    rows.flatMap(({ cells }) => cells.filter((cell) => cell.includes('\n#'))),
  );
  for (let at = text.indexOf('\n#', start); at !== -1; at = text.indexOf('\n#', at + 1)) {
    const end = text.indexOf('\n', at + 1);
    const line = text.slice(at + 1, end === -1 ? text.length : end);
    if (!looksLikeRow(table, line)) continue;
    if (quoted.some((cell) => cell.includes(line))) continue;
    findings.add('error', 'comment-or-row', () => ({
      message: `"${line.trim()}" may be a comment or a row`,
      at: source.placeAt(at + 1, line.length),
      hint: 'delete the line, or the # before it',
    }));
  }
}

function tellSwallowed(table: Table, findings: Findings): void {
  const { source, delimiter } = table;
  for (const row of table.rows) {
    if (!row.quoted) continue;
    for (const [column, cell] of row.cells.entries()) {
      if (!cell.includes('\n')) continue;
      if (!cell.split('\n').some((line, k) => k > 0 && looksLikeRow(table, line))) continue;
      findings.add('error', 'quote-unclosed', () => ({
        message: 'the quote that opens here closes lines later, over what looks like a row',
        at: source.placeAt(cellSpan(source, row, column, delimiter).offset, 1),
        hint: 'close it with a second " in its own line',
      }));
    }
  }
}
