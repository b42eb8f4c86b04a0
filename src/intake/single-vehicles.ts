/** A piece of a long table, which holds some vehicles, cut into pieces of one vehicle each. */

import { countLineEnds } from './rows/lines.ts';
import { cellText } from './rows/row.ts';
import { createSource, type Source } from './rows/source.ts';
import type { Row } from './rows/tokens.ts';

export type VehicleSource = { readonly vehicle: string; readonly source: Source };

/**
 * `column` is that of the vehicle's name. Rows without one are a part without a name: which vehicle they
 * are of is seen on the whole table only.
 */
export function singleVehicles(piece: Source, column: number): readonly VehicleSource[] {
  const from = piece.omitted?.at ?? 0;
  const nameIn = (row: Row): string => cellText(row, column);
  const firsts: { readonly vehicle: string; readonly start: number; readonly line: number }[] = [];
  for (const row of piece.split?.rows ?? []) {
    if (row.start < from) continue;
    const vehicle = nameIn(row);
    const above = firsts.at(-1);
    if (vehicle !== above?.vehicle) firsts.push({ vehicle, start: row.start, line: row.line });
  }
  const headLines = countLineEnds(piece.text, 0, from);
  return firsts.map(({ vehicle, start, line }, k) => ({
    vehicle,
    source: partOf(piece, start, {
      end: firsts[k + 1]?.start ?? piece.text.length,
      lines: line - headLines - 1,
    }),
  }));
}

/** The head of the table and the text between two offsets, which stands so many lines below it. */
function partOf(
  { name, text, quote, limits, omitted }: Source,
  start: number,
  { end, lines }: { readonly end: number; readonly lines: number },
): Source {
  const head = text.slice(0, omitted?.at ?? 0);
  return createSource(name, head + text.slice(start, end), {
    ...{ quote, limits },
    omitted: { at: head.length, lines },
  });
}
