/** The unit of a table's readings where only the cells name one. */

import { error, found, type Outcome, type Place, refused } from '../../base/diagnostics.ts';
import { factorSentence, isCoarse, isFine } from '../cells/coarse-units.ts';
import { numberOf, numberShape } from '../cells/numbers.ts';
import { provesOwnUnit } from '../cells/own-unit.ts';
import { type TableUnit, unitNamed, unitSign } from '../cells/unit.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { placeOf, type Table } from '../tables/table.ts';
import type { UnitsByColumn } from './units-by-column.ts';

export type UnitDecision = {
  readonly unit: TableUnit;
  readonly evidence: string;
  /** Whether each row has the unit that its column of units names. */
  readonly byRow: boolean;
  /** The unit of each column of readings, where the columns name different ones. */
  readonly byColumn?: UnitsByColumn;
  /** Whether cells may name units of their own, since nothing else in the file does. */
  readonly cellsNameUnits: boolean;
};

const units = ['um', 'mil', 'mm', 'inch', 'cm', 'nm'] as const;

/** The unit written behind the numbers themselves: one and the same, or one in each cell. */
export function unitOfCells(
  table: Table,
  texts: ReadonlyMap<string, number>,
): Outcome<UnitDecision> {
  const counts = { um: 0, mil: 0, mm: 0, inch: 0, cm: 0, nm: 0, none: 0 };
  for (const [text, count] of texts) {
    const shape = numberShape(text);
    if (shape === undefined) continue;
    const named = unitNamed(shape.suffix.split(/[\s([*]/u)[0] ?? '');
    counts[named === undefined || named === 'other' ? 'none' : named] += count;
  }
  const coarse = counts.mm + counts.inch + counts.cm + counts.nm;
  const unit = units.reduce((most, own) => (counts[own] > counts[most] ? own : most));
  const complete = counts.none === 0 || (table.layout.kind === 'list' && lastCellsNameUnits(table));
  const mixed = counts.um > 0 && counts.mil > 0;
  const one = coarse === 0 || coarse === counts[unit] || coarseProve(texts, unit);
  const several = units.filter((own) => counts[own] > 0);
  if (counts[unit] > 0 && complete && one && !(several.length > 1 && counts.none > 0)) {
    const evidence =
      several.length > 1
        ? `every reading names its unit: ${several.map((own) => `${counts[own]} in ${unitSign[own]}`).join(', ')}`
        : `every reading is followed by ${unitSign[unit]}${factorSentence(unit)}`;
    return found({ unit, evidence, byRow: false, cellsNameUnits: true });
  }
  const mil = counts.mil > 0 || namesMil(texts) || areLikeMil(texts);
  const option = `--reading-unit ${mil ? 'mil' : 'um'}`;
  const hint = mixed || coarse > 0 ? 'write the unit behind the number' : option;
  return refused(unitMissing(table, hint, counts.um + counts.mil + coarse > 0));
}

/** Whether each cell in mm or inches among others in µm or mil can be film in its own unit only. */
function coarseProve(texts: ReadonlyMap<string, number>, unit: TableUnit): boolean {
  if (isCoarse(unit)) return false;
  return [...texts.keys()].every((text) => {
    const shape = numberShape(text);
    const own = shape === undefined ? undefined : unitNamed(shape.suffix);
    if (shape === undefined || own === undefined || own === 'other' || !isCoarse(own)) return true;
    return isFine(shape, own) && provesOwnUnit(numberOf(shape), own, unit);
  });
}

/** `bonnet: 102, 104, 99 µm`: the unit behind the last reading of a line is that of the line. */
const endsWithUnit = ({ cells }: Row): boolean => {
  const suffix = numberShape((cells.at(-1) ?? '').trim())?.suffix;
  return suffix !== undefined && unitNamed(suffix) !== undefined;
};
const lastCellsNameUnits = ({ rows }: Table): boolean => rows.every(endsWithUnit);

/** Whether some cell among the readings names mil: not proof enough, but a likely option. */
const namesMil = (texts: ReadonlyMap<string, number>): boolean =>
  [...texts.keys()].some((text) => unitNamed(text) === 'mil');

/** Whether most numbers are as small as paint is in mil, and in µm is not: `4.12` is 105 µm. */
function areLikeMil(texts: ReadonlyMap<string, number>): boolean {
  const values = [...texts.keys()].flatMap((text) => {
    const shape = numberShape(text);
    return shape === undefined ? [] : [numberOf(shape)];
  });
  return values.filter((value) => value > 0 && value < mostInMil).length * 2 > values.length;
}
/** No film in µm is so thin, and in mil hardly any but filler thicker. */
const mostInMil = 20;

/** Told at the first number without a unit where others name theirs, else at the head. */
function unitMissing(table: Table, hint: string, othersDo: boolean) {
  const bare = othersDo ? bareNumber(table) : undefined;
  const message =
    bare === undefined
      ? 'nothing says whether the readings are in µm or mil'
      : table.layout.kind === 'list'
        ? 'the line does not end in a unit, and others do'
        : 'the number names no unit, and other readings name theirs';
  const at = bare === undefined ? headOf(table) : placeOf(table, bare.row, bare.column);
  return error('unit-missing', message, { at, hint });
}

/** Where the readings are named, or the first of them stands. */
export function headOf(table: Table): Place {
  const row = table.header ?? table.rows[0];
  if (row === undefined) return { file: table.source.name };
  return placeOf(table, row, table.layout.readings[0]?.column ?? 0);
}

/** In a list the last number of a line without a unit, for those before it need none. */
function bareNumber({ rows, layout }: Table) {
  if (layout.kind === 'list') {
    const row = rows.find((own) => !endsWithUnit(own));
    return row === undefined ? undefined : { row, column: row.cells.length - 1 };
  }
  for (const row of rows) {
    const found = layout.readings.find(
      ({ column }) => numberShape(cellText(row, column))?.suffix === '',
    );
    if (found !== undefined) return { row, column: found.column };
  }
  return undefined;
}
