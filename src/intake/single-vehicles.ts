/** A piece of a long table, which holds some vehicles, cut into pieces of one vehicle each. */
import { createSource, linesOmitted, type Source } from './rows/source.ts';
import { countLineEnds, type Row } from './rows/tokens.ts';

export type VehicleSource = { readonly vehicle: string; readonly source: Source };

/**
 * `column` is that of the vehicle's name. Rows without one are a part without a name: which vehicle they
 * are of is seen on the whole table only.
 */
export function singleVehicles(piece: Source, column: number): readonly VehicleSource[] {
  const from = piece.omitted?.at ?? 0;
  const nameIn = ({ cells }: Row): string => (cells[column] ?? '').trim();
  const firsts: { readonly vehicle: string; readonly start: number }[] = [];
  for (const row of piece.split?.rows ?? []) {
    if (row.start < from) continue;
    const vehicle = nameIn(row);
    const above = firsts.at(-1);
    if (vehicle !== above?.vehicle) firsts.push({ vehicle, start: row.start });
  }
  return firsts.map(({ vehicle, start }, k) => ({
    vehicle,
    source: partOf(piece, start, firsts[k + 1]?.start ?? piece.text.length),
  }));
}

/** The head of the table and the text between two offsets, which keeps its lines. */
function partOf(piece: Source, start: number, end: number): Source {
  const { name, text, quote, limits, omitted } = piece;
  const head = text.slice(0, omitted?.at ?? 0);
  const above = countLineEnds(text, head.length, start);
  return createSource(name, head + text.slice(start, end), {
    ...{ quote, limits },
    omitted: { at: head.length, lines: linesOmitted(omitted, start) + above },
  });
}
