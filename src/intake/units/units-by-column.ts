/**
 * A table whose columns of readings are in different units, each named above its column: `Bonnet (µm);Roof (mil)`.
 *
 * Every column must name its own, the middle number of each must be a film of paint in it, and no panel may have two
 * columns, for then one may be the other again. Nothing else in the file may name a unit.
 */
import type { Micrometres } from '../../base/units.ts';
import { numberOf, numberShape } from '../cells/numbers.ts';
import { micrometresPer, type ReadingUnit, type TableUnit, unitSign } from '../cells/unit.ts';
import { columnTexts } from '../rows/column-texts.ts';
import type { Table } from '../tables/table.ts';

export type UnitsByColumn = ReadonlyMap<number, TableUnit>;
/** What the middle of a column must be to be believed. */
type Film = { readonly least: Micrometres; readonly most: Micrometres };

/** Undefined where one unit is named, or the columns do not prove theirs. */
export function unitsByColumn(table: Table, film: Film): UnitsByColumn | undefined {
  const { layout } = table;
  const named = layout.readings.flatMap(({ column }): readonly [number, ReadingUnit][] => {
    const unit = layout.header[column]?.unit;
    return unit === 'um' || unit === 'mil' ? [[column, unit]] : [];
  });
  const units = new Map(named);
  const several = new Set(units.values()).size > 1 && units.size === layout.readings.length;
  const panels = layout.readings.map(({ panel }) => panel);
  const sided = layout.readings.every(({ side }) => side !== undefined);
  if (!several || (!sided && (panels.includes(null) || new Set(panels).size < panels.length)))
    return undefined;
  return named.every(([column, unit]) => isFilm(table, column, unit, film)) ? units : undefined;
}

function isFilm(
  { rows }: Table,
  column: number,
  unit: ReadingUnit,
  { least, most }: Film,
): boolean {
  const sizes = [...columnTexts(rows, column)]
    .flatMap(([text, { count }]) => {
      const shape = numberShape(text);
      return shape === undefined ? [] : Array.from({ length: count }, () => numberOf(shape));
    })
    .sort((a, b) => a - b);
  const middle = (sizes[sizes.length >> 1] ?? 0) * micrometresPer[unit];
  return middle >= least && middle <= most;
}

/** `µm in "Bonnet (µm)", mil in "Roof (mil)"`. */
export const unitsByColumnSentence = ({ layout }: Table, units: UnitsByColumn): string =>
  `each column names its unit: ${[...units]
    .map(([column, unit]) => `${unitSign[unit]} in "${layout.header[column]?.text ?? ''}"`)
    .join(', ')}`;
