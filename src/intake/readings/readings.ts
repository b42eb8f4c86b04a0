/**
 * Rows of a known layout → readings, and the cells that give none, each with its reason.
 *
 * A point is named by its column or, without one, by its order on the panel; readings of one point
 * are repeats in order of appearance. Every bad cell is reported, not only the first.
 */
import { suggest } from '../../base/did-you-mean.ts';
import type { Reading } from '../../film/reading.ts';
import type { ReadingCell } from '../cells/cell-verdict.ts';
import { numberOf, numberShape } from '../cells/numbers.ts';
import { provesOwnUnit } from '../cells/own-unit.ts';
import { type NumberRules, readReadingCell } from '../cells/reading-cell.ts';
import { otherUnitHint, type TableUnit, unitNamed, unitSign } from '../cells/unit.ts';
import { doubtfulColumns, mayBeOne } from '../doubts/shifted-cells.ts';
import type { Findings } from '../findings.ts';
import { cellColumn } from '../rows/row.ts';
import { cellSpan, countLineEnds, type Row } from '../rows/tokens.ts';
import type { ReadingColumn } from '../tables/layout.ts';
import { type RowShape, rowShape, tellShape } from '../tables/row-shape.ts';
import { type ExcludedCell, placeOf, type Table } from '../tables/table.ts';
import type { UnitsByColumn } from '../tables/units-by-column.ts';
import { createPointNames, type PointNames } from './point-names.ts';
import {
  type AboutRow,
  type RowReader,
  rowReader,
  type Spelling,
  type WrongCell,
} from './row-columns.ts';

/** A table with all that is decided about its numbers. */
export type SettledTable = {
  readonly table: Table;
  readonly rules: NumberRules;
  /** Whether each row has the unit its column of units names. */
  readonly unitByRow: boolean;
  readonly unitsByColumn?: UnitsByColumn;
  /** Whether the rows are points of their panel, and the columns repeats there. */
  readonly rowsArePoints: boolean;
  /** Whether each column of readings is a point that is called after its place. */
  readonly placesArePoints: boolean;
};

export type Collector = {
  readonly readings: Reading[];
  readonly excluded: ExcludedCell[];
  readonly names: PointNames;
  readonly spelling: Spelling;
  readonly findings: Findings;
};

export const createCollector = (
  spelling: Spelling,
  severalOperators: boolean,
  findings: Findings,
): Collector => ({
  readings: [],
  excluded: [],
  names: createPointNames(severalOperators),
  spelling,
  findings,
});

/** Keeps the names of a point column from being given to rows without one. */
export function reservePoints({ layout, rows }: Table, { names, spelling }: Collector): void {
  const column = layout.columns.get('point');
  if (column === undefined) return;
  const seen = new Set<string>();
  for (const { cells } of rows) {
    const text = cells[column] ?? '';
    if (seen.has(text)) continue;
    seen.add(text);
    names.reserve(spelling.point(spelling.name(text.trim())));
  }
}

type Reader = {
  readonly settled: SettledTable;
  readonly collector: Collector;
  readonly about: RowReader;
  readonly shape: RowShape;
  readonly cell: (text: string, unit: TableUnit) => ReadingCell;
  /** Columns whose number may be the decimals of the reading before it. */
  readonly doubtful: readonly number[];
};

export function collectTable(settled: SettledTable, collector: Collector): void {
  const { table, rules } = settled;
  const reader: Reader = {
    settled,
    collector,
    about: rowReader(table, collector.spelling, (...cell) => tellWrong(table, cell, collector)),
    shape: rowShape(table),
    cell: cellReader(rules),
    doubtful: rules.decimal.given === '.' ? [] : doubtfulColumns(table),
  };
  for (const row of table.rows) collectRow(row, reader);
}

/** Each text is read once in each unit. */
function cellReader(rules: NumberRules): Reader['cell'] {
  const usual = rememberingReader(rules);
  const others = new Map<TableUnit, (text: string) => ReadingCell>();
  return (text, unit) => {
    if (unit === rules.unit) return usual(text);
    const own = others.get(unit) ?? rememberingReader({ ...rules, unit });
    others.set(unit, own);
    return own(text);
  };
}

function rememberingReader(rules: NumberRules): (text: string) => ReadingCell {
  const known = new Map<string, ReadingCell>();
  return (text) => {
    const before = known.get(text);
    if (before !== undefined) return before;
    const told = readReadingCell(text, rules);
    if (known.size < mostTexts) known.set(text, told);
    return told;
  };
}
/** Texts of readings kept: a gauge shows some thousands at most. */
const mostTexts = 100_000;

function collectRow(row: Row, reader: Reader): void {
  const { settled, collector, shape } = reader;
  const { table } = settled;
  const misfit = shape(row);
  if (misfit !== undefined) {
    tellShape(table, row, misfit, collector.findings);
    return;
  }
  const about = reader.about(row);
  for (const column of reader.doubtful) tellDoubtful(row, column, reader);
  const unit = settled.unitByRow ? unitOfRow(row, reader) : settled.rules.unit;
  if (unit === undefined) return;
  const { readings, header } = table.layout;
  const unitOf = ({ column }: ReadingColumn) => settled.unitsByColumn?.get(column);
  let point = about.point;
  for (const column of readings) {
    if (column.column >= row.cells.length && (header[column.column]?.text ?? '') === '') break;
    const own = point === about.point ? about : { ...about, point };
    const named = readCell(row, column, own, unitOf(column) ?? unit, reader);
    if (settled.rowsArePoints) point = named ?? point;
  }
}

function tellWrong(
  table: Table,
  [row, column, message, allowed]: Parameters<WrongCell>,
  { findings }: Collector,
): void {
  findings.add('error', 'cell-invalid', () => {
    const hint =
      allowed.length === 0
        ? 'repeats count 1, 2, 3 …'
        : (suggest((row.cells[column] ?? '').trim(), allowed) ?? `write ${allowed.join(' or ')}`);
    return { message, at: placeOf(table, row, column), hint };
  });
}

function tellDoubtful(row: Row, column: number, { settled: { table }, collector }: Reader): void {
  if (!mayBeOne(row, column)) return;
  const [before, after] = [column, column + 1].map((k) => (row.cells[k] ?? '').trim());
  const named = table.layout.header[column + 1]?.text ?? '';
  collector.findings.add('error', 'reading-ambiguous', () => {
    const [first, last] = [placeOf(table, row, column), placeOf(table, row, column + 1)];
    const length = (last.column ?? 0) + (last.length ?? 0) - (first.column ?? 0);
    return {
      message: `"${before},${after}" may be ${before}.${after}, or ${before} with "${after}" as ${named}`,
      at: { ...first, length },
      hint: 'quote a decimal comma, or write more than the number in the note',
    };
  });
}

function unitOfRow(row: Row, { settled: { table }, collector }: Reader): TableUnit | undefined {
  const column = table.layout.columns.get('unit') ?? 0;
  const named = unitNamed(row.cells[column] ?? '');
  if (named === 'um' || named === 'mil') return named;
  if (named !== undefined && named !== 'other') {
    if (provedInRow(row, table, named)) return named;
    collector.findings.add('error', 'unit-unknown', () => ({
      message: `the row is in ${unitSign[named]}, and its number is no paint in it`,
      at: placeOf(table, row, column),
      hint: otherUnitHint(row.cells[column] ?? ''),
    }));
    return undefined;
  }
  collector.findings.add('error', 'unit-missing', () => ({
    message: 'the row names no unit, and other rows name different ones',
    at: placeOf(table, row, column),
    hint: 'write um or mil in the row',
  }));
  return undefined;
}

/** Millimetres and inches in a row of their own: every number of it must be paint in them. */
const provedInRow = ({ cells }: Row, { layout }: Table, unit: TableUnit): boolean =>
  layout.readings.every(({ column }) => {
    const shape = numberShape((cells[column] ?? '').trim());
    return shape === undefined || provesOwnUnit(numberOf(shape), unit, 'um');
  });

/** Takes one cell, and says which point it was. */
function readCell(
  row: Row,
  reading: ReadingColumn,
  about: AboutRow,
  unit: TableUnit,
  { settled, collector, cell }: Reader,
): string | undefined {
  const { findings, names, readings, excluded } = collector;
  const { table } = settled;
  const { column, panel: ofColumn } = reading;
  const text = (row.cells[column] ?? '').trim();
  const told = cell(text, unit);
  const panel = ofColumn === null ? about.panel : collector.spelling.panel(ofColumn);
  // Nothing names the panel of a bare list, which is said of all of it.
  if (panel === '' && table.given.panel !== '') tellNoPanel(table, row, column, told, findings);
  if (told.complaint !== undefined) {
    const { severity, code, message, hint } = told.complaint;
    findings.add(severity, code, () => ({
      message,
      at: placeOf(table, row, column),
      ...(hint === undefined ? {} : { hint }),
    }));
  }
  if (told.kind === 'wrong') return undefined;
  const counts = told.kind === 'reading' && about.deleted === undefined;
  const { vehicle, layer, place, marked, curved } = about;
  const written = pointOfColumn(reading, settled, collector) ?? about.point;
  const { point, repeat, taken } = names.next(vehicle, panel, written, layer, counts, about.repeat);
  const origin = originOf(table, row, column);
  if (told.kind === 'excluded') {
    excluded.push({ ...origin, text, class: told.class, reason: told.reason });
    return point;
  }
  if (about.deleted !== undefined) {
    const reason = leaveOutDeleted(table, row, about.deleted, findings);
    excluded.push({ ...origin, text, class: 'deleted', reason });
    return point;
  }
  if (taken) tellTaken(table, row, { point, repeat, panel }, findings);
  const { thickness } = told;
  const plain = { vehicle, panel, point, repeat, thickness, layer, place, marked, curved, origin };
  readings.push(about.kept === undefined ? plain : { ...plain, ...about.kept });
  return point;
}

/** The point that a column is, where its name says so. */
function pointOfColumn(
  { number, place }: ReadingColumn,
  { table, placesArePoints }: SettledTable,
  { spelling }: Collector,
): string | undefined {
  if (table.layout.series === 'point' && number !== null) return String(number);
  return placesArePoints && place !== undefined ? spelling.point(place) : undefined;
}

function tellNoPanel(
  table: Table,
  row: Row,
  column: number,
  told: ReadingCell,
  findings: Findings,
): void {
  const severity = told.kind === 'reading' ? 'error' : 'warning';
  const panelAt = table.layout.columns.get('panel');
  findings.add(severity, 'panel-missing', () => ({
    message: panelAt === undefined ? 'no line above names the panel' : 'the row names no panel',
    at: placeOf(table, row, panelAt ?? column),
    hint:
      panelAt === undefined
        ? 'write a line such as "Panel: bonnet" above its readings, or add a column "panel"'
        : 'name the panel in every row',
  }));
}

function leaveOutDeleted(
  table: Table,
  row: Row,
  { column, text }: NonNullable<AboutRow['deleted']>,
  findings: Findings,
): string {
  const reason = `the row is marked "${text}" in the column "${table.layout.header[column]?.text ?? ''}"`;
  findings.add('warning', 'reading-deleted', () => ({
    message: `${reason}; its reading is left out`,
    at: placeOf(table, row, column),
  }));
  return reason;
}

function tellTaken(
  table: Table,
  row: Row,
  { point, repeat, panel }: Pick<Reading, 'point' | 'repeat' | 'panel'>,
  findings: Findings,
): void {
  findings.add('error', 'cell-invalid', () => ({
    message: `repeat ${repeat} of point ${point} on ${panel} was given before`,
    at: placeOf(table, row, table.layout.columns.get('repeat') ?? 0),
    hint: 'is a part of the file there twice?',
  }));
}

function originOf({ source, delimiter }: Table, row: Row, column: number): Reading['origin'] {
  if (!row.quoted) return { file: source.name, line: row.line, column: cellColumn(row, column) };
  const { offset } = cellSpan(source, row, column, delimiter);
  const lineStart = source.text.lastIndexOf('\n', offset - 1) + 1;
  const line = row.line + countLineEnds(source.text, row.start, offset);
  return { file: source.name, line, column: offset - lineStart + 1 };
}
