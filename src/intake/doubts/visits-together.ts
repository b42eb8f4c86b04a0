/**
 * Whether a file that is read as one visit holds several: by days, by tables, by a column that is not read, by lines
 * between rows, by the readings alone. Rows that number their repeats say themselves what is read again.
 */
import type { Reading } from '../../film/reading.ts';
import { roleOfKey } from '../beside/sayings.ts';
import type { Findings } from '../findings.ts';
import { linePlace } from '../readings/reading-place.ts';
import type { SettledTable } from '../readings/readings.ts';
import type { Source } from '../rows/source.ts';
import { type Metadatum, placeOf } from '../tables/table.ts';
import type { Scatter } from './points-read-apart.ts';
import type { How } from './read-again.ts';
import { doubtLaterRounds, doubtRounds, doubtUnreadColumns } from './rounds-together.ts';
import { doubtDays, type Part } from './several-days.ts';

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
  const isTold =
    doubtTables(parts, how, findings) ||
    parts.some((part) => doubtUnreadColumns(part, how, findings)) ||
    underLines(readings, metadata, source).some((under) => doubtRounds(under, how, findings));
  if (isTold) return;
  const own = tables.map(({ table }) => table);
  doubtLaterRounds(readings, own, how, findings);
}

type TableReadings = Pick<SettledTable, 'table'> & { readonly readings: readonly Reading[] };

function doubtTables(parts: readonly TableReadings[], how: How, findings: Findings): boolean {
  if (parts.length < 2) return false;
  const placed = parts.flatMap(({ table, readings: own }, k) => {
    const row = table.header ?? table.rows[0];
    const beside =
      table.header !== undefined && table.header.line === parts[k - 1]?.table.header?.line;
    return row === undefined ? [] : [{ readings: own, at: placeOf(table, row, 0), beside }];
  });
  return doubtRounds(placed, how, findings);
}

/** `Customer: Miller`, and further down `Customer: Jones`: the readings under each, key by key. */
function underLines(
  readings: readonly Reading[],
  metadata: readonly Metadatum[],
  source: Source,
): readonly (readonly Part[])[] {
  const keys = [...new Set(metadata.map(({ key }) => key))].filter((key) => !isSaid(key));
  return keys.flatMap((key) => {
    const lines = metadata.filter((one) => one.key === key);
    if (new Set(lines.map(({ value }) => value)).size < 2) return [];
    const parts = lines.map(({ line }, k) => {
      const end = lines[k + 1]?.line ?? Number.POSITIVE_INFINITY;
      const under = readings.filter(({ origin }) => origin.line > line && origin.line < end);
      return { readings: under, at: linePlace(source, line) };
    });
    return [parts.filter(({ readings: under }) => under.length > 0)];
  });
}

/** What such a line says of its readings is with each of them, or told elsewhere. */
const isSaid = (key: string): boolean => {
  const role = roleOfKey(key);
  return role !== undefined && role !== 'time' && role !== 'note';
};

const namesPoints = ({ table: { layout }, placesArePoints }: SettledTable): boolean =>
  layout.columns.has('point') || layout.series === 'point' || placesArePoints;
