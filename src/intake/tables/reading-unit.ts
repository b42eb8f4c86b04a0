/**
 * The unit of a table's readings: from the header of their columns, a row of units under it, a line
 * above, a column of units, the cells, or an option.
 *
 * Statements about one thing that contradict each other are refused: a wrong unit is a factor of
 * 25.4. A column of units may name one unit in one row and another in the next, and is then obeyed
 * row by row.
 */
import { error, found, type Outcome, type Place, refused } from '../../base/diagnostics.ts';
import { numberShape } from '../cells/numbers.ts';
import {
  isLostMicro,
  type NamedUnit,
  otherUnitHint,
  type ReadingUnit,
  unitNamed,
  unitSign,
} from '../cells/unit.ts';
import { meansNoReading } from '../cells/words.ts';
import type { Row } from '../rows/tokens.ts';
import type { Saying } from './sayings.ts';
import { placeOf, type Table } from './table.ts';
import { unitTextAt } from './units-row.ts';

export type UnitDecision = {
  readonly unit: ReadingUnit;
  readonly evidence: string;
  /** Whether each row has the unit that its column of units names. */
  readonly byRow: boolean;
  /** Whether cells may name units of their own, since nothing else in the file does. */
  readonly cellsNameUnits: boolean;
};

/** One place of the file that names a unit, or a word where a unit should stand. */
type Statement = {
  readonly unit: NamedUnit | undefined;
  readonly text: string;
  readonly at: () => Place;
  readonly evidence: string;
};

/** Where a table's unit may be named besides the table itself. */
export type UnitSources = {
  readonly above: readonly { readonly row: Row; readonly saying: Saying }[];
  readonly unitsRow: Row | undefined;
  readonly texts: ReadonlyMap<string, number>;
  readonly given: ReadingUnit | undefined;
};

export function decideUnit(table: Table, sources: UnitSources): Outcome<UnitDecision> {
  const { texts, given } = sources;
  const elsewhere = [
    ...statedByHeader(table),
    ...statedByUnitsRow(table, sources.unitsRow),
    ...statedAbove(table, sources.above),
  ];
  const inColumn = statedByColumn(table);
  const mixed = elsewhere.length === 0 && given === undefined && namesBoth(inColumn);
  const stated = agreed([...elsewhere, ...inColumn], given, mixed);
  if (stated.value === undefined) return refused(...stated.diagnostics);
  const [first] = stated.value;
  if (first !== undefined) {
    const { unit } = first;
    const evidence = mixed
      ? `${first.evidence} µm in some rows and mil in others, each row is read in its own`
      : `${first.evidence} ${unitSign[unit]}`;
    return found({ unit, evidence, byRow: mixed, cellsNameUnits: false });
  }
  if (given !== undefined) {
    return found({
      unit: given,
      evidence: `${unitSign[given]} as asked`,
      byRow: false,
      cellsNameUnits: false,
    });
  }
  return unitOfCells(table, texts);
}

type Known = Statement & { readonly unit: ReadingUnit };

/** The statements, or the first that is no unit or contradicts one before it. */
function agreed(
  statements: readonly Statement[],
  given: ReadingUnit | undefined,
  mixed: boolean,
): Outcome<readonly Known[]> {
  const known: Known[] = [];
  for (const statement of statements) {
    const { unit, text, at } = statement;
    if (unit === undefined && isLostMicro(text) && given !== undefined) continue;
    if (unit === undefined || unit === 'other') return refused(noUnit(text, at()));
    const [first] = known;
    const before = first?.unit ?? given;
    if (before !== undefined && before !== unit && !mixed) {
      const other = first === undefined ? 'the unit asked for is' : first.evidence;
      const message = `"${text}" says ${unitSign[unit]}, ${other} ${unitSign[before]}`;
      const hint = 'name one unit, the right one, in one place';
      return refused(error('unit-conflict', message, { at: at(), hint }));
    }
    known.push({ ...statement, unit });
  }
  return found(known);
}

const noUnit = (text: string, at: Place) =>
  error('unit-unknown', `"${text}" is not a unit of film thickness`, {
    at,
    hint: otherUnitHint(text),
  });

const namesBoth = (statements: readonly Statement[]): boolean =>
  statements.every(({ unit }) => unit === 'um' || unit === 'mil') &&
  new Set(statements.map(({ unit }) => unit)).size === 2;

function statedByHeader(table: Table): readonly Statement[] {
  const stated = statedByNames(
    table,
    table.layout.readings.map(({ column }) => column),
  );
  const panelAt = table.layout.columns.get('panel');
  // `Panel (µm)`, the corner of the table: a panel has no unit, the readings beside it have.
  return stated.length > 0 || panelAt === undefined ? stated : statedByNames(table, [panelAt]);
}

const statedByNames = (table: Table, columns: readonly number[]): readonly Statement[] =>
  columns.flatMap((column): readonly Statement[] => {
    const { header } = table;
    const cell = table.layout.header[column];
    if (header === undefined || cell?.unit === undefined) return [];
    const at = () => placeOf(table, header, column);
    const text = cell.unit === 'other' ? (cell.unitText ?? cell.text) : cell.text;
    return [{ unit: cell.unit, text, at, evidence: 'the header says' }];
  });

const statedByUnitsRow = (table: Table, units: Row | undefined): readonly Statement[] =>
  units === undefined
    ? []
    : table.layout.readings.flatMap(({ column }) => {
        const text = unitTextAt(units, column);
        if (meansNoReading(text)) return [];
        const at = () => placeOf(table, units, column);
        return [
          { unit: unitNamed(text), text, at, evidence: `the units in line ${units.line} say` },
        ];
      });

/** `Unit,mil` or `Units: µm` in a line of its own; the last one above the table holds. */
function statedAbove(table: Table, above: UnitSources['above']): readonly Statement[] {
  const first = table.rows[0]?.line ?? 0;
  const [last] = above.filter(({ row }) => row.line < first).slice(-1);
  return (last === undefined ? [] : [last]).map(({ row, saying }) => ({
    unit: unitNamed(saying.value),
    text: saying.value,
    at: () => placeOf(table, row, saying.column),
    evidence: `line ${row.line} says`,
  }));
}

/** What a column of units says, each text once. */
function statedByColumn(table: Table): readonly Statement[] {
  const column = table.layout.columns.get('unit');
  if (column === undefined) return [];
  const firsts = new Map<string, Row>();
  for (const row of table.rows) {
    const text = (row.cells[column] ?? '').trim();
    if (!firsts.has(text) && !meansNoReading(text)) firsts.set(text, row);
  }
  const name = table.layout.header[column]?.text ?? String(column + 1);
  return [...firsts].map(([text, row]) => {
    const at = () => placeOf(table, row, column);
    return { unit: unitNamed(text), text, at, evidence: `the column "${name}" says` };
  });
}

/** The unit written behind the numbers themselves: one and the same, or one in each cell. */
function unitOfCells(table: Table, texts: ReadonlyMap<string, number>): Outcome<UnitDecision> {
  const counts = { um: 0, mil: 0, none: 0 };
  for (const [text, count] of texts) {
    const shape = numberShape(text);
    if (shape === undefined) continue;
    const named = unitNamed(shape.suffix.split(/[\s([*]/u)[0] ?? '');
    counts[named === 'um' || named === 'mil' ? named : 'none'] += count;
  }
  const unit = counts.um >= counts.mil ? 'um' : 'mil';
  const complete = counts.none === 0 || (table.layout.kind === 'list' && lastCellsNameUnits(table));
  const mixed = counts.um > 0 && counts.mil > 0;
  if (counts[unit] > 0 && complete && !(mixed && counts.none > 0)) {
    const evidence = mixed
      ? `every reading names its unit: ${counts.um} in µm, ${counts.mil} in mil`
      : `every reading is followed by ${unitSign[unit]}`;
    return found({ unit, evidence, byRow: false, cellsNameUnits: true });
  }
  const mil = counts.mil > 0 || namesMil(texts);
  const option = `--reading-unit ${mil ? 'mil' : 'um'}`;
  const hint = mixed ? 'write the unit behind the number' : option;
  return refused(unitMissing(table, hint, counts.um + counts.mil > 0));
}

/** `bonnet: 102, 104, 99 µm`: the unit behind the last reading of a line is that of the line. */
const lastCellsNameUnits = ({ rows }: Table): boolean =>
  rows.every(({ cells }) => {
    const suffix = numberShape((cells.at(-1) ?? '').trim())?.suffix;
    return suffix !== undefined && unitNamed(suffix) !== undefined;
  });

/** Whether some cell among the readings names mil: not proof enough, but a likely option. */
const namesMil = (texts: ReadonlyMap<string, number>): boolean =>
  [...texts.keys()].some((text) => unitNamed(text) === 'mil');

/** Told at the first number without a unit where others name theirs, else at the head. */
function unitMissing(table: Table, hint: string, othersDo: boolean) {
  const bare = othersDo ? bareNumber(table) : undefined;
  const row = bare?.row ?? table.header ?? table.rows[0];
  const column = bare?.column ?? table.layout.readings[0]?.column ?? 0;
  const message =
    bare === undefined
      ? 'nothing says whether the readings are in µm or mil'
      : 'the number names no unit, and other readings name theirs';
  const at = row === undefined ? { file: table.source.name } : placeOf(table, row, column);
  return error('unit-missing', message, { at, hint });
}

function bareNumber({ rows, layout }: Table) {
  for (const row of rows) {
    const found = layout.readings.find(
      ({ column }) => numberShape((row.cells[column] ?? '').trim())?.suffix === '',
    );
    if (found !== undefined) return { row, column: found.column };
  }
  return undefined;
}
