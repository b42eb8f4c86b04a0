/**
 * Whose each remark on a file is, where its rows are of several vehicles: that of the readings on its line;
 * of a line without a reading, the one that a cell of it names. All else is of the file as a whole.
 */
import type { Diagnostic } from '../../base/diagnostics.ts';
import { groupBy, type OneOrMore } from '../../base/group-by.ts';
import type { Reading } from '../../film/reading.ts';

export function toldByVehicle(
  diagnostics: readonly Diagnostic[],
  readings: readonly Reading[],
): readonly Diagnostic[] {
  if (diagnostics.length === 0) return diagnostics;
  const names = new Set(readings.map(({ vehicle }) => vehicle));
  if (names.size < 2) return diagnostics;
  const byLine = groupBy(readings, ({ origin }) => lineKey(origin));
  return diagnostics.map((one) => {
    if (one.at?.line === undefined) return one;
    const read = byLine.get(lineKey(one.at));
    const vehicle =
      read === undefined ? namedOn(one.at.lineText ?? '', names) : onlyVehicleOf(read);
    return vehicle === undefined ? one : { ...one, vehicle };
  });
}

const lineKey = ({ file, line = 0 }: { readonly file: string; readonly line?: number }): string =>
  `${line} ${file}`;

/** Undefined where two vehicles stand side by side. */
const onlyVehicleOf = ([{ vehicle }, ...rest]: OneOrMore<Reading>): string | null | undefined =>
  rest.every((one) => one.vehicle === vehicle) ? vehicle : undefined;

function namedOn(line: string, names: ReadonlySet<string | null>): string | undefined {
  const cells = line.split(/[,;\t|]/).map((cell) => cell.trim().replace(/^"(.*)"$/, '$1'));
  const named = [...new Set(cells.filter((cell) => names.has(cell)))];
  return named.length === 1 ? named[0] : undefined;
}
