/**
 * Whether a file that is read as one visit holds several: by days, by tables, by a column that is not read. Rows that
 * number their repeats say themselves what is read again.
 */
import type { Reading } from '../../film/reading.ts';
import type { Findings } from '../findings.ts';
import type { SettledTable } from '../readings/readings.ts';
import type { Source } from '../rows/source.ts';
import { type Metadatum, placeOf } from '../tables/table.ts';
import type { Scatter } from './points-read-apart.ts';
import { doubtRounds, doubtUnreadColumns } from './rounds-together.ts';
import { doubtDays } from './several-days.ts';

type Known = {
  readonly source: Source;
  readonly metadata: readonly Metadatum[];
  readonly plausible: Scatter;
};
type Read = {
  readonly readings: readonly Reading[];
  readonly byTable: readonly (readonly Reading[])[];
};

export function doubtVisits(
  { tables }: { readonly tables: readonly SettledTable[] },
  { readings, byTable }: Read,
  { source, metadata, plausible: scatter }: Known,
  findings: Findings,
): void {
  const how = {
    pointsAreNamed: tables.every(namesPoints),
    repeatsAreNumbered: tables.some(({ table }) => table.layout.columns.has('repeat')),
    scatter,
  };
  if (doubtDays(readings, { source, metadata, how }, findings)) return;
  const parts = tables.map(({ table }, k) => ({ table, readings: byTable[k] ?? [] }));
  if (parts.length > 1) {
    const placed = parts.flatMap(({ table, readings: own }, k) => {
      const row = table.header ?? table.rows[0];
      const beside =
        table.header !== undefined && table.header.line === parts[k - 1]?.table.header?.line;
      return row === undefined ? [] : [{ readings: own, at: placeOf(table, row, 0), beside }];
    });
    doubtRounds(placed, how, findings);
  }
  for (const part of parts) doubtUnreadColumns(part, how, findings);
}

const namesPoints = ({ table: { layout }, placesArePoints }: SettledTable): boolean =>
  layout.columns.has('point') || layout.series === 'point' || placesArePoints;
