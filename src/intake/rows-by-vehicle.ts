/**
 * Whose each row of a table with a column of vehicles is: its line, by the name of its vehicle, in the order
 * in which the vehicles come. Nothing where it cannot be told of every row.
 */

import { decode, type GaugeFileText } from './bytes/decode.ts';
import { createFindings } from './findings.ts';
import type { IntakeOptions } from './intake-options.ts';
import { divideIntoParts } from './parts/sections.ts';
import { findTable } from './parts/table-start.ts';
import { createNames } from './readings/same-names.ts';
import { canonicalOptions, isCanonicalCsv, restoredRows } from './rows/canonical-csv.ts';
import { cellText } from './rows/row.ts';
import { fillDown } from './tables/fill-down.ts';

export type RowsByVehicle = ReadonlyMap<string, readonly number[]>;

export function rowsByVehicle(
  file: GaugeFileText,
  asked: IntakeOptions,
): RowsByVehicle | undefined {
  const decoded = decode(file, asked);
  if (decoded.value === undefined) return undefined;
  const { source } = decoded.value;
  const canonical = isCanonicalCsv(source);
  const split = findTable(source, canonical ? canonicalOptions(asked) : asked);
  if (split.value === undefined) return undefined;
  const findings = createFindings(file.name);
  const { start, context } = split.value;
  const written = canonical ? restoredRows(split.value.rows) : split.value.rows;
  const { tables } = divideIntoParts(written, start, { ...split.value, findings });
  const name = createNames();
  const lines = new Map<string, number[]>();
  for (const table of tables) {
    const column = table.layout.columns.get('vehicle');
    if (column === undefined) return undefined;
    for (const row of fillDown(table, findings).table.rows) {
      const vehicle = name(cellText(row, column));
      const own = lines.get(vehicle);
      if (own === undefined) lines.set(vehicle, [row.line]);
      else own.push(row.line);
    }
  }
  return [...lines].every(([vehicle, own]) => isSureName(vehicle, own, context.isPanel))
    ? lines
    : undefined;
}

/** A cell that stands in the wrong column names its vehicle once, or is the name of a panel. */
const isSureName = (
  vehicle: string,
  { length }: readonly number[],
  isPanel: (label: string) => boolean,
): boolean => vehicle !== '' && length > 1 && !isPanel(vehicle);
