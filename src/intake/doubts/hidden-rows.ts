/**
 * Rows of readings that hide: behind a `#`, or inside a quote opened for one cell too long.
 *
 * Both are read as no readings by the rules of the table; a line that splits as a row does, with a
 * number where the reading stands, was more likely meant as one, and is refused. It is left out aloud where the file
 * says what its `#` means; and where the quote closes behind the words of a last line that is no row, and the place that
 * the line names is read in a row of its own, so that nothing is missing.
 */

import { foldedText, wholeWords } from '../cells/doubting-words.ts';
import { saysDeleted } from '../cells/markers.ts';
import { numberShape } from '../cells/numbers.ts';
import type { Findings } from '../findings.ts';
import { lineFrom } from '../rows/lines.ts';
import { cellSpan, type Row } from '../rows/tokens.ts';
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
  const meaning = [...text.matchAll(/^.*#.*$/gmu)].map(([line]) => line).find(explainsHash);
  for (let at = text.indexOf('\n#', start); at !== -1; at = text.indexOf('\n#', at + 1)) {
    const line = lineFrom(text, at + 1);
    if (!looksLikeRow(table, line)) continue;
    if (quoted.some((cell) => cell.includes(line))) continue;
    if (meaning !== undefined) {
      findings.add('warning', 'line-left-out', () => ({
        message: `"${line.trim()}" is left out, as the file says of such lines: "${meaning}"`,
        at: source.placeAt(at + 1, line.length),
      }));
      continue;
    }
    findings.add('error', 'comment-or-row', () => ({
      message: `"${line.trim()}" may be a comment or a row`,
      at: source.placeAt(at + 1, line.length),
      hint: 'delete the line, or the # before it',
    }));
  }
}

const subjects = wholeWords(
  `lines?|rows?|readings?|values?|entries|zeilen?|werte|messwerte|eintrage|lignes?|valeurs?|mesures?|lineas?|filas?|valores|
  righe|riga|valori|letture|regels?|rijen|waarden|linhas?|wiersze|linie|radky|rader|linjer|строки`,
);

/** `# lines beginning with # were struck out`, `# = deleted`. */
export function explainsHash(line: string): boolean {
  const at = line.lastIndexOf('#');
  if (at === -1) return false;
  const [before, behind] = [line.slice(0, at).replace(/^#/u, ''), line.slice(at + 1)];
  const isSign =
    /^[\s"'(]*$/u.test(before) &&
    /^["')]?\s*(?:[=:]|means|bedeutet|signifie|significa)/iu.test(behind);
  const isSaid = subjects.test(foldedText(before)) && !/\d/u.test(before);
  return (isSign || isSaid) && saysDeleted(behind.replace(/^[\s"')=:]+/u, ''));
}

function tellSwallowed(table: Table, findings: Findings): void {
  const { source, delimiter } = table;
  for (const row of table.rows) {
    if (!row.quoted) continue;
    for (const [column, cell] of row.cells.entries()) {
      if (!cell.includes('\n')) continue;
      const hidden = cell.split('\n').filter((line, k) => k > 0 && looksLikeRow(table, line));
      if (hidden.length === 0) continue;
      const offset = (): number => cellSpan(source, row, column, delimiter).offset;
      if (isText(table, row, cell, hidden)) {
        findings.add('warning', 'reading-doubted', () => ({
          message: `"${hidden[0]}" is read as words of the text that the quote here opens, and as no row`,
          at: source.placeAt(offset(), 1),
          hint: 'if it is a row, close the quote in its own line',
        }));
        continue;
      }
      findings.add('error', 'quote-unclosed', () => ({
        message: 'the quote that opens here closes lines later, over what looks like a row',
        at: source.placeAt(offset(), 1),
        hint: 'close it with a second " in its own line',
      }));
    }
  }
}

/**
 * Whether lines like rows within a quoted cell are text: the cell ends in words, on a line that is no row, its own row is
 * whole, and each place that the lines name has a row of its own.
 */
function isText(table: Table, row: Row, cell: string, hidden: readonly string[]): boolean {
  const { layout, rows, delimiter } = table;
  const last = cell.split('\n').at(-1) ?? '';
  if (row.cells.length !== layout.header.length || !/\p{L}[.!)]?$/u.test(last)) return false;
  if (hidden.includes(last)) return false;
  const keys = (['vehicle', 'panel', 'point'] as const).map((role) => layout.columns.get(role));
  if (keys[1] === undefined || keys[2] === undefined) return false;
  const placeIn = (cells: readonly string[]): string =>
    keys.map((k) => (k === undefined ? '' : (cells[k] ?? '').trim())).join('\0');
  const places = new Set(rows.map((own) => placeIn(own.cells)));
  return hidden.every((line) => places.has(placeIn(line.split(delimiter))));
}
