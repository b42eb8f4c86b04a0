/**
 * The places of a file that name a table's unit: the header of its readings, a row of units under it, a line above, a
 * column of units. Each with its evidence; which of them holds is for `reading-unit.ts` to say.
 */

import type { Place } from '../../base/diagnostics.ts';
import { type NamedUnit, splitUnit, unitNamed } from '../cells/unit.ts';
import { ditto, meansNoReading } from '../cells/words.ts';
import type { UnitLine } from '../parts/section-state.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { placeOf, type Table } from '../tables/table.ts';
import { unitTextAt } from './units-row.ts';

/** One place of the file that names a unit, or a word where a unit should stand. */
export type Statement = {
  readonly unit: NamedUnit | undefined;
  readonly text: string;
  readonly at: () => Place;
  readonly evidence: string;
  /** `0.001 mm`: µm, or how finely a gauge reads millimetres. */
  readonly factored?: true;
};

/** Lines and rows that may name a unit. */
export type UnitPlaces = {
  readonly above: readonly UnitLine[];
  /** The last line of the table before, 0 for the first. */
  readonly since: number;
  readonly unitsRow: Row | undefined;
};

/** What stands beside the rows. */
export const statedElsewhere = (table: Table, places: UnitPlaces): readonly Statement[] => [
  ...statedByHeader(table),
  ...statedByUnitsRow(table, places.unitsRow),
  ...statedAbove(table, places),
];

function statedByHeader(table: Table): readonly Statement[] {
  const stated = statedByNames(
    table,
    table.layout.readings.map(({ column }) => column),
  );
  const behind = statedBehindNames(table);
  const { columns, kind } = table.layout;
  const corner = columns.get('panel') ?? (kind === 'wide' ? columns.get('point') : undefined);
  if (stated.length + behind.length > 0 || corner === undefined) return [...stated, ...behind];
  // `Panel (µm)`, the corner of the table: a panel has no unit, the readings beside it have.
  return statedByNames(table, [corner]);
}

/** `Bonnet (µm)`, `P1 (µm)` down the rows, where each has the unit: the name of their column has it not. */
function statedBehindNames(table: Table): readonly Statement[] {
  const [row] = table.rows;
  return (['panel', 'point'] as const).flatMap((role): readonly Statement[] => {
    const column = table.layout.columns.get(role) ?? -1;
    const { unit, text = '', unitText = '' } = table.layout.header[column] ?? {};
    if (row === undefined || unit === undefined || splitUnit(text).unit !== undefined) return [];
    const at = () => placeOf(table, row, column);
    return [{ unit, text: unitText, at, evidence: `each name of a ${role} says` }];
  });
}

const statedByNames = (table: Table, columns: readonly number[]): readonly Statement[] =>
  columns.flatMap((column): readonly Statement[] => {
    // Keys of values stand in every row.
    const row = table.header ?? table.rows[0];
    const cell = table.layout.header[column];
    if (row === undefined || cell?.unit === undefined) return [];
    const at = () => placeOf(table, row, column);
    const known = cell.unit === 'um' || cell.unit === 'mil';
    const text = known ? cell.text : (cell.unitText ?? cell.text);
    if (known && /\d/u.test(cell.unitText ?? '')) {
      const evidence = `the header says ${cell.unitText}, which is`;
      return [{ unit: cell.unit, text: cell.unitText ?? '', at, evidence, factored: true }];
    }
    return [{ unit: cell.unit, text, at, evidence: 'the header says' }];
  });

const statedByUnitsRow = (table: Table, units: Row | undefined): readonly Statement[] =>
  units === undefined
    ? []
    : table.layout.readings.flatMap(({ column }) => {
        const { text, column: named } = unitTextAt(units, column);
        if (meansNoReading(text)) return [];
        const at = () => placeOf(table, units, named);
        return [
          { unit: unitNamed(text), text, at, evidence: `the units in line ${units.line} say` },
        ];
      });

/**
 * `Unit,mil` or `Units: µm` in a line of its own: those since the table before, else the last one above. Two
 * that no table parts are said of one and the same.
 */
function statedAbove(table: Table, { above, since }: UnitPlaces): readonly Statement[] {
  const first = table.rows[0]?.line ?? 0;
  const before = above.filter(({ row, ofAll }) => ofAll === true || row.line < first);
  const own = before.filter(({ row }) => row.line > since);
  return (own.length > 0 ? own : before.slice(-1)).map(({ row, saying }) => ({
    unit: unitNamed(saying.value),
    text: saying.value,
    at: () => placeOf(table, row, saying.column),
    evidence: `line ${row.line} says`,
  }));
}

/** What a column of units says, each text once. */
export function statedByColumn(table: Table): readonly Statement[] {
  const column = table.layout.columns.get('unit');
  if (column === undefined) return [];
  const firsts = new Map<string, Row>();
  for (const row of table.rows) {
    const text = cellText(row, column);
    if (!firsts.has(text) && !meansNoReading(text) && !ditto.test(text)) firsts.set(text, row);
  }
  const name = table.layout.header[column]?.text;
  const evidence = name === undefined ? 'the numbers are followed by' : `the column "${name}" says`;
  return [...firsts].map(([text, row]) => {
    const at = () => placeOf(table, row, column);
    return { unit: unitNamed(text), text, at, evidence };
  });
}
