/**
 * The same rows twice in one file: a table pasted a second time, which would count every reading
 * double. Few rows, or rows that are all alike, may be the same by chance.
 */
import type { Findings } from '../findings.ts';
import type { Row } from '../rows/tokens.ts';
import { placeOf, type Table } from '../tables/table.ts';

const fewestRows = 4;
/** With the second of each reading in the rows, two that come again are no chance. */
const fewestTimed = 2;

export function tellRepeatedRows(tables: readonly Table[], findings: Findings): void {
  for (const [k, table] of tables.entries()) {
    const twin = tables.slice(0, k).find((other) => isTwin(other, table));
    const [first] = table.rows;
    if (twin !== undefined && first !== undefined) {
      tell(table, first, twin.rows[0]?.line ?? 0, findings);
      continue;
    }
    const middle = table.rows.length / 2;
    const again = table.rows[middle];
    const halves = [table.rows.slice(0, middle), table.rows.slice(middle)] as const;
    if (again === undefined || !sameRows(...halves, fewestOf(table))) continue;
    tell(table, again, table.rows[0]?.line ?? 0, findings);
  }
}

const isTwin = (a: Table, b: Table): boolean =>
  a.given.panel === b.given.panel &&
  a.given.vehicle === b.given.vehicle &&
  sameRows(a.rows, b.rows, fewestOf(a));

const second = /\d{1,2}:\d\d:\d\d/u;

function fewestOf({ layout, rows }: Table): number {
  const at = layout.columns.get('time');
  const timed = at !== undefined && rows.every(({ cells }) => second.test(cells[at] ?? ''));
  return timed ? fewestTimed : fewestRows;
}

function sameRows(a: readonly Row[], b: readonly Row[], fewest: number): boolean {
  if (a.length < fewest || a.length !== b.length) return false;
  const texts = new Set<string>();
  for (const [k, row] of a.entries()) {
    const [text, other] = [row.cells.join('\0'), b[k]?.cells.join('\0')];
    if (text !== other) return false;
    texts.add(text);
  }
  return texts.size >= fewest;
}

function tell(table: Table, row: Row, line: number, findings: Findings): void {
  findings.add('error', 'table-repeated', () => ({
    message: `the rows from here on are those from line ${line} on, a second time`,
    at: placeOf(table, row, 0),
    hint: 'delete one of the two',
  }));
}
