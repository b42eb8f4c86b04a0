/**
 * `Bonnet;112;98` above `Bonnet;115;98`, and no line of names: where each row is a reading, the second number may be
 * what else the gauge shows, as its charge. Both columns are read, and it is told; of a line for each panel all numbers
 * are its readings.
 */
import type { Findings } from '../findings.ts';
import type { SettledTable } from '../readings/readings.ts';
import { cellText } from '../rows/row.ts';
import { placeOf } from '../tables/table.ts';

export function tellUnnamedSeries(tables: readonly SettledTable[], findings: Findings): void {
  for (const { table } of tables) {
    const { kind, header, columns, readings } = table.layout;
    const panelAt = columns.get('panel');
    const [first, second] = readings;
    if (kind !== 'list' || header.length > 0 || panelAt === undefined) continue;
    if (first === undefined || second === undefined) continue;
    const row = table.rows.find((one, k) => {
      const above = table.rows[k - 1];
      return above !== undefined && cellText(above, panelAt) === cellText(one, panelAt);
    });
    if (row === undefined) continue;
    const last = readings.at(-1) ?? second;
    findings.add('warning', 'column-unnamed', () => ({
      message: `columns ${first.column + 1} to ${last.column + 1} have no names, a panel has several rows, and all their numbers are read as readings`,
      at: placeOf(table, row, second.column),
      hint: 'if a column holds something else, take it out, or put a line of names above them: panel, reading, battery …',
    }));
  }
}
